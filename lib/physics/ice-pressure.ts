import { exp, log } from '../numeric/portable-math.ts';
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

/** ln(p/p_t) and its slope against 1/T [K]; written in place so that an inner loop allocates nothing. */
export interface LogIcePressure {
  value: number;
  byInverse: number;
}

/**
 * Logarithm of the pressure over ice relative to the triple point [-] and its slope against 1/T [K], into `out`.
 * The slope is the sublimation heat over −R where vapour is ideal. No range check: it continues smoothly a little above the triple
 * point, which a root search needs.
 * Source: iapws-r14-08, eq. 6, and its derivative.
 * @param T temperature [K]
 */
export function logIcePressure(T: number, out: LogIcePressure): void {
  const theta = T / TRIPLE_TEMPERATURE;
  const x = log(theta);
  const first = A1 * exp(B1 * x);
  const second = A2 * exp(B2 * x);
  const third = A3 * exp(B3 * x);
  out.value = (first + second + third) / theta;
  out.byInverse = -TRIPLE_TEMPERATURE * ((B1 - 1) * first + (B2 - 1) * second + (B3 - 1) * third);
}

/** Pressure over ice [Pa] and its slope [Pa/K]; written in place so that an inner loop allocates nothing. */
export interface IceVapour {
  pressure: number;
  slope: number;
}

const logarithm: LogIcePressure = { value: 0, byInverse: 0 };

/**
 * Vapour pressure over ice [Pa] and its slope with temperature [Pa/K] at the price of one, into `out`:
 * ln(p/p_t) = (1/θ)·Σ a_i·θ^b_i, θ = T/T_t; dp/dT = −(p/T²)·d ln p/d(1/T).
 * Source: iapws-r14-08, eq. 6. Valid 50–273.16 K; throws RangeError outside. Uncertainty 0.01 % near 273 K, under 1 % above 150 K.
 * @param T temperature [K]
 */
export function iceVapour(T: number, out: IceVapour): void {
  checkRange(T);
  logIcePressure(T, logarithm);
  out.pressure = TRIPLE_PRESSURE * exp(logarithm.value);
  out.slope = (-out.pressure * logarithm.byInverse) / (T * T);
}

const vapour: IceVapour = { pressure: 0, slope: 0 };

/** Vapour pressure over ice [Pa]; see `iceVapour`. @param T temperature [K] */
export function icePressure(T: number): number {
  iceVapour(T, vapour);
  return vapour.pressure;
}

/** Slope of the vapour pressure over ice with temperature [Pa/K]; see `iceVapour`. @param T temperature [K] */
export function icePressureSlope(T: number): number {
  iceVapour(T, vapour);
  return vapour.slope;
}
