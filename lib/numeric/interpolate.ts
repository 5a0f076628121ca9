/**
 * Index i of the segment with xs[i] ≤ x < xs[i + 1]; 0 left of the table, the last segment right of it. O(log n).
 * @param xs rising values, at least two
 */
export function segmentIndex(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (x >= (xs[middle] as number)) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Straight-line interpolation in a table, held at the end values outside it. Allocates nothing.
 * One point is a constant; an empty or mismatched table throws RangeError. Rising xs are the caller's duty.
 */
export function interpolate(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const count = xs.length;
  if (count === 0 || count !== ys.length) {
    throw new RangeError(`interpolation needs two lists of one length, got ${count} and ${ys.length} values`);
  }
  if (x <= (xs[0] as number)) return ys[0] as number;
  if (x >= (xs[count - 1] as number)) return ys[count - 1] as number;
  const i = segmentIndex(xs, x);
  const left = xs[i] as number;
  const bottom = ys[i] as number;
  return bottom + (((ys[i + 1] as number) - bottom) * (x - left)) / ((xs[i + 1] as number) - left);
}
