/** A moment at which cumulative cash passes zero. */
export interface CashCrossing {
  /** Months from the start, interpolated within its month. */
  readonly month: number;
  readonly direction: 'above' | 'below';
}

function crossing(month: number, before: number, after: number, share: number): CashCrossing[] {
  if (before < 0 === after < 0) return [];
  return [{ month: month - 1 + share, direction: after < 0 ? 'below' : 'above' }];
}

/**
 * Every moment after it first went below zero at which cumulative cash passes zero: evenly within a month, but at once where
 * something is bought or sold.
 * @param cumulative month 0 first [money]
 * @param steps what of it comes or goes at that very moment; none where it is not given [money]
 */
export function cashCrossings(cumulative: readonly number[], steps: readonly number[] = []): readonly CashCrossing[] {
  const firstBelow = cumulative.findIndex((total) => total < 0);
  if (firstBelow < 0) return [];
  return cumulative.flatMap((after, month) => {
    const start = cumulative[month - 1];
    if (month <= firstBelow || start === undefined) return [];
    const end = after - (steps[month] ?? 0);
    return [...crossing(month, start, end, start / (start - end)), ...crossing(month, end, after, 1)];
  });
}
