import type { LoggedBatch } from './logged-batches.ts';

/** A group of batches too small to say which of them is odd. */
const FEWEST = 5;
/** Batches further out than this many usual deviations do not belong. */
const FAR_OUT = 4;
/** Nothing closer than this share of its hours is called odd. */
const LEAST_DEVIATION = 0.06;
/** Middle distance to standard deviation, for a bell curve. */
const MIDDLE_TO_DEVIATION = 1.4826;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? upper)) / 2;
}

/**
 * Batches whose hours stand far out from what the others of their product lead to expect; `misses` are log measured less
 * log expected hours. Judged by medians, so that the odd ones do not hide themselves.
 */
export function oddBatches(batches: readonly LoggedBatch[], misses: readonly number[]): readonly LoggedBatch[] {
  const products = new Set(batches.map((batch) => batch.product));
  return [...products].flatMap((product) => {
    const own = batches.flatMap((batch, i) =>
      batch.product === product ? [{ batch, miss: misses[i] as number }] : [],
    );
    if (own.length < FEWEST) return [];
    const centre = median(own.map(({ miss }) => miss));
    const distances = own.map(({ miss }) => Math.abs(miss - centre));
    const deviation = Math.max(LEAST_DEVIATION, MIDDLE_TO_DEVIATION * median(distances));
    return own.flatMap(({ batch }, i) => ((distances[i] as number) > FAR_OUT * deviation ? [batch] : []));
  });
}
