import type { Cents } from './cents.ts';
import type { PlanBooks } from './plan-books.ts';
import { addSeries, negateSeries } from './series.ts';
import { type TaxLedger, type TaxTerms, taxLedger } from './tax-ledger.ts';

/** Income statement by month, in whole cents; costs are negative, so each total is a plain sum of lines. */
export interface IncomeStatement {
  readonly revenue: readonly Cents[];
  readonly variableCosts: readonly Cents[];
  readonly fixedCosts: readonly Cents[];
  /** Earnings before interest, tax and depreciation: the three lines above. */
  readonly ebitda: readonly Cents[];
  readonly depreciation: readonly Cents[];
  /** Received for equipment sold, less its book value. */
  readonly disposalGain: readonly Cents[];
  readonly interest: readonly Cents[];
  readonly loanFees: readonly Cents[];
  readonly profitBeforeTax: readonly Cents[];
  readonly tax: readonly Cents[];
  readonly netProfit: readonly Cents[];
}

/** The statement with the tax ledgers behind it: as financed, and as if there were no loan. */
export interface TaxedIncome {
  readonly income: IncomeStatement;
  readonly tax: TaxLedger;
  readonly taxWithoutLoans: TaxLedger;
}

/**
 * Income statement of a plan. Loan fees are a cost of the month they are paid. Depreciation is the one the tax is
 * reckoned with, so there is no deferred tax.
 */
export function incomeStatement(books: PlanBooks, terms: TaxTerms): TaxedIncome {
  const before = linesBeforeTax(books);
  const profitBeforeTax = addSeries(
    before.ebitda,
    before.depreciation,
    before.disposalGain,
    before.interest,
    before.loanFees,
  );
  const ledger = taxLedger(profitBeforeTax, terms);
  const tax = negateSeries(ledger.expense);
  const withoutLoans = addSeries(before.ebitda, before.depreciation, before.disposalGain);
  return {
    income: { ...before, profitBeforeTax, tax, netProfit: addSeries(profitBeforeTax, tax) },
    tax: ledger,
    taxWithoutLoans: taxLedger(withoutLoans, terms),
  };
}

function linesBeforeTax(books: PlanBooks): Omit<IncomeStatement, 'profitBeforeTax' | 'tax' | 'netProfit'> {
  const variableCosts = negateSeries(books.variableCosts);
  const fixedCosts = negateSeries(books.fixedCosts);
  return {
    revenue: books.revenue,
    variableCosts,
    fixedCosts,
    ebitda: addSeries(books.revenue, variableCosts, fixedCosts),
    depreciation: negateSeries(books.assets.depreciation),
    disposalGain: books.assets.gain,
    interest: negateSeries(books.loans.interest),
    loanFees: negateSeries(books.loans.fees),
  };
}
