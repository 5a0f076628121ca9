/** A moment at which cumulative cash passes zero. */
export interface CashCrossing {
  /** Months from the start, interpolated within its month. */
  readonly month: number;
  readonly direction: 'above' | 'below';
}

/** Every moment after it first went below zero at which cumulative cash passes zero. @param cumulative month 0 first [money] */
export function cashCrossings(cumulative: readonly number[]): readonly CashCrossing[] {
  const firstBelow = cumulative.findIndex((total) => total < 0);
  if (firstBelow < 0) return [];
  return cumulative.flatMap((after, month) => {
    const before = cumulative[month - 1];
    if (month <= firstBelow || before === undefined || before < 0 === after < 0) return [];
    return { month: month - 1 + before / (before - after), direction: after < 0 ? 'below' : 'above' } as const;
  });
}
