import { GAS_CONSTANT, WATER_MOLAR_MASS } from './constants.ts';

/**
 * Volume of a kilogram of water vapour [m³/kg]: R·T/(M·p).
 * Source: derived, ideal gas (right within 0.1 % below the triple point pressure). Throws RangeError unless the pressure is positive.
 * @param p [Pa]
 * @param T temperature [K]
 */
export function vapourVolume(p: number, T: number): number {
  if (!(p > 0)) throw new RangeError(`vapour volume needs a positive pressure, got ${p} Pa`);
  return (GAS_CONSTANT * T) / (WATER_MOLAR_MASS * p);
}
