/** Beyond this degree the binomial weights leave the range of a double. */
const MAXIMUM_DEGREE = 1000;

/** Roots (or mirrored roots) below 1 that lie closer together than this are given as one. */
const TOLD_APART = 1e-6;

/** A stretch that holds a root: one point where the sign changes, or where p cannot be told from zero, its ends. */
interface Span {
  readonly low: number;
  readonly high: number;
}

/**
 * Every positive real root of c₀ + c₁·x + … + cₙ·xⁿ [–], ascending; a repeated root is given once.
 *
 * The polynomial on (0, 1) and its mirror image (y = 1/x) on (0, 1) are written in Bernstein form: the number of sign
 * changes of those coefficients bounds the number of roots from above and has the same parity, so 0 means none and 1
 * means exactly one. Intervals with more are halved (de Casteljau) until that, or until p is no larger than its own
 * rounding, where roots touch. A lone root is found by bisection to the last bit; roots closer than 1e-6 are given once.
 * An empty list for a polynomial that is zero throughout.
 * Throws RangeError on a coefficient that is not finite and above degree 1000.
 * @param coefficients c₀ … cₙ, lowest power first
 */
export function positiveRoots(coefficients: readonly number[]): number[] {
  requireUsable(coefficients);
  const polynomial = withoutOuterZeros(coefficients);
  const changes = signChanges(polynomial);
  if (changes === 0) return [];
  const mirror = polynomial.toReversed();
  const atOne = polynomial.reduce((sum, coefficient) => sum + coefficient, 0);
  const middle = atOne === 0 ? [1] : [];
  if (changes === 1) return singleRoot(polynomial, mirror, atOne);
  const near = rootsBelowOne(polynomial, atOne);
  const far = rootsBelowOne(mirror, atOne).map((root) => 1 / root);
  return [...near, ...middle, ...far.toReversed()];
}

/** How often neighbouring coefficients differ in sign, zeros left out [count]. */
export function signChanges(values: readonly number[]): number {
  let changes = 0;
  let last = 0;
  for (const value of values) {
    if (value === 0) continue;
    if (last !== 0 && value > 0 !== last > 0) changes += 1;
    last = value;
  }
  return changes;
}

function requireUsable(coefficients: readonly number[]): void {
  if (coefficients.length > MAXIMUM_DEGREE + 1) {
    throw new RangeError(`polynomial of degree ${coefficients.length - 1} is above ${MAXIMUM_DEGREE}`);
  }
  const wrong = coefficients.find((coefficient) => !Number.isFinite(coefficient));
  if (wrong !== undefined) throw new RangeError(`polynomial coefficient ${wrong} is not finite`);
}

/** Leading zeros are roots at 0 and trailing ones lower the degree: neither moves a positive root. */
function withoutOuterZeros(coefficients: readonly number[]): number[] {
  const first = coefficients.findIndex((coefficient) => coefficient !== 0);
  if (first < 0) return [];
  const last = coefficients.findLastIndex((coefficient) => coefficient !== 0);
  return coefficients.slice(first, last + 1);
}

/** Descartes: one sign change is exactly one positive root; the value at 1 says on which side of 1 it lies. */
function singleRoot(polynomial: readonly number[], mirror: readonly number[], atOne: number): number[] {
  if (atOne === 0) return [1];
  const lowest = polynomial[0] ?? 0;
  return atOne > 0 !== lowest > 0 ? [bisect(polynomial, 0, 1, lowest)] : [1 / bisect(mirror, 0, 1, mirror[0] ?? 0)];
}

function rootsBelowOne(polynomial: readonly number[], atOne: number): number[] {
  const bernstein = toBernstein(polynomial);
  // Both halves must agree on the sign at 1, or a root there could be lost or counted twice.
  bernstein[bernstein.length - 1] = atOne;
  return merged(isolate(polynomial, bernstein, 0, 1)).map((span) => (span.low + span.high) / 2);
}

/** Bernstein coefficients on [0, 1]: b_k = Σ_{i≤k} C(k,i)/C(n,i)·c_i. */
function toBernstein(polynomial: readonly number[]): number[] {
  const degree = polynomial.length - 1;
  let choose = 1;
  const result = polynomial.map((coefficient, power) => {
    const scaled = coefficient / choose;
    choose = (choose * (degree - power)) / (power + 1);
    return scaled;
  });
  for (let pass = 1; pass <= degree; pass += 1) {
    for (let k = degree; k >= pass; k -= 1) result[k] = (result[k] ?? 0) + (result[k - 1] ?? 0);
  }
  return result;
}

function isolate(polynomial: readonly number[], bernstein: readonly number[], low: number, high: number): Span[] {
  if (isRounding(polynomial, bernstein, high)) return [{ low, high }];
  const changes = signChanges(bernstein);
  if (changes === 0) return [];
  if (changes === 1) return [pointAt(bisect(polynomial, low, high, bernstein.find((value) => value !== 0) ?? 0))];
  const { left, right } = halve(bernstein);
  const middle = (low + high) / 2;
  const onMiddle = right[0] === 0 ? [pointAt(middle)] : [];
  return [...isolate(polynomial, left, low, middle), ...onMiddle, ...isolate(polynomial, right, middle, high)];
}

/** True when no Bernstein coefficient on an interval that ends at `high` stands out of the rounding of p there. */
function isRounding(polynomial: readonly number[], bernstein: readonly number[], high: number): boolean {
  const rounding = 8 * polynomial.length * Number.EPSILON * evaluate(polynomial.map(Math.abs), high);
  return bernstein.every((value) => Math.abs(value) <= rounding);
}

function pointAt(root: number): Span {
  return { low: root, high: root };
}

/** Neighbouring spans, ascending, joined where they cannot be told apart. */
function merged(spans: readonly Span[]): Span[] {
  const joined: Span[] = [];
  for (const span of spans) {
    const last = joined.at(-1);
    if (last && span.low - last.high <= TOLD_APART) joined[joined.length - 1] = { low: last.low, high: span.high };
    else joined.push(span);
  }
  return joined;
}

/** De Casteljau at one half: the Bernstein coefficients of the two halves. */
function halve(bernstein: readonly number[]): { left: number[]; right: number[] } {
  const work = [...bernstein];
  const degree = work.length - 1;
  const left = [work[0] ?? 0];
  for (let level = 1; level <= degree; level += 1) {
    for (let k = 0; k <= degree - level; k += 1) work[k] = ((work[k] ?? 0) + (work[k + 1] ?? 0)) / 2;
    left.push(work[0] ?? 0);
  }
  return { left, right: work };
}

/** Bisection to neighbouring doubles; `signAtLow` has the sign of p just above `low`. */
function bisect(polynomial: readonly number[], low: number, high: number, signAtLow: number): number {
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    const value = evaluate(polynomial, middle);
    if (value === 0) return middle;
    if (value > 0 === signAtLow > 0) low = middle;
    else high = middle;
  }
}

/** Horner's rule. */
function evaluate(polynomial: readonly number[], x: number): number {
  let value = 0;
  for (let power = polynomial.length - 1; power >= 0; power -= 1) value = value * x + (polynomial[power] ?? 0);
  return value;
}
