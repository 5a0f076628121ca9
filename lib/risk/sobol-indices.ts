import { samplePoints } from './sample-points.ts';

/** Points at which the model has to be run: every coordinate strictly between 0 and 1. */
export interface IndexDesign {
  readonly a: readonly (readonly number[])[];
  readonly b: readonly (readonly number[])[];
  /** `mixed[i]` is `a` with coordinate i taken from `b`. */
  readonly mixed: readonly (readonly (readonly number[])[])[];
}

/** What part of the variance of a result comes from each input. */
export interface SobolIndices {
  readonly mean: number;
  readonly variance: number;
  /** Share explained by the input alone [–]; may come out a little below 0 by chance. Null when nothing varies. */
  readonly first: readonly number[] | null;
  /** Share that would stay if all other inputs were known [–]. Null when nothing varies. */
  readonly total: readonly number[] | null;
}

/**
 * Design for first-order and total indices: two independent scrambled samples and their mixtures, in all
 * count·(inputs + 2) runs. Source: saltelli-2010.
 * Throws RangeError as `samplePoints` does.
 * @param count points in each sample, best 2ᵏ
 * @param inputs number of uncertain inputs
 */
export function indexDesign(count: number, inputs: number, seed: number): IndexDesign {
  const points = samplePoints(count, 2 * inputs, seed);
  const a = points.map((point) => point.slice(0, inputs));
  const b = points.map((point) => point.slice(inputs));
  const mixed = Array.from({ length: inputs }, (_, input) =>
    a.map((point, row) => point.map((value, k) => (k === input ? (b[row]?.[k] ?? value) : value))),
  );
  return { a, b, mixed };
}

/**
 * First-order and total indices from results at a design: first-order by the estimator of Saltelli et al. (2010), total
 * by that of Jansen (1999). Results are centred on their mean first, which lowers the noise of the former.
 * Source: saltelli-2010, table 2, estimators (b) and (f).
 * Throws RangeError when the lengths do not fit or there are fewer than two results.
 * @param atA results at `a`, any one unit
 * @param atB results at `b`
 * @param atMixed results at each of `mixed`
 */
export function sobolIndices(
  atA: readonly number[],
  atB: readonly number[],
  atMixed: readonly (readonly number[])[],
): SobolIndices {
  requireLengths(atA, atB, atMixed);
  const all = [...atA, ...atB];
  const mean = average(all);
  const variance = average(all.map((value) => (value - mean) ** 2));
  if (variance === 0) return { mean, variance, first: null, total: null };
  const first = atMixed.map(
    (mixed) => average(mixed.map((value, row) => ((atB[row] ?? 0) - mean) * (value - (atA[row] ?? 0)))) / variance,
  );
  const total = atMixed.map(
    (mixed) => average(mixed.map((value, row) => ((atA[row] ?? 0) - value) ** 2)) / (2 * variance),
  );
  return { mean, variance, first, total };
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function requireLengths(atA: readonly number[], atB: readonly number[], atMixed: readonly (readonly number[])[]): void {
  const lengths = [atA, atB, ...atMixed].map((series) => series.length);
  if (atA.length < 2 || lengths.some((length) => length !== atA.length)) {
    throw new RangeError(`results of lengths ${lengths.join(', ')}, expected one length of 2 or more`);
  }
}
