import type { CashFlow } from './cash-flow.ts';
import type { Cents } from './cents.ts';
import type { IncomeStatement } from './income-statement.ts';
import type { PlanBooks } from './plan-books.ts';
import { accumulate, addSeries, subtractSeries } from './series.ts';
import type { TaxLedger } from './tax-ledger.ts';

/**
 * Balance sheet in whole cents, the opening one first: index 0 is before month 0, index m + 1 the end of month m.
 * What is owned and what is owed are both positive.
 */
export interface BalanceSheet {
  readonly cash: readonly Cents[];
  readonly receivables: readonly Cents[];
  readonly inventory: readonly Cents[];
  /** Equipment at book value. */
  readonly equipment: readonly Cents[];
  readonly totalAssets: readonly Cents[];
  readonly payables: readonly Cents[];
  readonly taxPayable: readonly Cents[];
  readonly loans: readonly Cents[];
  readonly totalLiabilities: readonly Cents[];
  /** What the owner had in the business before month 0, plus what was put in, less what was taken out. */
  readonly ownerCapital: readonly Cents[];
  /** Profit kept since month 0. */
  readonly retainedProfit: readonly Cents[];
  readonly totalEquity: readonly Cents[];
}

/**
 * Balance sheet of a plan. The owner's opening capital is what the opening assets leave over the opening debts; from
 * then on every line has its own book, so that assets = liabilities + equity is a check and not an assumption.
 */
export function balanceSheet(books: PlanBooks, income: IncomeStatement, flow: CashFlow, tax: TaxLedger): BalanceSheet {
  const assets = assetLines(books, flow);
  const debts = debtLines(books, tax);
  const openingCapital = (assets.totalAssets[0] ?? 0) - (debts.totalLiabilities[0] ?? 0);
  const ownerCapital = accumulate(subtractSeries(books.ownerPaidIn, books.ownerDraws), openingCapital);
  const retainedProfit = accumulate(income.netProfit, 0);
  return { ...assets, ...debts, ownerCapital, retainedProfit, totalEquity: addSeries(ownerCapital, retainedProfit) };
}

function assetLines(
  books: PlanBooks,
  flow: CashFlow,
): Pick<BalanceSheet, 'cash' | 'receivables' | 'inventory' | 'equipment' | 'totalAssets'> {
  const lines = {
    cash: accumulate(flow.net, books.openingCash),
    receivables: books.capital.receivables,
    inventory: books.capital.inventory,
    equipment: [books.assets.opening, ...books.assets.bookValue],
  };
  return { ...lines, totalAssets: addSeries(...Object.values(lines)) };
}

function debtLines(
  books: PlanBooks,
  tax: TaxLedger,
): Pick<BalanceSheet, 'payables' | 'taxPayable' | 'loans' | 'totalLiabilities'> {
  const lines = {
    payables: books.capital.payables,
    taxPayable: [0, ...tax.payable],
    loans: [books.loans.opening, ...books.loans.owed],
  };
  return { ...lines, totalLiabilities: addSeries(...Object.values(lines)) };
}
