import { type Cents, toCents } from './cents.ts';

/** Days in a month: 365.25/12. */
export const DAYS_PER_MONTH = 365.25 / 12;

/** How long money is tied up. */
export interface WorkingCapitalTerms {
  /** Days until customers pay [d]. */
  readonly receivableDays: number;
  /** Days that stock of goods and ingredients lies [d]. */
  readonly inventoryDays: number;
  /** Days until the shop pays its suppliers [d]. */
  readonly payableDays: number;
}

/** Balances with the opening one first: index 0 is before month 0, index m + 1 the end of month m. Whole cents, ≥ 0. */
export interface WorkingCapital {
  readonly receivables: readonly Cents[];
  readonly inventory: readonly Cents[];
  readonly payables: readonly Cents[];
}

/**
 * Receivables, stock and payables by month. Receivables are the last `receivableDays` of revenue; stock and payables
 * the last days of variable cost. Days run back over earlier months, a month counting as 365.25/12 days with its amount
 * spread evenly. Months before the plan are taken to be all alike.
 * Throws RangeError on negative days.
 * @param revenue by month [cents]
 * @param variableCosts by month, as positive amounts [cents]
 * @param before revenue and variable costs of each month before the plan; 0 for a new shop [money]
 */
export function workingCapital(
  revenue: readonly Cents[],
  variableCosts: readonly Cents[],
  terms: WorkingCapitalTerms,
  before: { readonly revenue: number; readonly variableCosts: number },
): WorkingCapital {
  const earlier = { revenue: toCents(before.revenue), variableCosts: toCents(before.variableCosts) };
  return {
    receivables: balances(revenue, terms.receivableDays, earlier.revenue),
    inventory: balances(variableCosts, terms.inventoryDays, earlier.variableCosts),
    payables: balances(variableCosts, terms.payableDays, earlier.variableCosts),
  };
}

function balances(amounts: readonly Cents[], days: number, before: Cents): Cents[] {
  if (!(days >= 0) || !Number.isFinite(days)) throw new RangeError(`working capital of ${days} days`);
  const months = days / DAYS_PER_MONTH;
  const opening = Math.round(before * months);
  return [opening, ...amounts.map((_, month) => lastMonths(amounts, month, months, before))];
}

/** Sum of the last `months` (not whole) of a series ending with `month` [cents]. */
function lastMonths(amounts: readonly Cents[], month: number, months: number, before: Cents): Cents {
  let left = months;
  let total = 0;
  for (let k = month; k >= 0 && left > 0; k -= 1) {
    total += (amounts[k] ?? 0) * Math.min(1, left);
    left -= 1;
  }
  return Math.round(total + before * Math.max(0, left));
}
