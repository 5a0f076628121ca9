import { foodEnthalpy } from '../physics/food-enthalpy.ts';
import { foodConductivity, foodDensity, iceFraction } from '../physics/food-properties.ts';
import { freezingProperties } from '../physics/freezing-properties.ts';
import { type FreezingCase, type FreezingOutcome, freezingTime } from '../physics/freezing-time.ts';
import { temperingTime } from '../physics/tempering-time.ts';
import type { ChamberSpec, FreezerSpec, ProductSpec } from './types.ts';

/** The load is cooled this far below its melt-back limit before the vacuum starts [K]: common practice, no source. */
const SAFETY_MARGIN = 5;

/** The laws of food end here [K]: −60 °C. */
const COLDEST = 213.15;

/** Centre temperature a load must have before vacuum [K]. */
function finalCentre(product: ProductSpec): number {
  return Math.max(COLDEST, Math.min(product.frozenLimit, product.initialFreezing) - SAFETY_MARGIN);
}

/** Mean heat capacity of frozen food between two temperatures, the ice that still forms included [J/(kg·K)]. */
function effectiveHeat(product: ProductSpec, from: number, to: number): number {
  const { composition, initialFreezing } = product;
  const released = foodEnthalpy(composition, initialFreezing, from) - foodEnthalpy(composition, initialFreezing, to);
  return released / (from - to);
}

function cool(product: ProductSpec, slab: FreezingCase): FreezingOutcome {
  const { composition, initialFreezing } = product;
  const frozenAlready = slab.initial < initialFreezing;
  if (!frozenAlready) return freezingTime(slab, freezingProperties(composition, initialFreezing, slab.finalCentre));
  if (slab.initial <= slab.finalCentre) return { kind: 'frozen', time: 0 };
  const ice = iceFraction(composition, initialFreezing, slab.finalCentre);
  return temperingTime(slab, {
    density: foodDensity(composition, ice, slab.finalCentre),
    heat: effectiveHeat(product, slab.initial, slab.finalCentre),
    conductivity: foodConductivity(composition, ice, slab.finalCentre),
  });
}

function coolingTime(
  product: ProductSpec,
  initial: number,
  ambient: number,
  coefficient: number,
  sides: 1 | 2,
): number | null {
  const slab = {
    thickness: product.pieceThickness,
    sides,
    coefficient,
    ambient,
    initial,
    finalCentre: finalCentre(product),
  };
  const outcome = cool(product, slab);
  return outcome.kind === 'frozen' ? outcome.time : null;
}

/** Trays stand this much warmer than the freezer's air when they are taken out [K]. */
const FREEZER_APPROACH = 1;

/**
 * Time in the chamber before pump-down [s]: freezing, or cooling a frozen load to its margin, on the cold shelf, and at least
 * the time the trap needs to get cold. Null when the shelf is not cold enough ever to freeze it.
 * @param freezer the freezer the load comes from; null when it arrives as its loading temperature says
 */
export function chamberFreezingTime(
  product: ProductSpec,
  chamber: ChamberSpec,
  freezer: FreezerSpec | null,
): number | null {
  if (product.form === 'bound') return chamber.trapCooling;
  const fromFreezer = freezer !== null && product.preFrozen;
  const initial = fromFreezer
    ? Math.min(product.loadingTemperature, freezer.temperature + FREEZER_APPROACH)
    : product.loadingTemperature;
  const time = coolingTime(product, initial, chamber.freezingTemperature, chamber.freezingCoefficient, 1);
  return time === null ? null : Math.max(chamber.trapCooling, time);
}

/** Time in the shop's freezer [s], cold air on both sides; 0 for loads that do not go there, null when it is not cold enough. */
export function freezerFreezingTime(product: ProductSpec, freezer: FreezerSpec): number | null {
  if (product.form === 'bound' || !product.preFrozen) return 0;
  return coolingTime(product, product.loadingTemperature, freezer.temperature, freezer.coefficient, 2);
}
