/**
 * Resistance of a dried layer to vapour [m/s]: R = R0 + l/Π; the flux is the pressure difference over it [kg/(m²·s)].
 * Source: pikal-1984 (form, from memory) and freeze-drying-encyclopedia (permeability 5e-9 to 7e-8 s).
 * @param surface R0 [m/s]
 * @param permeability Π [s]
 * @param thickness l dried so far [m]
 */
export function driedResistance(surface: number, permeability: number, thickness: number): number {
  return surface + thickness / permeability;
}
