import { WATER_FUSION_HEAT } from './constants.ts';
import { COMPONENTS, type Composition, ICE, integralTo, SOLIDS, waterHeat } from './food-components.ts';
import { iceFraction } from './food-properties.ts';

/**
 * Heat content of a food [J/kg wet], zero for its unfrozen state at 0 °C: sensible heats of all components, integrated exactly,
 * less the heat of fusion of the ice. A difference of two temperatures is the heat that freezing or thawing takes.
 * Source: choi-okos-1986 for the heats, tchigeov-1979 for the ice. From 10 °C to −10 °C and colder it is within 4 % of
 * chen-1985 for apple and 11 % for beef, whose unfrozen water the two methods count differently.
 * Throws RangeError on a composition that does not sum to 1 or a temperature outside −60 to 150 °C.
 * @param initialFreezing initial freezing point [K]
 * @param T temperature [K]
 */
export function foodEnthalpy(composition: Composition, initialFreezing: number, T: number): number {
  const ice = iceFraction(composition, initialFreezing, T);
  const unfrozen = composition.water - ice;
  let enthalpy = unfrozen * integralTo(waterHeat(T), T) + ice * (integralTo(ICE.heat, T) - WATER_FUSION_HEAT);
  for (const solid of SOLIDS) enthalpy += composition[solid] * integralTo(COMPONENTS[solid].heat, T);
  return enthalpy;
}
