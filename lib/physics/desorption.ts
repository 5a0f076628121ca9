import { exp, log } from '../numeric/portable-math.ts';
import { GAS_CONSTANT } from './constants.ts';

/**
 * Rate constant of desorption [1/s]: k = A·exp(−E/(R·T)).
 * Source: pikal-1990 (from memory). Throws RangeError unless the temperature is positive.
 * @param rate A, pre-exponential rate [1/s]
 * @param activationEnergy E [J/mol]
 * @param T temperature [K]
 */
export function desorptionRate(rate: number, activationEnergy: number, T: number): number {
  if (!(T > 0)) throw new RangeError(`desorption needs a positive temperature, got ${T} K`);
  return rate * exp(-activationEnergy / (GAS_CONSTANT * T));
}

/**
 * Moisture after a time at one temperature [kg/kg dry]: w = w_e + (w0 − w_e)·exp(−k·t), the solution of dw/dt = −k·(w − w_e).
 * Source: derived.
 * @param start w0 [kg/kg dry]
 * @param equilibrium w_e [kg/kg dry]
 * @param rate k [1/s]
 * @param time [s]
 */
export function moistureAfter(start: number, equilibrium: number, rate: number, time: number): number {
  return equilibrium + (start - equilibrium) * exp(-rate * time);
}

/**
 * Time to dry from one moisture to another at one temperature [s]: ln((w0 − w_e)/(w − w_e))/k; 0 when it is dry enough already.
 * Source: derived. Throws RangeError when the target is not above the equilibrium, for it is never reached.
 * @param start w0 [kg/kg dry]
 * @param target w [kg/kg dry]
 * @param equilibrium w_e [kg/kg dry]
 * @param rate k [1/s]
 */
export function desorptionTime(start: number, target: number, equilibrium: number, rate: number): number {
  if (start <= target) return 0;
  if (!(target > equilibrium && rate > 0)) {
    throw new RangeError(
      `moisture ${target} is not above its equilibrium ${equilibrium}, or the rate ${rate} 1/s is not positive`,
    );
  }
  return log((start - equilibrium) / (target - equilibrium)) / rate;
}
