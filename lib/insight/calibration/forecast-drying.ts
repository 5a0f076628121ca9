import { chamberLoad } from '../../plant/chamber-load.ts';
import { dryLoneLoad } from '../../plant/lone-load.ts';
import type { ChamberUnitSpec, ProductSpec, PumpSpec } from '../../plant/types.ts';

/** What the model expects of one batch in a chamber alone on its pump. */
export interface DryingForecast {
  /** From the start of the vacuum until it is dry [s]. */
  readonly time: number;
  /** Highest chamber pressure once the air is out [Pa]. */
  readonly highestPressure: number;
}

/** By then the air of the pump-down has gone, and what a gauge shows is drying [s]. */
const AIR_OUT = 1800;

/**
 * Hours and highest pressure of `wet` kilograms [kg] of a product, spread over all shelves; null when the pump cannot pull
 * the chamber down or the load would never get dry.
 */
export function forecastDrying(
  unit: ChamberUnitSpec,
  pump: PumpSpec,
  product: ProductSpec,
  wet: number,
): DryingForecast | null {
  const loaded = { ...product, load: wet / unit.chamber.shelfArea };
  const outcome = dryLoneLoad(unit, pump, chamberLoad(loaded, unit.chamber));
  if (outcome.kind !== 'dried') return null;
  const { pumpDown, primary, secondary, points } = outcome.load;
  const settled = points.filter((point) => point.time > AIR_OUT);
  const watched = settled.length > 0 ? settled : points.slice(-1);
  return {
    time: pumpDown + primary + secondary,
    highestPressure: watched.reduce((most, point) => Math.max(most, point.pressure), 0),
  };
}
