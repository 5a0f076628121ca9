import { chebyshevFit, evaluateFit, type FitValue } from '../numeric/chebyshev-fit.ts';
import { exp, log } from '../numeric/portable-math.ts';
import { TRIPLE_TEMPERATURE } from './constants.ts';
import { sublimationHeat } from './ice-latent-heat.ts';
import { type IceVapour, icePressure, iceVapour } from './ice-pressure.ts';
import { type IceFront, iceFront, iceTemperature } from './ice-temperature.ts';

/**
 * The laws of ice once more for the inner loop, as polynomials made from the exact laws when this module is loaded: ln p
 * against 1/T is almost a straight line. They agree with the exact laws to 1e-11 (a test holds them to it); outside the range of
 * the fits the exact laws are called.
 */
const COLDEST = 160;
const LOWEST_PRESSURE = icePressure(COLDEST);
const HIGHEST_PRESSURE = icePressure(TRIPLE_TEMPERATURE);
const DEGREE = 12;

const logPressureByInverse = chebyshevFit(
  (inverse) => log(icePressure(Math.min(TRIPLE_TEMPERATURE, 1 / inverse))),
  1 / TRIPLE_TEMPERATURE,
  1 / COLDEST,
  DEGREE,
);

const inverseByLogPressure = chebyshevFit(
  (logPressure) => 1 / iceTemperature(Math.min(HIGHEST_PRESSURE, Math.max(LOWEST_PRESSURE, exp(logPressure)))),
  log(LOWEST_PRESSURE),
  log(HIGHEST_PRESSURE),
  DEGREE,
);

const heatByTemperature = chebyshevFit(sublimationHeat, COLDEST, TRIPLE_TEMPERATURE, DEGREE);

const fit: FitValue = { value: 0, slope: 0 };

/** `iceVapour` for the inner loop. Source: iapws-r14-08. @param T temperature [K] */
export function fastIceVapour(T: number, out: IceVapour): void {
  if (!(T >= COLDEST && T <= TRIPLE_TEMPERATURE)) {
    iceVapour(T, out);
    return;
  }
  evaluateFit(logPressureByInverse, 1 / T, fit);
  out.pressure = exp(fit.value);
  out.slope = (-out.pressure * fit.slope) / (T * T);
}

/** `iceFront` for the inner loop. Source: iapws-r14-08. @param p water-vapour pressure [Pa] */
export function fastIceFront(p: number, out: IceFront): void {
  if (!(p >= LOWEST_PRESSURE && p <= HIGHEST_PRESSURE)) {
    iceFront(p, out);
    return;
  }
  evaluateFit(inverseByLogPressure, log(p), fit);
  out.temperature = 1 / fit.value;
  out.slope = (-p * fit.value * fit.value) / fit.slope;
}

/** `sublimationHeat` for the inner loop [J/kg]. Source: murphy-koop-2005. @param T temperature [K] */
export function fastSublimationHeat(T: number): number {
  if (!(T >= COLDEST && T <= TRIPLE_TEMPERATURE)) return sublimationHeat(T);
  evaluateFit(heatByTemperature, T, fit);
  return fit.value;
}
