/*
 * The elementary functions from +, −, ×, ÷ and √ alone. Engines are free in the last bit of Math.exp, log, pow and sin and do
 * differ from version to version; these give every reader of a plan the same figures to the last bit, in any browser and on
 * the command line. A rule of the architecture tests keeps the built-in ones out of `lib`. Accurate to 1e-15 of the value, mostly to the last bit but one.
 */

/** ln 2 in two parts: the first has so few bits that its multiples up to 1100 are exact. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;

/** Least and greatest power of two that a double can be. */
const LEAST_POWER = -1074;
const MOST_POWER = 1023;

/** 2^k for k from −1074 to 1023, each twice the one before. */
const POWERS_OF_TWO = powersOfTwo();

function powersOfTwo(): Float64Array {
  const powers = new Float64Array(MOST_POWER - LEAST_POWER + 1);
  powers[0] = Number.MIN_VALUE;
  for (let k = 1; k < powers.length; k += 1) powers[k] = 2 * (powers[k - 1] as number);
  return powers;
}

/** x·2^k; in two steps where 2^k itself is beyond a double. */
function timesPowerOfTwo(x: number, k: number): number {
  if (k > MOST_POWER) return 2 * x * (POWERS_OF_TWO[k - 1 - LEAST_POWER] as number);
  return x * (POWERS_OF_TWO[k - LEAST_POWER] as number);
}

/** (e^r − 1 − r)/r² for |r| ≤ 0.35, by its series; what is left out is below 1e-17. */
function exponentialTail(r: number): number {
  return (
    1 / 2 +
    r *
      (1 / 6 +
        r *
          (1 / 24 +
            r *
              (1 / 120 +
                r *
                  (1 / 720 +
                    r *
                      (1 / 5040 +
                        r *
                          (1 / 40320 +
                            r *
                              (1 / 362880 +
                                r * (1 / 3628800 + r * (1 / 39916800 + r * (1 / 479001600 + r / 6227020800))))))))))
  );
}

/** e^x: x = k·ln 2 + r, e^r by its series, times 2^k. Infinity above 709.8, 0 below −745.2, NaN of NaN. */
export function exp(x: number): number {
  if (!(x < 709.79)) return x >= 709.79 ? Number.POSITIVE_INFINITY : Number.NaN;
  if (x < -745.2) return 0;
  const k = Math.round(x * Math.LOG2E);
  const r = x - k * LN2_HIGH - k * LN2_LOW;
  return timesPowerOfTwo(1 + (r + r * r * exponentialTail(r)), k);
}

/** e^x − 1, without loss for small x. */
export function expm1(x: number): number {
  return Math.abs(x) < 0.35 ? x + x * x * exponentialTail(x) : exp(x) - 1;
}

const word = new Float64Array(1);
const halves = new Uint32Array(word.buffer);
/** Which half of a double holds its exponent on this machine. */
const HIGH_HALF = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 1 : 0;
const LEAST_NORMAL = 2.2250738585072014e-308;
const TWO_54 = 18014398509481984;

/** ln(1 + f) = f − s·(f − R), s = f/(2 + f), R = 2·s²/3 + 2·s⁴/5 + … for 1/√2 ≤ 1 + f ≤ √2; returns s·(f − R). */
function logarithmTail(f: number): number {
  const s = f / (2 + f);
  const z = s * s;
  const series =
    z *
    (2 / 3 +
      z *
        (2 / 5 +
          z *
            (2 / 7 +
              z * (2 / 9 + z * (2 / 11 + z * (2 / 13 + z * (2 / 15 + z * (2 / 17 + z * (2 / 19 + (z * 2) / 21)))))))));
  return s * (f - series);
}

/** Natural logarithm: x = m·2^k, 1/√2 ≤ m < √2. −Infinity of 0, NaN of a negative number. */
export function log(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  const isSmall = x < LEAST_NORMAL;
  word[0] = isSmall ? x * TWO_54 : x;
  const high = halves[HIGH_HALF] as number;
  let k = (high >>> 20) - 1023 - (isSmall ? 54 : 0);
  halves[HIGH_HALF] = (high & 0xfffff) | 0x3ff00000;
  let m = word[0] as number;
  if (m > Math.SQRT2) {
    m *= 0.5;
    k += 1;
  }
  const f = m - 1;
  return k * LN2_HIGH - (logarithmTail(f) - k * LN2_LOW - f);
}

/** ln(1 + x), without loss for small x: the rounding of 1 + x is divided out again. */
export function log1p(x: number): number {
  const sum = 1 + x;
  if (sum === 1) return x;
  return sum === Number.POSITIVE_INFINITY ? sum : (log(sum) * x) / (sum - 1);
}

/** Largest whole exponent that is multiplied out. */
const MOST_FACTORS = 1024;

function wholePower(x: number, n: number): number {
  let power = 1;
  for (let factor = x, left = n; left > 0; left = Math.floor(left / 2), factor *= factor) {
    if (left % 2 === 1) power *= factor;
  }
  return power;
}

/**
 * x^y: by multiplication for whole y up to 1024, else e^(y·ln x), whose error grows with |y·ln x|.
 * @param x a number, 0 or more unless y is whole
 */
export function pow(x: number, y: number): number {
  if (Number.isInteger(y) && Math.abs(y) <= MOST_FACTORS) {
    return y < 0 ? 1 / wholePower(x, -y) : wholePower(x, y);
  }
  if (x < 0) throw new RangeError(`a negative number has no power that is not whole, got ${x} to the ${y}`);
  return exp(y * log(x));
}

/** π/2 in two parts, as ln 2 above: good for angles up to some hundred turns. */
const QUARTER_HIGH = 1.5707963267341256;
const QUARTER_LOW = 6.077100506506192e-11;

/** sin r for |r| ≤ π/4. */
function sineNearZero(r: number): number {
  const z = r * r;
  const series =
    1 / 6 -
    z * (1 / 120 - z * (1 / 5040 - z * (1 / 362880 - z * (1 / 39916800 - z * (1 / 6227020800 - z / 1307674368000)))));
  return r - r * z * series;
}

/** cos r for |r| ≤ π/4. */
function cosineNearZero(r: number): number {
  const z = r * r;
  const series =
    1 / 24 -
    z *
      (1 / 720 -
        z * (1 / 40320 - z * (1 / 3628800 - z * (1 / 479001600 - z * (1 / 87178291200 - z / 20922789888000)))));
  return 1 - (0.5 * z - z * z * series);
}

function turned(x: number, quarters: number): number {
  const k = Math.round(x / (Math.PI / 2));
  const r = x - k * QUARTER_HIGH - k * QUARTER_LOW;
  const quadrant = (((k + quarters) % 4) + 4) % 4;
  const size = quadrant % 2 === 0 ? sineNearZero(r) : cosineNearZero(r);
  return quadrant < 2 ? size : -size;
}

/** Sine of an angle [rad], |x| below a thousand. */
export function sin(x: number): number {
  return turned(x, 0);
}

/** Cosine of an angle [rad], |x| below a thousand. */
export function cos(x: number): number {
  return turned(x, 1);
}
