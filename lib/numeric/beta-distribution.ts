import { logGamma } from './log-gamma.ts';
import { exp, log, log1p } from './portable-math.ts';

const MOST_TERMS = 500;
/** Stands in for a denominator of 0 in the continued fraction. */
const TINY = 1e-300;

/**
 * Share of a beta distribution below x [–]: the regularised incomplete beta function I_x(a, b).
 * Continued fraction by the modified Lentz method, on the side of the mean where it converges fast.
 * Source: dlmf, 8.17.22.
 * Valid for a, b > 0 and 0 ≤ x ≤ 1; throws RangeError otherwise. Good to about 1e-13.
 */
export function betaCumulative(x: number, a: number, b: number): number {
  requireShape(a, b);
  if (!(x >= 0 && x <= 1)) throw new RangeError(`beta distribution at ${x}, expected 0 to 1`);
  if (x === 0 || x === 1) return x;
  const front = exp(logDensityFactor(x, a, b));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

/**
 * Value below which a share u of a beta distribution lies [–]: the inverse of `betaCumulative`, by Newton steps kept
 * inside a bracket that is halved whenever a step would leave it.
 * Valid for a, b > 0 and 0 ≤ u ≤ 1; throws RangeError otherwise.
 */
export function betaQuantile(u: number, a: number, b: number): number {
  requireShape(a, b);
  if (!(u >= 0 && u <= 1)) throw new RangeError(`beta quantile of ${u}, expected 0 to 1`);
  if (u === 0 || u === 1) return u;
  // The upper tail is found from its own small share, which keeps its digits.
  return u > 0.5 ? 1 - lowerQuantile(1 - u, b, a) : lowerQuantile(u, a, b);
}

function lowerQuantile(u: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  let x = a / (a + b);
  for (let iteration = 0; iteration < 200 && high - low > Number.EPSILON * x; iteration += 1) {
    const excess = betaCumulative(x, a, b) - u;
    if (excess === 0) return x;
    if (excess > 0) high = x;
    else low = x;
    const next = x - excess / betaDensity(x, a, b);
    if (Math.abs(next - x) <= Number.EPSILON * x) return next;
    x = next > low && next < high ? next : (low + high) / 2;
  }
  return x;
}

function betaDensity(x: number, a: number, b: number): number {
  return exp(logDensityFactor(x, a, b)) / (x * (1 - x));
}

/** ln of xᵃ(1−x)ᵇ/B(a, b). */
function logDensityFactor(x: number, a: number, b: number): number {
  return logGamma(a + b) - logGamma(a) - logGamma(b) + a * log(x) + b * log1p(-x);
}

function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST_TERMS; m += 1) {
    const before = value;
    for (const term of terms(m, x, a, b)) {
      d = 1 / notZero(1 + term * d);
      c = notZero(1 + term / c);
      value *= c * d;
    }
    if (Math.abs(value - before) <= Number.EPSILON * Math.abs(value)) break;
  }
  return value;
}

/** Terms 2m and 2m + 1 of the continued fraction. */
function terms(m: number, x: number, a: number, b: number): readonly [number, number] {
  const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
  const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
  return [even, odd];
}

function notZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}

function requireShape(a: number, b: number): void {
  if (!(a > 0) || !(b > 0)) throw new RangeError(`beta distribution of shape ${a}, ${b}, expected above 0`);
}
