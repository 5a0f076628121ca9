import { requireAmounts } from './require-amounts.ts';

/** A month of one product in kilograms. */
export interface StockedMonth {
  readonly made: number;
  /** In store at the end of the month. */
  readonly stock: number;
}

/** Costs by the month in which the goods leave, and what those in store have cost. */
export interface StockedCosts {
  /** [money/month] */
  readonly costs: readonly number[];
  /** At the end of each month [money]. */
  readonly stockValue: readonly number[];
}

/**
 * What is spent on making goods, put into the months in which they are sold or thrown away: goods in store are worth the mean
 * of what was in store and what was made, by weight (average cost). Nothing is in store at the start.
 * Throws RangeError on a negative amount.
 * @param spent on what is made, by month [money]
 */
export function stockedCosts(months: readonly StockedMonth[], spent: readonly number[]): StockedCosts {
  let kilograms = 0;
  let value = 0;
  const stockValue: number[] = [];
  const costs = months.map(({ made, stock }, month) => {
    requireAmounts({ made, stock, spent: spent[month] ?? 0 });
    const all = value + (spent[month] ?? 0);
    const left = kilograms + made > 0 ? all * Math.min(1, stock / (kilograms + made)) : 0;
    kilograms = stock;
    value = left;
    stockValue.push(left);
    return all - left;
  });
  return { costs, stockValue };
}
