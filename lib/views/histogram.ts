import { roundStep } from './chart-scale.ts';

/** Values from `from` up to below `to`. */
export interface HistogramBin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** A sample counted in equal bins with round ends, about `bins` of them; none for an empty sample. */
export function histogram(values: readonly number[], bins: number): readonly HistogramBin[] {
  if (values.length === 0) return [];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const step = roundStep((high - low || Math.abs(high) || 1) / bins);
  const first = Math.floor(low / step + 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  const counts = Array.from({ length: count }, () => 0);
  for (const value of values) {
    const place = Math.min(count - 1, Math.max(0, Math.floor(value / step + 1e-9) - first));
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return counts.map((held, k) => ({ from: (first + k) * step, to: (first + k + 1) * step, count: held }));
}
