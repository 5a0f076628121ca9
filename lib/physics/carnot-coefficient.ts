/**
 * Best possible coefficient of performance of refrigeration [-]: T_e/(T_c − T_e).
 * Source: derived (Carnot); real machines reach 40–55 % of it at the lifts of a freeze dryer (common-practice).
 * Throws RangeError unless 0 < T_e < T_c.
 * @param evaporating T_e [K]
 * @param condensing T_c [K]
 */
export function carnotCoefficient(evaporating: number, condensing: number): number {
  if (!(evaporating > 0 && evaporating < condensing)) {
    throw new RangeError(
      `refrigeration needs evaporation below condensation, got ${evaporating} K and ${condensing} K`,
    );
  }
  return evaporating / (condensing - evaporating);
}
