import { type Cents, spreadCents } from './cents.ts';
import { DEPRECIATION_TABLES, type DepreciationTable } from './depreciation-tables.ts';

/** How the cost of a thing is written off. */
export type DepreciationMethod =
  /** Evenly over so many whole months, ≥ 1; over the useful life when not given. */
  | { readonly kind: 'straightLine'; readonly months?: number }
  | { readonly kind: 'table'; readonly table: DepreciationTable };

/** Terms of writing off one thing. Amounts are positive. */
export interface DepreciationTerms {
  readonly cost: Cents;
  /** Left at the end of its life; straight line only, tables write off the whole basis. */
  readonly salvage: Cents;
  /** Useful life, whole months ≥ 1. */
  readonly lifeMonths: number;
  readonly method: DepreciationMethod;
  /** Share of the cost written off at once in the month of purchase, 0–1. */
  readonly expensedShare: number;
  /** Month of the plan at whose start it is bought; below 0 for things the shop owns already. */
  readonly month: number;
}

/**
 * Depreciation by month [cents], from the month of purchase on, all positive; the sum is exactly what can be written off.
 * Straight line: evenly over the life or the months set for it, from the month of purchase. Table: each year's printed share evenly over the
 * months of that plan year, the first year's over the months left of it. A plan year is taken to be a tax year.
 * Source: irs-pub-946 for the tables.
 * Throws RangeError on a share outside 0–1, a negative amount or a life that is not a whole month or more.
 */
export function monthlyDepreciation(terms: DepreciationTerms): Cents[] {
  requireTerms(terms);
  const expensed = Math.round(terms.cost * terms.expensedShare);
  const rest = terms.cost - expensed;
  const amounts =
    terms.method.kind === 'straightLine'
      ? straightLine(Math.max(0, rest - terms.salvage), terms.method.months ?? terms.lifeMonths)
      : byTable(rest, DEPRECIATION_TABLES[terms.method.table], terms.month);
  return amounts.map((amount, k) => (k === 0 ? amount + expensed : amount));
}

/** Depreciation by year [money] of a basis under a printed table. @param basis [money] */
export function yearlyDepreciation(basis: number, table: DepreciationTable): number[] {
  return DEPRECIATION_TABLES[table].map((percent) => (basis * percent) / 100);
}

function straightLine(total: Cents, months: number): Cents[] {
  if (!Number.isInteger(months) || months < 1) throw new RangeError(`straight line over ${months} months`);
  return spreadCents(total, new Array<number>(months).fill(1));
}

function byTable(basis: Cents, percents: readonly number[], month: number): Cents[] {
  const monthOfYear = ((month % 12) + 12) % 12;
  const weights = percents.flatMap((percent, year) => {
    const months = year === 0 ? 12 - monthOfYear : 12;
    return new Array<number>(months).fill(percent / months);
  });
  return spreadCents(basis, weights);
}

function requireTerms(terms: DepreciationTerms): void {
  const { cost, salvage, lifeMonths, expensedShare } = terms;
  if (!(cost >= 0) || !(salvage >= 0)) throw new RangeError(`cost ${cost} and salvage ${salvage} may not be negative`);
  if (!Number.isInteger(lifeMonths) || lifeMonths < 1) throw new RangeError(`life of ${lifeMonths} months`);
  if (!(expensedShare >= 0 && expensedShare <= 1))
    throw new RangeError(`expensed share ${expensedShare} outside 0 to 1`);
}
