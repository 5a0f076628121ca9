import { type SeededRandom, seededRandom } from '../numeric/seeded-random.ts';
import { SOBOL_DIRECTIONS } from './sobol-directions.ts';

const BITS = 32;
const SCALE = 2 ** BITS;

/** Dimensions there are direction numbers for. */
export const SOBOL_DIMENSIONS = SOBOL_DIRECTIONS.length + 1;

/**
 * The first points of Sobol's sequence [–], each coordinate 0 to below 1, in Gray-code order, the origin first.
 * Best taken in counts of 2ᵏ. Source: joe-kuo-2008.
 * Throws RangeError on more than 128 dimensions or a count that is not whole and 0 to 2³².
 */
export function sobolPoints(count: number, dimensions: number): number[][] {
  requireSize(count, dimensions);
  const columns = directionColumns(dimensions);
  const start = new Array<number>(dimensions).fill(0);
  return walk(count, columns, start).map((point) => point.map((word) => word / SCALE));
}

/**
 * The same sequence scrambled by a seed [–], each coordinate strictly between 0 and 1: in every dimension a random
 * lower-triangular matrix on the bits, then a random shift of them. The even spread of the sequence is kept, each point
 * alone is uniform, and different seeds give independent estimates of the error.
 * Source: matousek-1998, random linear scrambling.
 * Throws RangeError as `sobolPoints` and `seededRandom` do.
 */
export function scrambledSobolPoints(count: number, dimensions: number, seed: number): number[][] {
  requireSize(count, dimensions);
  const random = seededRandom(seed);
  const columns = directionColumns(dimensions).map((column) => scramble(column, random));
  const start = columns.map(() => random.word());
  return walk(count, columns, start).map((point) => point.map((word) => (word + 0.5) / SCALE));
}

/** Points as words: each differs from the one before by the direction number of the lowest zero bit of its index. */
function walk(count: number, columns: readonly (readonly number[])[], start: readonly number[]): number[][] {
  let point = [...start];
  return Array.from({ length: count }, (_, index) => {
    if (index > 0) {
      const bit = trailingZeros(index);
      point = point.map((word, k) => (word ^ (columns[k]?.[bit] ?? 0)) >>> 0);
    }
    return point;
  });
}

function trailingZeros(index: number): number {
  return 31 - Math.clz32(index & -index);
}

/** Direction numbers of each dimension, one word per bit of the index, the leading bit standing for one half. */
function directionColumns(dimensions: number): number[][] {
  return Array.from({ length: dimensions }, (_, dimension) =>
    dimension === 0 ? firstColumn() : column(SOBOL_DIRECTIONS[dimension - 1] ?? [0, [1]]),
  );
}

function firstColumn(): number[] {
  return Array.from({ length: BITS }, (_, bit) => (1 << (BITS - 1 - bit)) >>> 0);
}

/** v_i = a_1 v_(i−1) ⊕ … ⊕ a_(s−1) v_(i−s+1) ⊕ v_(i−s) ⊕ (v_(i−s) >> s), from the starting values m_i·2^(31−i). */
function column([coefficients, start]: readonly [number, readonly number[]]): number[] {
  const degree = start.length;
  const words = start.map((value, bit) => (value << (BITS - 1 - bit)) >>> 0);
  for (let bit = degree; bit < BITS; bit += 1) {
    const oldest = words[bit - degree] ?? 0;
    let word = oldest ^ (oldest >>> degree);
    for (let k = 1; k < degree; k += 1) {
      if ((coefficients >>> (degree - 1 - k)) & 1) word ^= words[bit - k] ?? 0;
    }
    words.push(word >>> 0);
  }
  return words;
}

/** The column under a random lower-triangular matrix with ones on its diagonal: leading bits are never lost. */
function scramble(words: readonly number[], random: SeededRandom): number[] {
  const rows = Array.from({ length: BITS }, (_, row) => {
    const diagonal = (1 << (BITS - 1 - row)) >>> 0;
    const above = row === 0 ? 0 : (random.word() & ~(2 * diagonal - 1)) >>> 0;
    return (above | diagonal) >>> 0;
  });
  return words.map((word) =>
    rows.reduce((sum, mask, row) => (parity(mask & word) ? (sum | (1 << (BITS - 1 - row))) >>> 0 : sum), 0),
  );
}

function parity(word: number): number {
  let folded = word;
  for (const by of [16, 8, 4, 2, 1]) folded ^= folded >>> by;
  return folded & 1;
}

function requireSize(count: number, dimensions: number): void {
  if (!Number.isInteger(dimensions) || dimensions < 1 || dimensions > SOBOL_DIMENSIONS) {
    throw new RangeError(`Sobol points in ${dimensions} dimensions, expected 1 to ${SOBOL_DIMENSIONS}`);
  }
  if (!Number.isInteger(count) || count < 0 || count > SCALE) throw new RangeError(`${count} Sobol points`);
}
