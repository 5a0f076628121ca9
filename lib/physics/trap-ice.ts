/**
 * Thickness of ice spread evenly over a trap [m].
 * @param ice [kg]
 * @param area cold surface [m²]
 * @param density of the ice [kg/m³]
 */
export function trapIceThickness(ice: number, area: number, density: number): number {
  return ice / (area * density);
}

/**
 * Surface temperature of the ice on a trap [K]: T = T_evap + (load/area)·δ/k.
 * Source: derived, steady conduction; the sensible heat of the ice itself is left out (under 2 % of its latent heat).
 * @param evaporator temperature of the cold wall [K]
 * @param load heat arriving [W]
 * @param area cold surface [m²]
 * @param thickness of the ice [m]
 * @param conductivity of the ice [W/(m·K)]
 */
export function trapSurface(
  evaporator: number,
  load: number,
  area: number,
  thickness: number,
  conductivity: number,
): number {
  return evaporator + ((load / area) * thickness) / conductivity;
}

/**
 * Ice grown on a wall with both faces held at their temperatures [m]: δ = √(2·k·ΔT·t/(ρ·L)).
 * Source: derived, quasi-steady; for water at 0 °C on a wall at −40 °C the exact growth is 3.6 % thinner.
 * @param conductivity of the ice [W/(m·K)]
 * @param difference surface less wall temperature [K]
 * @param density of the ice [kg/m³]
 * @param heat given up per kilogram [J/kg]
 * @param time [s]
 */
export function grownIce(
  conductivity: number,
  difference: number,
  density: number,
  heat: number,
  time: number,
): number {
  return Math.sqrt((2 * conductivity * difference * time) / (density * heat));
}
