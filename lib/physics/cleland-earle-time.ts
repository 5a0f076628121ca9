import type { PlankCase } from './plank-time.ts';

/** A slab with the heat it holds before and after freezing; `heat` is the change from freezing point to −10 °C [J/m³]. */
export interface ClelandEarleCase extends PlankCase {
  /** Temperature at the start [K]. */
  readonly initial: number;
  /** Volumetric heat capacity unfrozen and frozen [J/(m³·K)]. */
  readonly unfrozenCapacity: number;
  readonly frozenCapacity: number;
}

/**
 * Time to freeze a slab to −10 °C at its centre [s], by Cleland and Earle: Plank's form with fitted coefficients,
 * P = 0.5072 + 0.2018·Pk + Ste·(0.3224·Pk + 0.0105/Bi + 0.0681), R = 0.1684 + Ste·(0.2740·Pk − 0.0135).
 * Source: cleland-earle-1979, through ashrae-refrigeration-2006, ch. 10 (from memory). A cross-check of `freezingTime`.
 * Throws RangeError when the ambient is not below the freezing point.
 */
export function clelandEarleTime(slab: ClelandEarleCase): number {
  const { thickness, coefficient, ambient, freezing, conductivity, heat } = slab;
  if (!(ambient < freezing)) throw new RangeError(`ambient ${ambient} K is not below the freezing point ${freezing} K`);
  const stefan = (slab.frozenCapacity * (freezing - ambient)) / heat;
  const plank = (slab.unfrozenCapacity * (slab.initial - freezing)) / heat;
  const biot = (coefficient * thickness) / conductivity;
  const p = 0.5072 + 0.2018 * plank + stefan * (0.3224 * plank + 0.0105 / biot + 0.0681);
  const r = 0.1684 + stefan * (0.274 * plank - 0.0135);
  return (heat / (freezing - ambient)) * ((p * thickness) / coefficient + (r * thickness * thickness) / conductivity);
}
