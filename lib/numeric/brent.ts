/** How a root search ended. `value` is f at `root`. */
export type RootOutcome =
  | { readonly kind: 'root'; readonly root: number; readonly value: number; readonly iterations: number }
  | { readonly kind: 'noSignChange'; readonly atLow: number; readonly atHigh: number }
  | { readonly kind: 'notConverged'; readonly root: number; readonly value: number; readonly iterations: number };

export interface BrentOptions {
  /** Half-width of the final bracket, absolute (default 1e-12) and relative to the root (default 4 machine epsilons). */
  readonly absolute?: number;
  readonly relative?: number;
  /** Most evaluations after the two at the ends (default 200: a ninth-order root takes over 100). */
  readonly maxIterations?: number;
}

/** Bracket during the search: b is the best point, a the one before, c the other side of the root. */
interface Bracket {
  a: number;
  b: number;
  c: number;
  fa: number;
  fb: number;
  fc: number;
  step: number;
  previousStep: number;
}

/** Makes b the best end and c the opposite one. */
function order(s: Bracket): void {
  if (s.fb > 0 === s.fc > 0) {
    s.c = s.a;
    s.fc = s.fa;
    s.step = s.b - s.a;
    s.previousStep = s.step;
  }
  if (Math.abs(s.fc) < Math.abs(s.fb)) {
    s.a = s.b;
    s.b = s.c;
    s.c = s.a;
    s.fa = s.fb;
    s.fb = s.fc;
    s.fc = s.fa;
  }
}

/** Step p/q by the secant (two points) or inverse quadratic (three points) rule. */
function interpolatedStep(s: Bracket, half: number): { p: number; q: number } {
  const ratio = s.fb / s.fa;
  if (s.a === s.c) return { p: 2 * half * ratio, q: 1 - ratio };
  const u = s.fa / s.fc;
  const v = s.fb / s.fc;
  return { p: ratio * (2 * half * u * (u - v) - (s.b - s.a) * (v - 1)), q: (u - 1) * (v - 1) * (ratio - 1) };
}

/** Chooses interpolation when it shrinks the bracket fast enough, else halving. */
function chooseStep(s: Bracket, half: number, tolerance: number): void {
  if (Math.abs(s.previousStep) >= tolerance && Math.abs(s.fa) > Math.abs(s.fb)) {
    let { p, q } = interpolatedStep(s, half);
    if (p > 0) q = -q;
    p = Math.abs(p);
    if (2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(s.previousStep * q))) {
      s.previousStep = s.step;
      s.step = p / q;
      return;
    }
  }
  s.step = half;
  s.previousStep = half;
}

/**
 * Root of a continuous function between `low` and `high`, where it changes sign, by Brent's method: inverse quadratic and
 * secant steps, kept inside a bracket and replaced by halving when they do not pay.
 * Source: brent-1973, ch. 4. Never leaves the bracket; ends typed, without throwing, when the signs agree at both ends.
 * Throws RangeError when the ends are not finite or not in order, or f is not a number there.
 */
export function brent(f: (x: number) => number, low: number, high: number, options: BrentOptions = {}): RootOutcome {
  const { absolute = 1e-12, relative = 4 * Number.EPSILON, maxIterations = 200 } = options;
  if (!(Number.isFinite(low) && Number.isFinite(high) && low <= high)) {
    throw new RangeError(`brent needs finite ends in order, got ${low} and ${high}`);
  }
  const fLow = f(low);
  const fHigh = f(high);
  if (Number.isNaN(fLow) || Number.isNaN(fHigh)) {
    throw new RangeError(`brent needs numbers at the ends, got f(${low}) = ${fLow} and f(${high}) = ${fHigh}`);
  }
  if (fLow === 0) return { kind: 'root', root: low, value: 0, iterations: 0 };
  if (fHigh === 0) return { kind: 'root', root: high, value: 0, iterations: 0 };
  if (fLow > 0 === fHigh > 0) return { kind: 'noSignChange', atLow: fLow, atHigh: fHigh };
  const width = high - low;
  const s: Bracket = { a: low, b: high, c: high, fa: fLow, fb: fHigh, fc: fHigh, step: width, previousStep: width };
  return search(f, s, absolute, relative, maxIterations);
}

function search(f: (x: number) => number, s: Bracket, absolute: number, relative: number, limit: number): RootOutcome {
  for (let iterations = 0; iterations <= limit; iterations += 1) {
    order(s);
    const tolerance = absolute + relative * Math.abs(s.b);
    const half = 0.5 * (s.c - s.b);
    if (s.fb === 0 || Math.abs(half) <= tolerance) return { kind: 'root', root: s.b, value: s.fb, iterations };
    chooseStep(s, half, tolerance);
    s.a = s.b;
    s.fa = s.fb;
    s.b += Math.abs(s.step) > tolerance ? s.step : Math.sign(half) * tolerance;
    s.fb = f(s.b);
  }
  return { kind: 'notConverged', root: s.b, value: s.fb, iterations: limit };
}
