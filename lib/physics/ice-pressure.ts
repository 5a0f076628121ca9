import { TRIPLE_PRESSURE, TRIPLE_TEMPERATURE } from './constants.ts';

/** Coldest temperature of the equation [K]. */
const COLDEST = 50;

const A1 = -21.2144006;
const A2 = 27.3203819;
const A3 = -6.1059813;
const B1 = 0.00333333333;
const B2 = 1.20666667;
const B3 = 1.70333333;

/** Argument out of 50–273.16 K is a mistake of the caller, never of the user. */
function checkRange(T: number): void {
  if (!(T >= COLDEST && T <= TRIPLE_TEMPERATURE)) {
    throw new RangeError(`ice pressure needs ${COLDEST}–${TRIPLE_TEMPERATURE} K, got ${T} K`);
  }
}

/**
 * Natural logarithm of the pressure over ice relative to the triple point [-]; the formula of `icePressure` without its range check.
 * It continues smoothly a little above the triple point, which a root search needs.
 * Source: iapws-r14-08, eq. 6.
 * @param T temperature [K]
 */
export function logIcePressure(T: number): number {
  const theta = T / TRIPLE_TEMPERATURE;
  const x = Math.log(theta);
  return (A1 * Math.exp(B1 * x) + A2 * Math.exp(B2 * x) + A3 * Math.exp(B3 * x)) / theta;
}

/**
 * Slope of `logIcePressure` against 1/T [K], negative of the sublimation heat over R where vapour is ideal.
 * Source: iapws-r14-08, eq. 6, differentiated.
 * @param T temperature [K]
 */
export function logIcePressureByInverse(T: number): number {
  const theta = T / TRIPLE_TEMPERATURE;
  const x = Math.log(theta);
  const sum = A1 * (B1 - 1) * Math.exp(B1 * x) + A2 * (B2 - 1) * Math.exp(B2 * x) + A3 * (B3 - 1) * Math.exp(B3 * x);
  return -sum * TRIPLE_TEMPERATURE;
}

/**
 * Vapour pressure over ice [Pa].
 * ln(p/p_t) = (1/θ)·Σ a_i·θ^b_i, θ = T/T_t.
 * Source: iapws-r14-08, eq. 6. Valid 50–273.16 K; throws RangeError outside. Uncertainty 0.01 % near 273 K, under 1 % above 150 K.
 * @param T temperature [K]
 */
export function icePressure(T: number): number {
  checkRange(T);
  return TRIPLE_PRESSURE * Math.exp(logIcePressure(T));
}

/**
 * Slope of the vapour pressure over ice with temperature [Pa/K].
 * dp/dT = −(p/T²)·d ln p/d(1/T).
 * Source: iapws-r14-08, eq. 6, differentiated. Valid 50–273.16 K; throws RangeError outside.
 * @param T temperature [K]
 */
export function icePressureSlope(T: number): number {
  return (-icePressure(T) * logIcePressureByInverse(T)) / (T * T);
}

/** Pressure over ice and its slope together; written in place so that an inner loop allocates nothing. */
export interface IceVapour {
  /** [Pa] */
  pressure: number;
  /** [Pa/K] */
  slope: number;
}

/** ln(p/p_t) and its slope against 1/T [K] together; written in place. */
export interface LogIcePressure {
  value: number;
  byInverse: number;
}

/** `logIcePressure` and `logIcePressureByInverse` at a temperature [K] at the price of one, into `out`. Same source. */
export function logIcePressureBoth(T: number, out: LogIcePressure): void {
  const theta = T / TRIPLE_TEMPERATURE;
  const x = Math.log(theta);
  const first = A1 * Math.exp(B1 * x);
  const second = A2 * Math.exp(B2 * x);
  const third = A3 * Math.exp(B3 * x);
  out.value = (first + second + third) / theta;
  out.byInverse = -TRIPLE_TEMPERATURE * ((B1 - 1) * first + (B2 - 1) * second + (B3 - 1) * third);
}

const both: LogIcePressure = { value: 0, byInverse: 0 };

/** `icePressure` and `icePressureSlope` at a temperature [K] at the price of one, into `out`. Same source, range and errors. */
export function iceVapour(T: number, out: IceVapour): void {
  checkRange(T);
  logIcePressureBoth(T, both);
  out.pressure = TRIPLE_PRESSURE * Math.exp(both.value);
  out.slope = (-out.pressure * both.byInverse) / (T * T);
}
