/** Where revenue just covers cost. */
export interface BreakEven {
  /** Volume that covers the fixed cost, same unit as the price is per. */
  readonly volume: number;
  /** Revenue at that volume [money]. */
  readonly revenue: number;
  /** Revenue − variable cost, over revenue [–]. */
  readonly contributionRatio: number;
}

/**
 * Break-even: volume = fixed/(price − variable). Null when a unit sold does not bring in more than it costs.
 * Holds for one price and cost over the range of volumes the plant can make.
 * Source: openstax-managerial, chapter 3.
 * Throws RangeError when fixed cost is negative or the price is not positive.
 * @param fixed cost of the period that does not change with volume, ≥ 0 [money]
 * @param price per unit, > 0 [money/unit]
 * @param variable cost per unit [money/unit]
 */
export function breakEven(fixed: number, price: number, variable: number): BreakEven | null {
  if (!(fixed >= 0) || !(price > 0)) throw new RangeError(`break-even of fixed cost ${fixed} at price ${price}`);
  const contribution = price - variable;
  if (!(contribution > 0)) return null;
  const volume = fixed / contribution;
  return { volume, revenue: volume * price, contributionRatio: contribution / price };
}

/**
 * Margin of safety [–]: the share by which sales can fall before break-even; negative below it. Null without sales.
 * Source: openstax-managerial, chapter 3.
 * @param sales actual or planned, volume or revenue
 * @param breakEvenSales the same quantity at break-even
 */
export function marginOfSafety(sales: number, breakEvenSales: number): number | null {
  return sales > 0 ? (sales - breakEvenSales) / sales : null;
}
