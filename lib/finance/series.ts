/** Sum of series of the same length, element by element. Throws RangeError when their lengths differ. */
export function addSeries(...series: readonly (readonly number[])[]): number[] {
  const [first = [], ...others] = series;
  const wrong = others.find((other) => other.length !== first.length);
  if (wrong) throw new RangeError(`series of ${first.length} and ${wrong.length} values cannot be added`);
  return first.map((value, index) => others.reduce((sum, other) => sum + (other[index] ?? 0), value));
}

/** Each value with its sign turned; never −0. */
export function negateSeries(series: readonly number[]): number[] {
  return series.map((value) => 0 - value);
}

/** First series less the second, element by element. Throws RangeError when their lengths differ. */
export function subtractSeries(first: readonly number[], second: readonly number[]): number[] {
  return addSeries(first, negateSeries(second));
}

/** Changes from each value to the next: one fewer than the series has. */
export function changesOf(series: readonly number[]): number[] {
  return series.slice(1).map((value, index) => value - (series[index] ?? 0));
}

/** Running totals after a starting value, which comes first: one more than the series has. */
export function accumulate(series: readonly number[], start: number): number[] {
  let total = start;
  return [start, ...series.map((value) => (total += value))];
}
