/**
 * Conductivity of frost [W/(m·K)]: 0.02422 + 7.214e-4·ρ + 1.1797e-6·ρ².
 * Source: yonko-sepsy-1967. Stated up to 573 kg/m³; correlations of different authors differ by a factor of two.
 * @param density of the frost [kg/m³]
 */
export function frostConductivity(density: number): number {
  return 0.02422 + (7.214e-4 + 1.1797e-6 * density) * density;
}

/**
 * Conductivity of frost by a second, lower correlation for dense frost [W/(m·K)]: 0.132 + 3.13e-4·ρ + 1.6e-7·ρ².
 * Source: lee-1997. A measure of how far such correlations agree.
 * @param density of the frost [kg/m³]
 */
export function laminarFrostConductivity(density: number): number {
  return 0.132 + (3.13e-4 + 1.6e-7 * density) * density;
}
