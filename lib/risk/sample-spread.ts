import { percentiles } from './percentile.ts';

/** How a figure is spread, in its unit. Null where the answer is beyond the horizon. */
export interface SampleSpread {
  /** Draws that have the figure. */
  readonly count: number;
  readonly mean: number | null;
  readonly p5: number | null;
  readonly p10: number | null;
  readonly p50: number | null;
  readonly p90: number | null;
  readonly p95: number | null;
}

/** Mean and percentiles of a sample; null when it is empty. Infinite values count as beyond every finite one. */
export function sampleSpread(sample: readonly number[]): SampleSpread | null {
  if (sample.length === 0) return null;
  const mean = sample.reduce((sum, value) => sum + value, 0) / sample.length;
  const [p5, p10, p50, p90, p95] = percentiles(sample, [0.05, 0.1, 0.5, 0.9, 0.95]).map(finite);
  return {
    count: sample.length,
    mean: finite(mean),
    p5: p5 ?? null,
    p10: p10 ?? null,
    p50: p50 ?? null,
    p90: p90 ?? null,
    p95: p95 ?? null,
  };
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
