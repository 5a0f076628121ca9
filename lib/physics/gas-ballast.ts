import { GAS_CONSTANT, WATER_MOLAR_MASS } from './constants.ts';

/** A pump with its gas ballast open. */
export interface BallastCase {
  /** Pumping speed at the inlet [m³/s]. */
  readonly speed: number;
  /** Ballast air drawn in, at atmospheric pressure [m³/s]. */
  readonly ballast: number;
  /** Saturation pressure of water at the temperature of the pump [Pa]. */
  readonly saturation: number;
  /** Water vapour in the ballast air [Pa]. */
  readonly ambientVapour: number;
  /** Pressure at which the exhaust valve opens [Pa]. */
  readonly exhaust: number;
  /** Pressure of the atmosphere [Pa]. */
  readonly atmosphere: number;
}

/** Throws RangeError unless the pump is running and its exhaust opens above the saturation pressure (else it cannot condense at all). */
function checkBallast(pump: BallastCase): void {
  if (!(pump.speed > 0 && pump.ballast >= 0 && pump.exhaust > pump.saturation)) {
    throw new RangeError(
      `gas ballast needs a positive speed and an exhaust above saturation, got ${pump.speed} m³/s and ${pump.exhaust} Pa over ${pump.saturation} Pa`,
    );
  }
}

/**
 * Highest pressure of pure water vapour at the inlet that leaves the pump without condensing [Pa]:
 * p_w = (B/S)·(p_s·p_atm − p_a·p_ex)/(p_ex − p_s), never below 0.
 * Source: derived, mole balance of vapour and ballast air at the exhaust valve. Throws RangeError when the exhaust does not open above
 * saturation.
 */
export function ballastTolerance(pump: BallastCase): number {
  checkBallast(pump);
  const { speed, ballast, saturation, ambientVapour, exhaust, atmosphere } = pump;
  const surplus = saturation * atmosphere - ambientVapour * exhaust;
  return Math.max(0, ((ballast / speed) * surplus) / (exhaust - saturation));
}

/**
 * The same pressure in the form many texts print [Pa]: p_w = (B/S)·p_ex·(p_s − p_a)/(p_ex − p_s), never below 0.
 * Source: gas-ballast-texts (from memory). It lets the ballast enter at exhaust instead of atmospheric pressure, so it is a third too
 * high for a valve opening at 1.33 bar. Throws RangeError as `ballastTolerance`.
 */
export function printedBallastTolerance(pump: BallastCase): number {
  return ballastTolerance({ ...pump, atmosphere: pump.exhaust });
}

/**
 * Water that a pump swallows at a vapour pressure [kg/s]: S·p_w·M/(R·T).
 * Source: derived, ideal gas.
 * @param speed [m³/s]
 * @param vapourPressure at the inlet [Pa]
 * @param temperature of the vapour [K]
 */
export function vapourCapacity(speed: number, vapourPressure: number, temperature: number): number {
  return (speed * vapourPressure * WATER_MOLAR_MASS) / (GAS_CONSTANT * temperature);
}
