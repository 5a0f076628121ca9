import { vapourVolume } from './vapour-volume.ts';

/** Ice and cold trap, both at their own temperature, joined by a duct. */
export interface DuctSublimation {
  /** Pressure over the ice and over the trap [Pa]. */
  readonly icePressure: number;
  readonly trapPressure: number;
  /** Resistance of the dried layer [m/s] and its area [m²]. */
  readonly resistance: number;
  readonly area: number;
  /** Conductance of the duct [m³/s] and temperature of the vapour in it [K]. */
  readonly conductance: number;
  readonly temperature: number;
}

/**
 * Vapour that flows from ice to trap [kg/s]: ṁ = (p_ice − p_trap)/(R/A + R_w·T/C).
 * Source: derived: two resistances in series, vapour alone.
 */
export function ductSublimation(path: DuctSublimation): number {
  const duct = vapourVolume(1, path.temperature) / path.conductance;
  return (path.icePressure - path.trapPressure) / (path.resistance / path.area + duct);
}

/**
 * Time constant of the pressure rise when the valve is shut over subliming ice [s]: V·R/(R_w·T·A).
 * Source: derived.
 * @param volume [m³]
 * @param resistance of the dried layer [m/s]
 * @param area [m²]
 * @param temperature of the vapour [K]
 */
export function pressureRiseConstant(volume: number, resistance: number, area: number, temperature: number): number {
  return (volume * resistance) / (vapourVolume(1, temperature) * area);
}
