import { log } from '../numeric/portable-math.ts';
import { TRIPLE_PRESSURE, TRIPLE_TEMPERATURE } from './constants.ts';
import { icePressure, type LogIcePressure, logIcePressure } from './ice-pressure.ts';

/** Coldest ice asked for [K]; no dryer comes near, and the first guess below holds that far. */
const COLDEST = 100;
const LOWEST_PRESSURE = icePressure(COLDEST);
const LOG_TRIPLE_PRESSURE = log(TRIPLE_PRESSURE);

/** Two steps leave less than 1e-14 relative from 100 K to the triple point; see the round-trip test. */
const NEWTON_STEPS = 2;

/** Temperature of ice and the slope of its vapour pressure there; written in place so that an inner loop allocates nothing. */
export interface IceFront {
  /** [K] */
  temperature: number;
  /** dp/dT [Pa/K], good to 1e-6. */
  slope: number;
}

const logarithm: LogIcePressure = { value: 0, byInverse: 0 };

/**
 * Temperature of ice in equilibrium with its vapour [K], the inverse of `icePressure`, and dp/dT there [Pa/K] at no further price, into `out`.
 * The guess is murphy-koop-2005, eq. 8 (0.03 K off); Newton in ln p against 1/T, an almost straight line, makes it exact.
 * Valid for the pressures of 100–273.16 K; throws RangeError outside.
 * @param p water-vapour pressure [Pa]
 */
export function iceFront(p: number, out: IceFront): void {
  if (!(p >= LOWEST_PRESSURE && p <= TRIPLE_PRESSURE)) {
    throw new RangeError(`ice temperature needs ${LOWEST_PRESSURE}–${TRIPLE_PRESSURE} Pa, got ${p} Pa`);
  }
  const logPressure = log(p);
  const wanted = logPressure - LOG_TRIPLE_PRESSURE;
  let inverse = (29.12 - logPressure) / (1.814625 * logPressure + 6190.134);
  for (let i = 0; i < NEWTON_STEPS; i += 1) {
    logIcePressure(1 / inverse, logarithm);
    inverse -= (logarithm.value - wanted) / logarithm.byInverse;
  }
  out.temperature = Math.min(1 / inverse, TRIPLE_TEMPERATURE);
  out.slope = -p * logarithm.byInverse * inverse * inverse;
}

const front: IceFront = { temperature: 0, slope: 0 };

/** Temperature of ice at a vapour pressure [K]; see `iceFront`. @param p water-vapour pressure [Pa] */
export function iceTemperature(p: number): number {
  iceFront(p, front);
  return front.temperature;
}
