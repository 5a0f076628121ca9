import { exp } from '../numeric/portable-math.ts';
import { TRIPLE_TEMPERATURE, WATER_MOLAR_MASS } from './constants.ts';

/** Coldest temperature of the fit [K]. */
const COLDEST = 30;

/**
 * Heat of sublimation of ice [J/kg].
 * L·M = 46782.5 + 35.8925·T − 0.07414·T² + 541.5·exp(−(T/123.75)²) [J/mol].
 * Source: murphy-koop-2005, eq. 5. Valid 30–273.16 K; throws RangeError outside.
 * @param T temperature [K]
 */
export function sublimationHeat(T: number): number {
  if (!(T >= COLDEST && T <= TRIPLE_TEMPERATURE)) {
    throw new RangeError(`sublimation heat needs ${COLDEST}–${TRIPLE_TEMPERATURE} K, got ${T} K`);
  }
  const x = T / 123.75;
  return (46782.5 + (35.8925 - 0.07414 * T) * T + 541.5 * exp(-x * x)) / WATER_MOLAR_MASS;
}
