/**
 * Profitability index [–]: 1 + NPV/present value of what is invested; above 1 when the purchase is worth making.
 * Null when nothing is invested.
 * @param netPresentValue [money]
 * @param invested present value of the purchases, as a positive amount [money]
 */
export function profitabilityIndex(netPresentValue: number, invested: number): number | null {
  return invested > 0 ? 1 + netPresentValue / invested : null;
}
