/**
 * Value below which a share of a sample lies, in its unit, interpolated between neighbours: at (n − 1)·share in the
 * sorted sample, the first being 0. Infinite where a neighbour it needs is.
 * Source: hyndman-fan-1996, definition 7.
 * Throws RangeError on an empty sample, on something in it that is not a number, or a share outside 0–1.
 * @param share [–]
 */
export function percentile(sample: readonly number[], share: number): number {
  return percentiles(sample, [share])[0] ?? Number.NaN;
}

/** The same for several shares, sorted once. */
export function percentiles(sample: readonly number[], shares: readonly number[]): number[] {
  if (sample.length === 0 || sample.some(Number.isNaN)) throw new RangeError(`percentile of ${sample.length} values`);
  const sorted = Float64Array.from(sample).sort();
  return shares.map((share) => {
    if (!(share >= 0 && share <= 1)) throw new RangeError(`share ${share}, expected 0 to 1`);
    return between(sorted, share * (sorted.length - 1));
  });
}

function between(sorted: Float64Array, place: number): number {
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[below + 1] ?? low;
  const part = place - below;
  // Two like neighbours, infinite ones among them, leave nothing to interpolate.
  return part === 0 || low === high ? low : low + part * (high - low);
}
