/** Heat transfer from shelf to load as a function of pressure. */
export interface HeatTransfer {
  /** Contact part [W/(m²·K)]. */
  readonly contact: number;
  /** Gas part per pascal [W/(m²·K·Pa)]. */
  readonly pressureSlope: number;
  /** Damping of the gas part [1/Pa]. */
  readonly pressureDamping: number;
  /** Radiation part [W/(m²·K)]. */
  readonly radiation: number;
}

/**
 * Heat transfer from shelf to load [W/(m²·K)]: K = contact + slope·p/(1 + damping·p) + radiation.
 * Source: pikal-1984 (form of the law, from memory).
 * @param p chamber pressure [Pa], not negative
 */
export function shelfTransfer(heat: HeatTransfer, p: number): number {
  return heat.contact + (heat.pressureSlope * p) / (1 + heat.pressureDamping * p) + heat.radiation;
}

/**
 * Slope of `shelfTransfer` with pressure [W/(m²·K·Pa)].
 * @param p chamber pressure [Pa], not negative
 */
export function shelfTransferSlope(heat: HeatTransfer, p: number): number {
  const damping = 1 + heat.pressureDamping * p;
  return heat.pressureSlope / (damping * damping);
}

/**
 * Conductivity of a dried layer [W/(m·K)]: k0 + slope·p, a straight line over the pressures of drying.
 * Source: freeze-drying-encyclopedia for the rise with pressure.
 * @param atVacuum k0 [W/(m·K)]
 * @param slope [W/(m·K·Pa)]
 * @param p chamber pressure [Pa]
 */
export function driedConductivity(atVacuum: number, slope: number, p: number): number {
  return atVacuum + slope * p;
}
