import { percentile } from './percentile.ts';
import { standardError } from './standard-error.ts';

/** How well mean and median are known after the first draws, in the unit of the figure. */
export interface ConvergencePoint {
  readonly draws: number;
  readonly mean: number;
  /** Half the width of the interval that holds the true mean 19 times in 20. */
  readonly meanHalfWidth: number;
  readonly median: number;
  readonly medianHalfWidth: number;
}

/** Two-sided 95 % point of the normal distribution. */
const NORMAL_95 = 1.959964;
/** Fewer draws than this have no honest interval. */
const FEWEST = 16;

/**
 * Mean and median of the first 16, 32, 64 … and of all draws, with the half-width of their 95 % intervals as if the draws
 * were independent: mean by its standard error, median by the ranks n/2 ± 1.96·√n/2. Points spread evenly do better
 * than that, so it errs on the careful side.
 * Source: derived.
 * Throws RangeError on a value that is not finite.
 * @param values of the draws in their order, any one unit
 */
export function convergence(values: readonly number[]): ConvergencePoint[] {
  const odd = values.find((value) => !Number.isFinite(value));
  if (odd !== undefined) throw new RangeError(`convergence of a sample that holds ${odd}`);
  const counts: number[] = [];
  for (let count = FEWEST; count < values.length; count *= 2) counts.push(count);
  if (values.length >= FEWEST) counts.push(values.length);
  return counts.map((count) => pointOf(values.slice(0, count)));
}

function pointOf(values: readonly number[]): ConvergencePoint {
  const draws = values.length;
  const sorted = [...values].sort((a, b) => a - b);
  return {
    draws,
    mean: values.reduce((sum, value) => sum + value, 0) / draws,
    meanHalfWidth: NORMAL_95 * standardError(values),
    median: percentile(values, 0.5),
    medianHalfWidth: medianHalfWidth(sorted),
  };
}

function medianHalfWidth(sorted: readonly number[]): number {
  const n = sorted.length;
  const reach = (NORMAL_95 * Math.sqrt(n)) / 2;
  const low = sorted[Math.max(0, Math.floor(n / 2 - reach) - 1)] ?? 0;
  const high = sorted[Math.min(n - 1, Math.ceil(n / 2 + reach))] ?? 0;
  return (high - low) / 2;
}
