import type { Cents } from './cents.ts';
import type { IncomeStatement } from './income-statement.ts';
import type { PlanBooks } from './plan-books.ts';
import { addSeries, changesOf, negateSeries } from './series.ts';
import type { TaxLedger } from './tax-ledger.ts';

/** Cash flow statement by month, in whole cents; money out is negative, each total a plain sum of the lines above it. */
export interface CashFlow {
  readonly netProfit: readonly Cents[];
  /** Put back: a cost that no money left for. */
  readonly depreciation: readonly Cents[];
  /** Taken out: the whole price received stands under `disposals`. */
  readonly disposalGain: readonly Cents[];
  /** Put back: interest added to the debt instead of paid. */
  readonly interestAdded: readonly Cents[];
  readonly receivables: readonly Cents[];
  readonly inventory: readonly Cents[];
  readonly payables: readonly Cents[];
  readonly taxPayable: readonly Cents[];
  readonly operations: readonly Cents[];
  readonly purchases: readonly Cents[];
  readonly disposals: readonly Cents[];
  readonly investment: readonly Cents[];
  readonly loansDrawn: readonly Cents[];
  readonly principalRepaid: readonly Cents[];
  readonly ownerPaidIn: readonly Cents[];
  readonly ownerDraws: readonly Cents[];
  readonly financing: readonly Cents[];
  /** Change of the cash in hand. */
  readonly net: readonly Cents[];
}

type Section<Total extends keyof CashFlow, Lines extends keyof CashFlow> = Pick<CashFlow, Total | Lines>;

/** Cash flow statement by the indirect method: from net profit back to the money that moved. */
export function cashFlow(books: PlanBooks, income: IncomeStatement, tax: TaxLedger): CashFlow {
  const operations = operationsSection(books, income, tax);
  const investment = investmentSection(books);
  const financing = financingSection(books);
  const net = addSeries(operations.operations, investment.investment, financing.financing);
  return { ...operations, ...investment, ...financing, net };
}

function operationsSection(
  books: PlanBooks,
  income: IncomeStatement,
  tax: TaxLedger,
): Section<
  'operations',
  | 'netProfit'
  | 'depreciation'
  | 'disposalGain'
  | 'interestAdded'
  | 'receivables'
  | 'inventory'
  | 'payables'
  | 'taxPayable'
> {
  const lines = {
    netProfit: income.netProfit,
    depreciation: negateSeries(income.depreciation),
    disposalGain: negateSeries(income.disposalGain),
    interestAdded: books.loans.interestAdded,
    receivables: negateSeries(changesOf(books.capital.receivables)),
    inventory: negateSeries(changesOf(books.capital.inventory)),
    payables: changesOf(books.capital.payables),
    taxPayable: changesOf([0, ...tax.payable]),
  };
  return { ...lines, operations: addSeries(...Object.values(lines)) };
}

function investmentSection(books: PlanBooks): Section<'investment', 'purchases' | 'disposals'> {
  const purchases = negateSeries(books.assets.bought);
  const disposals = books.assets.sold;
  return { purchases, disposals, investment: addSeries(purchases, disposals) };
}

function financingSection(
  books: PlanBooks,
): Section<'financing', 'loansDrawn' | 'principalRepaid' | 'ownerPaidIn' | 'ownerDraws'> {
  const lines = {
    loansDrawn: books.loans.drawn,
    principalRepaid: negateSeries(books.loans.principal),
    ownerPaidIn: books.ownerPaidIn,
    ownerDraws: negateSeries(books.ownerDraws),
  };
  return { ...lines, financing: addSeries(...Object.values(lines)) };
}
