/** A stream of pseudo-random numbers that depends on its seed alone. */
export interface SeededRandom {
  /** Next whole number of 0 to 2³² − 1. */
  readonly word: () => number;
  /** Next number strictly between 0 and 1. */
  readonly uniform: () => number;
}

/**
 * Pseudo-random numbers by xoshiro128** (period 2¹²⁸ − 1), its state filled from the seed by the splitmix mixing step.
 * The same seed gives the same numbers on every machine. Not for secrets.
 * Source: blackman-vigna-2021.
 * Throws RangeError when the seed is not a whole number of 0 to 2³² − 1.
 */
export function seededRandom(seed: number): SeededRandom {
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32) {
    throw new RangeError(`seed ${seed} must be a whole number of 0 to 4294967295`);
  }
  return randomFrom(fillState(seed));
}

/** The generator from a given state of four words, not all 0. */
export function randomFrom(start: readonly number[]): SeededRandom {
  const state = Uint32Array.from(start);
  const word = () => step(state);
  return { word, uniform: () => (word() + 0.5) / 2 ** 32 };
}

function step(state: Uint32Array): number {
  const [a = 0, b = 0, c = 0, d = 0] = state;
  const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
  const third = c ^ a;
  const fourth = d ^ b;
  state[0] = a ^ fourth;
  state[1] = b ^ third;
  state[2] = third ^ (b << 9);
  state[3] = rotate(fourth, 11);
  return result;
}

function rotate(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

/** Four words from one by adding the golden ratio and mixing the bits (32-bit splitmix). */
function fillState(seed: number): number[] {
  return [1, 2, 3, 4].map((k) => {
    let word = (seed + Math.imul(k, 0x9e3779b9)) | 0;
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return (word ^ (word >>> 16)) >>> 0;
  });
}
