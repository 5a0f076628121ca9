/** A slab that freezes at one temperature. */
export interface PlankCase {
  /** Whole thickness, cooled on both faces [m]. */
  readonly thickness: number;
  /** Surface heat transfer [W/(m²·K)]. */
  readonly coefficient: number;
  readonly ambient: number;
  readonly freezing: number;
  /** Conductivity of the frozen part [W/(m·K)]. */
  readonly conductivity: number;
  /** Heat to give up per volume [J/m³]. */
  readonly heat: number;
}

/**
 * Time to freeze a slab that is at its freezing point [s]: Plank's t = ΔH/(T_f − T_a)·(a/(2·h) + a²/(8·k)).
 * Source: earle-unit-operations, ch. 6 (from memory). Leaves out cooling before and after freezing, so it is short; a cross-check only.
 * Throws RangeError when the ambient is not below the freezing point.
 */
export function plankTime(slab: PlankCase): number {
  const { thickness, coefficient, ambient, freezing, conductivity, heat } = slab;
  if (!(ambient < freezing)) throw new RangeError(`ambient ${ambient} K is not below the freezing point ${freezing} K`);
  const resistance = thickness / (2 * coefficient) + (thickness * thickness) / (8 * conductivity);
  return (heat / (freezing - ambient)) * resistance;
}
