import { cos } from './portable-math.ts';

/** A polynomial on an interval, in powers of u = (x − middle)/half, |u| ≤ 1. */
export interface PolynomialFit {
  readonly middle: number;
  readonly half: number;
  /** Coefficients of 1, u, u² … */
  readonly powers: Float64Array;
}

/** Chebyshev coefficients of a function on [low, high] from its values at the Chebyshev points. */
function chebyshevCoefficients(law: (x: number) => number, low: number, high: number, degree: number): number[] {
  const count = degree + 1;
  const values = Array.from({ length: count }, (_, k) => {
    const u = cos((Math.PI * (k + 0.5)) / count);
    return law(0.5 * (low + high) + 0.5 * (high - low) * u);
  });
  return Array.from({ length: count }, (_, j) => {
    const sum = values.reduce((total, value, k) => total + value * cos((Math.PI * j * (k + 0.5)) / count), 0);
    return ((j === 0 ? 1 : 2) * sum) / count;
  });
}

/** Powers of u of a Chebyshev series, by the recurrence T_{n+1} = 2u·T_n − T_{n−1}. */
function toPowers(coefficients: readonly number[]): Float64Array {
  const size = coefficients.length;
  const powers = new Float64Array(size);
  let before = new Float64Array(size);
  let present = new Float64Array(size);
  before[0] = 1;
  present[1] = 1;
  coefficients.forEach((coefficient, n) => {
    const basis = n === 0 ? before : present;
    for (let i = 0; i < size; i += 1) powers[i] = (powers[i] as number) + coefficient * (basis[i] as number);
    if (n === 0) return;
    const next = new Float64Array(size);
    for (let i = 0; i < size; i += 1) next[i] = 2 * (i > 0 ? (present[i - 1] as number) : 0) - (before[i] as number);
    before = present;
    present = next;
  });
  return powers;
}

/**
 * Polynomial of a degree through the Chebyshev points of an interval: nearly the best there is for a smooth function.
 * Powers lose digits above degree 15 or so.
 */
export function chebyshevFit(law: (x: number) => number, low: number, high: number, degree: number): PolynomialFit {
  return {
    middle: 0.5 * (low + high),
    half: 0.5 * (high - low),
    powers: toPowers(chebyshevCoefficients(law, low, high, degree)),
  };
}

/** A value and its slope; written in place so that an inner loop allocates nothing. */
export interface FitValue {
  value: number;
  slope: number;
}

/** Value and slope of a fit at x, into `out`; only meant inside the interval it was made for. */
export function evaluateFit(fit: PolynomialFit, x: number, out: FitValue): void {
  const { powers } = fit;
  const u = (x - fit.middle) / fit.half;
  let value = powers[powers.length - 1] as number;
  let slope = 0;
  for (let i = powers.length - 2; i >= 0; i -= 1) {
    slope = slope * u + value;
    value = value * u + (powers[i] as number);
  }
  out.value = value;
  out.slope = slope / fit.half;
}
