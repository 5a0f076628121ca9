import { seededRandom } from '../numeric/seeded-random.ts';
import { SOBOL_DIMENSIONS, scrambledSobolPoints } from './sobol.ts';

/** Told from the seed of the Sobol points, so that the two streams share nothing. */
const OTHER_STREAM = 0x9e3779b9;

/**
 * Points at which to draw uncertain inputs [–], every coordinate strictly between 0 and 1, one coordinate an input:
 * Sobol points scrambled by the seed, and a Latin hypercube for the dimensions beyond those there are Sobol numbers for.
 * The same seed, count and dimensions give the same points.
 * Sources: matousek-1998, mckay-1979.
 * Throws RangeError on a count or a number of dimensions that is not whole and 0 or more, or a bad seed.
 * @param count best 2ᵏ
 */
export function samplePoints(count: number, dimensions: number, seed: number): number[][] {
  if (!Number.isInteger(dimensions) || dimensions < 0) throw new RangeError(`points in ${dimensions} dimensions`);
  const spread = scrambledSobolPoints(count, Math.max(1, Math.min(dimensions, SOBOL_DIMENSIONS)), seed);
  const columns = latinColumns(count, dimensions - SOBOL_DIMENSIONS, seed);
  return spread.map((point, row) => [
    ...point.slice(0, dimensions),
    ...columns.map((column) => column[row] ?? Number.NaN),
  ]);
}

/** Columns in which each of `count` equal strata is hit once, at random within it and in random order. */
function latinColumns(count: number, columns: number, seed: number): number[][] {
  if (columns <= 0) return [];
  const random = seededRandom((seed ^ OTHER_STREAM) >>> 0);
  return Array.from({ length: columns }, () => {
    const order = Array.from({ length: count }, (_, stratum) => stratum);
    for (let last = count - 1; last > 0; last -= 1) {
      const other = Math.floor(random.uniform() * (last + 1));
      [order[last], order[other]] = [order[other] ?? 0, order[last] ?? 0];
    }
    return order.map((stratum) => (stratum + random.uniform()) / count);
  });
}
