import type { Cents } from './cents.ts';

/** How profit is taxed. Law differs by place and changes: every number is the owner's, set with a tax adviser. */
export interface TaxTerms {
  /** One rate on taxable profit [–], 0–1. */
  readonly rate: number;
  /** Largest share of a year's profit that earlier losses may take off, 0–1. */
  readonly lossOffsetShare: number;
  /** What is due is paid at the end of every so many months: 1, 3 or 12. */
  readonly paidEveryMonths: 1 | 3 | 12;
}

/** Tax by month of the plan, in whole cents. */
export interface TaxLedger {
  /** Tax that the month's profit brings; negative when a loss lowers the year's tax. */
  readonly expense: readonly Cents[];
  /** Tax paid at the end of the month; negative for money back. */
  readonly paid: readonly Cents[];
  /** Owed at the end of the month; negative when too much was paid so far this year. */
  readonly payable: readonly Cents[];
  /** Losses not yet used, at the end of the plan. */
  readonly lossCarried: Cents;
}

interface YearState {
  readonly lossBefore: Cents;
  readonly profitSoFar: Cents;
  readonly taxSoFar: Cents;
}

/**
 * Tax month by month: one rate on the profit of each plan year (months 0–11, 12–23 …), losses carried forward without
 * limit of time. A month's expense is the change in the tax on the year so far. Overpayment within a year is paid back
 * at the end of that year.
 * Throws RangeError when the rate or the offset share is outside 0–1.
 * @param profit taxable profit by month [cents]
 */
export function taxLedger(profit: readonly Cents[], terms: TaxTerms): TaxLedger {
  requireShares(terms);
  const expense: Cents[] = [];
  let year: YearState = { lossBefore: 0, profitSoFar: 0, taxSoFar: 0 };
  profit.forEach((amount, month) => {
    if (month > 0 && month % 12 === 0) year = nextYear(year, terms);
    const profitSoFar = year.profitSoFar + amount;
    const taxSoFar = yearTax(profitSoFar, year.lossBefore, terms);
    expense.push(taxSoFar - year.taxSoFar);
    year = { lossBefore: year.lossBefore, profitSoFar, taxSoFar };
  });
  return { expense, ...settle(expense, terms.paidEveryMonths), lossCarried: nextYear(year, terms).lossBefore };
}

/** Tax on a year's profit after earlier losses [cents], never negative. @param profit [cents] @param loss carried in, ≥ 0 [cents] */
function yearTax(profit: Cents, loss: Cents, terms: TaxTerms): Cents {
  return profit > 0 ? Math.round((profit - usedLoss(profit, loss, terms)) * terms.rate) : 0;
}

function usedLoss(profit: Cents, loss: Cents, terms: TaxTerms): Cents {
  return Math.min(loss, Math.floor(Math.max(0, profit) * terms.lossOffsetShare));
}

function nextYear(year: YearState, terms: TaxTerms): YearState {
  const lossBefore =
    year.lossBefore - usedLoss(year.profitSoFar, year.lossBefore, terms) + Math.max(0, -year.profitSoFar);
  return { lossBefore, profitSoFar: 0, taxSoFar: 0 };
}

function settle(expense: readonly Cents[], every: number): { paid: Cents[]; payable: Cents[] } {
  const paid: Cents[] = [];
  let owed = 0;
  const payable = expense.map((amount, month) => {
    owed += amount;
    const due = (month + 1) % 12 === 0 || ((month + 1) % every === 0 && owed > 0) ? owed : 0;
    paid.push(due);
    owed -= due;
    return owed;
  });
  return { paid, payable };
}

function requireShares(terms: TaxTerms): void {
  if (!(terms.rate >= 0 && terms.rate <= 1) || !(terms.lossOffsetShare >= 0 && terms.lossOffsetShare <= 1)) {
    throw new RangeError(`tax rate ${terms.rate} and loss offset ${terms.lossOffsetShare} must be between 0 and 1`);
  }
}
