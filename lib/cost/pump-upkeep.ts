import { requireAmounts } from './require-amounts.ts';

const LITRES_PER_CUBIC_METRE = 1000;

/** Oil of a sealed pump and when it has to be changed. */
export interface OilTerms {
  /** Oil in one change [m³]. */
  readonly volume: number;
  /** [money/L] */
  readonly price: number;
  /** Running time after which the oil is changed whatever it swallowed [s]. */
  readonly lifeTime: number;
  /** Water after which the oil is changed however short it ran [kg]. */
  readonly lifeWater: number;
  /** Filter and rags of one change [money]. */
  readonly filterCost: number;
}

export interface PumpUpkeepTerms {
  /** Running time of the pump [s/week]. */
  readonly pumpTime: number;
  /** Water that went through it [kg/week]. */
  readonly waterSwallowed: number;
  /** Null for a pump that runs without oil. */
  readonly oil: OilTerms | null;
  /** Running time between rebuilds, seals included [s]. */
  readonly rebuildInterval: number;
  /** [money] */
  readonly rebuildCost: number;
}

/** Upkeep of one pump; all costs are positive. */
export interface PumpUpkeepCost {
  /** Oil changes per week; 0 without oil. */
  readonly oilChanges: number;
  /** Which limit calls for the change; null without oil or when the pump stands. */
  readonly changedFor: 'hours' | 'water' | null;
  /** [money/week] */
  readonly oil: number;
  readonly filters: number;
  readonly rebuilds: number;
  readonly total: number;
}

/**
 * Upkeep of a pump [money/week]. The oil is changed when its hours or its water are used up, whichever comes first, and
 * both counts start again at zero: changes per week = max(hours/life in hours, water/life in water). Rebuilds are laid
 * by for evenly over the running time.
 * Throws RangeError on a negative amount or a life of nothing.
 */
export function pumpUpkeepCost(terms: PumpUpkeepTerms): PumpUpkeepCost {
  const { pumpTime, waterSwallowed, rebuildInterval, rebuildCost } = terms;
  requireAmounts({ pumpTime, waterSwallowed, rebuildCost });
  if (!(rebuildInterval > 0)) throw new RangeError(`rebuild interval ${rebuildInterval} s must be above 0`);
  const changes = terms.oil ? oilChanges(terms, terms.oil) : { oilChanges: 0, changedFor: null };
  const oil = terms.oil ? changes.oilChanges * terms.oil.volume * LITRES_PER_CUBIC_METRE * terms.oil.price : 0;
  const filters = terms.oil ? changes.oilChanges * terms.oil.filterCost : 0;
  const rebuilds = (pumpTime / rebuildInterval) * rebuildCost;
  return { ...changes, oil, filters, rebuilds, total: oil + filters + rebuilds };
}

function oilChanges(terms: PumpUpkeepTerms, oil: OilTerms): Pick<PumpUpkeepCost, 'oilChanges' | 'changedFor'> {
  requireAmounts({ volume: oil.volume, price: oil.price, filterCost: oil.filterCost });
  if (!(oil.lifeTime > 0) || !(oil.lifeWater > 0)) {
    throw new RangeError(`oil life of ${oil.lifeTime} s and ${oil.lifeWater} kg of water must be above 0`);
  }
  const byHours = terms.pumpTime / oil.lifeTime;
  const byWater = terms.waterSwallowed / oil.lifeWater;
  if (byHours === 0 && byWater === 0) return { oilChanges: 0, changedFor: null };
  return { oilChanges: Math.max(byHours, byWater), changedFor: byWater > byHours ? 'water' : 'hours' };
}
