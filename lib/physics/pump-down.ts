import { exp, log } from '../numeric/portable-math.ts';

/** A vessel pumped at constant speed, with gas leaking in. */
export interface PumpDownCase {
  /** Volume [m³]. */
  readonly volume: number;
  /** Pumping speed [m³/s]. */
  readonly speed: number;
  /** Ultimate pressure of the pump [Pa]. */
  readonly ultimate: number;
  /** Gas load [Pa·m³/s]. */
  readonly leak: number;
  /** Pressure at the start [Pa]. */
  readonly start: number;
}

/** Pressure that pump and leak settle at [Pa]: p_u = p_ult + Q/S. Source: derived. */
export function settledPressure(vessel: PumpDownCase): number {
  return vessel.ultimate + vessel.leak / vessel.speed;
}

/**
 * Pressure after a time of pumping [Pa]: p_u + (p0 − p_u)·exp(−S·t/V).
 * Source: derived, from V·dp/dt = Q − S·(p − p_ult).
 * @param time [s]
 */
export function pumpDownPressure(vessel: PumpDownCase, time: number): number {
  const settled = settledPressure(vessel);
  return settled + (vessel.start - settled) * exp((-vessel.speed * time) / vessel.volume);
}

/**
 * Time to pump down to a pressure [s]: (V/S)·ln((p0 − p_u)/(p − p_u)); Infinity is never returned.
 * Source: derived; without leak and ultimate pressure it is the textbook (V/S)·ln(p0/p).
 * Throws RangeError unless the target lies between the settled and the starting pressure.
 * @param target [Pa]
 */
export function pumpDownTime(vessel: PumpDownCase, target: number): number {
  const settled = settledPressure(vessel);
  if (!(target > settled && target <= vessel.start)) {
    throw new RangeError(`pump-down from ${vessel.start} Pa settles at ${settled} Pa and never passes ${target} Pa`);
  }
  return (vessel.volume / vessel.speed) * log((vessel.start - settled) / (target - settled));
}

/**
 * Time to pump down through a hose in viscous flow, Q = (κ/2)·(p² − p_m²), without leak [s]:
 * t = (V/S)·(F(x0) − F(x1)), F(x) = asinh x − (√(1 + x²) + 1)/x, x = κ·p/S.
 * Source: derived. Throws RangeError unless 0 < target ≤ start.
 * @param viscous κ [m³/(s·Pa)]
 * @param target [Pa]
 */
export function hosePumpDownTime(vessel: PumpDownCase, viscous: number, target: number): number {
  if (!(target > 0 && target <= vessel.start)) {
    throw new RangeError(`pump-down from ${vessel.start} Pa never passes ${target} Pa`);
  }
  const perPressure = viscous / vessel.speed;
  const rise = hoseIntegral(perPressure * vessel.start) - hoseIntegral(perPressure * target);
  return (vessel.volume / vessel.speed) * rise;
}

function hoseIntegral(x: number): number {
  return log(x + Math.sqrt(1 + x * x)) - (Math.sqrt(1 + x * x) + 1) / x;
}
