import { ZERO_CELSIUS } from './constants.ts';
import type { FreezingProperties } from './freezing-properties.ts';

/** A slab, or pieces taken as slabs, in cold air or on a cold shelf. */
export interface FreezingCase {
  /** Whole thickness [m]. */
  readonly thickness: number;
  /** Cooled faces: 2 in air or between plates, 1 on a shelf under still air. */
  readonly sides: 1 | 2;
  /** Surface heat transfer [W/(m²·K)]. */
  readonly coefficient: number;
  /** Temperature of the air or shelf [K]. */
  readonly ambient: number;
  /** Temperature of the load at the start [K]. */
  readonly initial: number;
  /** Temperature its centre must reach [K]. */
  readonly finalCentre: number;
}

/** How freezing ends: after a time [s], or never because the ambient is not cold enough. */
export type FreezingOutcome =
  | { readonly kind: 'frozen'; readonly time: number }
  | { readonly kind: 'neverFreezes'; readonly ambient: number; readonly needed: number };

/** Throws RangeError unless thickness and heat transfer are positive. */
export function checkSlab(slab: { readonly thickness: number; readonly coefficient: number }): void {
  if (!(slab.thickness > 0 && slab.coefficient > 0 && Number.isFinite(slab.thickness + slab.coefficient))) {
    throw new RangeError(
      `slab needs positive thickness and heat transfer, got ${slab.thickness} m and ${slab.coefficient} W/(m²·K)`,
    );
  }
}

/** Pham's mean freezing temperature [K]: 1.8 + 0.263·T_c + 0.105·T_a in °C. */
export function meanFreezingTemperature(finalCentre: number, ambient: number): number {
  return ZERO_CELSIUS + 1.8 + 0.263 * (finalCentre - ZERO_CELSIUS) + 0.105 * (ambient - ZERO_CELSIUS);
}

/**
 * Time to freeze a slab from its initial temperature to a final centre temperature [s], by Pham's method:
 * t = (d/h)·(ΔH1/ΔT1 + ΔH2/ΔT2)·(1 + Bi/2), d the depth each cooled face has to freeze.
 * Source: pham-1986 (from memory). Stated for high-moisture foods, Bi 0.02–11; about 10 % against measured times.
 * A load that starts below the mean freezing temperature is counted with all its latent heat still in it, an upper bound; for a load
 * that arrives frozen use `temperingTime`. Typed `neverFreezes` when the ambient is not below the final centre temperature.
 * Throws RangeError on a slab of no size.
 */
export function freezingTime(slab: FreezingCase, food: FreezingProperties): FreezingOutcome {
  checkSlab(slab);
  const { ambient, initial, finalCentre, coefficient } = slab;
  if (initial <= finalCentre) return { kind: 'frozen', time: 0 };
  const mean = meanFreezingTemperature(finalCentre, ambient);
  const needed = Math.min(finalCentre, mean);
  if (!(ambient < needed)) return { kind: 'neverFreezes', ambient, needed };
  const depth = slab.thickness / slab.sides;
  const start = Math.min(mean, initial);
  const chilling = food.unfrozenDensity * food.unfrozenHeat * (initial - start);
  const freezing = food.frozenDensity * (food.latentHeat + food.frozenHeat * Math.max(0, start - finalCentre));
  const perArea = chilling / ((initial + start) / 2 - ambient) + freezing / (start - ambient);
  const biot = (coefficient * depth) / food.frozenConductivity;
  return { kind: 'frozen', time: (depth / coefficient) * perArea * (1 + biot / 2) };
}
