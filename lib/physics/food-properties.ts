import { log } from '../numeric/portable-math.ts';
import { ZERO_CELSIUS } from './constants.ts';
import {
  COMPONENTS,
  type ComponentFits,
  type Composition,
  type FoodComponent,
  ICE,
  SOLIDS,
  valueAt,
  waterHeat,
} from './food-components.ts';

/** Label figures are rounded; more than this off a sum of 1 is a mistake. */
const SUM_SLACK = 1e-3;

/** The fits hold from −40 °C. Down to −60 °C they are continued: ice stays within 4 % of other data, only unfrozen water goes astray. */
const COLDEST = 213;
const HOTTEST = 424;

/** Throws RangeError unless the fractions are not negative and sum to 1, and T is within −60 to 150 °C (213–424 K, so that a rounded −60 °C passes). */
export function checkFood(composition: Composition, T: number): void {
  const sum = SOLIDS.reduce((total, solid) => total + composition[solid], composition.water);
  const smallest = SOLIDS.reduce((least, solid) => Math.min(least, composition[solid]), composition.water);
  if (!(smallest >= 0 && Math.abs(sum - 1) <= SUM_SLACK)) {
    throw new RangeError(`composition needs fractions that sum to 1, got ${JSON.stringify(composition)}`);
  }
  if (!(T >= COLDEST && T <= HOTTEST)) {
    throw new RangeError(`food properties need ${COLDEST}–${HOTTEST} K, got ${T} K`);
  }
}

function checkIce(composition: Composition, ice: number): void {
  if (!(ice >= 0 && ice <= composition.water)) {
    throw new RangeError(`ice must be between none and the water ${composition.water} kg/kg, got ${ice}`);
  }
}

/**
 * Water that can freeze [kg/kg wet]: max(0, water − unfreezable·(1 − water)). All of it is ice when the load is cold enough to dry.
 * Source: common-practice for taking the unfreezable part in proportion to the solids.
 * @param unfreezable water that never freezes [kg/kg dry matter]
 */
export function freezableWater(composition: Composition, unfreezable: number): number {
  return Math.max(0, composition.water - unfreezable * (1 - composition.water));
}

/**
 * Ice in a food at a temperature [kg/kg wet]: 1.105·x_w/(1 + 0.7138/ln(t_f − t + 1)), t in °C; none at or above the initial freezing point.
 * Source: tchigeov-1979, through ashrae-refrigeration-2006, ch. 9, eq. 5. Stated for −45 °C to t_f and t_f ≥ −2 °C.
 * @param initialFreezing initial freezing point [K]
 * @param T temperature [K]
 */
export function iceFraction(composition: Composition, initialFreezing: number, T: number): number {
  checkFood(composition, T);
  const below = initialFreezing - T;
  if (below <= 0) return 0;
  return Math.min(composition.water, (1.105 * composition.water) / (1 + 0.7138 / log(below + 1)));
}

/** Sum over all components of mass share × weight(component); the water is split in ice and unfrozen. */
function sumComponents(
  composition: Composition,
  ice: number,
  weigh: (fits: ComponentFits, component: FoodComponent | 'ice') => number,
): number {
  let sum = ice * weigh(ICE, 'ice') + (composition.water - ice) * weigh(COMPONENTS.water, 'water');
  for (const solid of SOLIDS) sum += composition[solid] * weigh(COMPONENTS[solid], solid);
  return sum;
}

/** Volume of a kilogram [m³/kg], no pores. */
function specificVolume(composition: Composition, ice: number, T: number): number {
  return sumComponents(composition, ice, (fits) => 1 / valueAt(fits.density, T));
}

/**
 * Density of a food without pores [kg/m³]: 1/Σ x_i/ρ_i.
 * Source: ashrae-refrigeration-2006, ch. 9 (mixing rule from memory). Throws RangeError as `checkFood`.
 * @param ice [kg/kg wet]
 * @param T temperature [K]
 */
export function foodDensity(composition: Composition, ice: number, T: number): number {
  checkFood(composition, T);
  checkIce(composition, ice);
  return 1 / specificVolume(composition, ice, T);
}

/**
 * Thermal conductivity of a food [W/(m·K)]: Σ of volume share × conductivity, components side by side.
 * In a frozen food the ice is one connected phase that carries most of the heat, which is nearest to this rule; it is an upper bound.
 * Source: ashrae-refrigeration-2006, ch. 9, parallel model. No pores. Throws RangeError as `checkFood`.
 * @param ice [kg/kg wet]
 * @param T temperature [K]
 */
export function foodConductivity(composition: Composition, ice: number, T: number): number {
  checkFood(composition, T);
  checkIce(composition, ice);
  const carried = sumComponents(composition, ice, (fits) => valueAt(fits.conductivity, T) / valueAt(fits.density, T));
  return carried / specificVolume(composition, ice, T);
}

/**
 * Specific heat of a food without freezing or thawing [J/(kg·K)]: Σ x_i·c_i.
 * Source: ashrae-refrigeration-2006, ch. 9. Throws RangeError as `checkFood`.
 * @param ice [kg/kg wet]
 * @param T temperature [K]
 */
export function foodHeat(composition: Composition, ice: number, T: number): number {
  checkFood(composition, T);
  checkIce(composition, ice);
  return sumComponents(composition, ice, (fits, component) =>
    valueAt(component === 'water' ? waterHeat(T) : fits.heat, T),
  );
}

/**
 * Specific heat of the dry matter of a food [J/(kg·K)].
 * Source: choi-okos-1986. Throws RangeError as `checkFood`, and for a food of water alone.
 * @param T temperature [K]; 0 to 60 °C in drying, over which it changes by 6 %
 */
export function dryMatterHeat(composition: Composition, T: number = ZERO_CELSIUS + 40): number {
  checkFood(composition, T);
  const solids = SOLIDS.reduce((sum, solid) => sum + composition[solid], 0);
  if (solids === 0) throw new RangeError('a food of water alone has no dry matter');
  return SOLIDS.reduce((sum, solid) => sum + composition[solid] * valueAt(COMPONENTS[solid].heat, T), 0) / solids;
}
