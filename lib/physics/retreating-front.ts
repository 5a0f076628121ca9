/** A slab whose ice front retreats through its own dried layer, heat and vapour passing that layer. */
export interface RetreatingFront {
  /** Conductivity of the dried layer [W/(m·K)]. */
  readonly conductivity: number;
  /** Heat of sublimation [J/kg]. */
  readonly heat: number;
  /** Temperature of the dried surface [K]. */
  readonly surface: number;
  /** Temperature of the ice front [K]. */
  readonly front: number;
}

/**
 * Vapour pressure at a front fed with heat through the layer its vapour leaves by [Pa]: p_s = p_0 + k·(T_0 − T_s)/(Π·L);
 * the thickness cancels, so the front keeps its temperature until it is gone.
 * Source: freeze-drying-encyclopedia; fellows-food-processing.
 * @param ambient vapour pressure outside p_0 [Pa]
 * @param permeability Π [s]
 */
export function frontPressure(slab: RetreatingFront, ambient: number, permeability: number): number {
  return ambient + (slab.conductivity * (slab.surface - slab.front)) / (permeability * slab.heat);
}

/**
 * Time for the front to cross a depth [s]: t = c·z²·L/(2·k·(T_0 − T_s)). From both faces z is half the thickness.
 * Source: fellows-food-processing; freeze-drying-encyclopedia. Throws RangeError unless the surface is warmer than the front.
 * @param ice to remove c [kg/m³]
 * @param depth z [m]
 */
export function frontTime(slab: RetreatingFront, ice: number, depth: number): number {
  if (!(slab.surface > slab.front)) {
    throw new RangeError(`the surface ${slab.surface} K must be warmer than the ice front ${slab.front} K`);
  }
  return (ice * depth * depth * slab.heat) / (2 * slab.conductivity * (slab.surface - slab.front));
}

/** A slab that loses vapour at a fixed driving pressure through a resistance that grows with its dried layer. */
export interface GrowingResistance {
  /** Ice to remove c [kg/m³]. */
  readonly ice: number;
  /** Resistance of the bare front R0 [m/s] and its rise with thickness 1/Π [1/s]. */
  readonly surface: number;
  readonly slope: number;
  /** Pressure over the ice less pressure outside [Pa]. */
  readonly driving: number;
}

/**
 * Dried thickness after a time [m]: l = (−R0 + √(R0² + 2·A·Δp·t/c))/A, the solution of c·dl/dt = Δp/(R0 + A·l).
 * Source: derived.
 * @param time [s]
 */
export function driedThickness(slab: GrowingResistance, time: number): number {
  const { ice, surface, slope, driving } = slab;
  return (Math.sqrt(surface * surface + (2 * slope * driving * time) / ice) - surface) / slope;
}

/**
 * Time to dry a depth at fixed driving pressure [s]: t = c·(R0·l + A·l²/2)/Δp.
 * Source: derived.
 * @param depth l [m]
 */
export function growingResistanceTime(slab: GrowingResistance, depth: number): number {
  return (slab.ice * (slab.surface + (slab.slope * depth) / 2) * depth) / slab.driving;
}
