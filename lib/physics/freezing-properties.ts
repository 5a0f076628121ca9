import { ZERO_CELSIUS } from './constants.ts';
import type { Composition } from './food-components.ts';
import { foodEnthalpy } from './food-enthalpy.ts';
import { foodConductivity, foodDensity, foodHeat, iceFraction } from './food-properties.ts';

/** What freezing-time methods need to know of a food. */
export interface FreezingProperties {
  /** Density [kg/m³] and specific heat [J/(kg·K)] before freezing. */
  readonly unfrozenDensity: number;
  readonly unfrozenHeat: number;
  /** Density [kg/m³], specific heat [J/(kg·K)] and conductivity [W/(m·K)] at the final temperature. */
  readonly frozenDensity: number;
  readonly frozenHeat: number;
  readonly frozenConductivity: number;
  /** Heat given up from freezing point to final temperature beyond the frozen specific heat [J/kg]. */
  readonly latentHeat: number;
}

/**
 * Properties for a freezing-time method from a composition. The latent heat is set so that the heat of the whole change is that of
 * `foodEnthalpy`: water that is still liquid at the final temperature gives none.
 * Source: choi-okos-1986 and tchigeov-1979. Throws RangeError on a composition that does not sum to 1, a temperature outside −60 to
 * 150 °C or a final temperature that is not below the freezing point.
 * @param initialFreezing initial freezing point [K]
 * @param finalCentre final temperature [K]
 */
export function freezingProperties(
  composition: Composition,
  initialFreezing: number,
  finalCentre: number,
): FreezingProperties {
  if (!(finalCentre < initialFreezing)) {
    throw new RangeError(`final temperature ${finalCentre} K is not below the freezing point ${initialFreezing} K`);
  }
  const ice = iceFraction(composition, initialFreezing, finalCentre);
  const frozenHeat = foodHeat(composition, ice, finalCentre);
  const released =
    foodEnthalpy(composition, initialFreezing, initialFreezing) -
    foodEnthalpy(composition, initialFreezing, finalCentre);
  return {
    unfrozenDensity: foodDensity(composition, 0, initialFreezing),
    unfrozenHeat: foodHeat(composition, 0, Math.max(initialFreezing, ZERO_CELSIUS)),
    frozenDensity: foodDensity(composition, ice, finalCentre),
    frozenHeat,
    frozenConductivity: foodConductivity(composition, ice, finalCentre),
    latentHeat: Math.max(0, released - frozenHeat * (initialFreezing - finalCentre)),
  };
}
