import { type Effectiveness, equipmentEffectiveness } from '../cost/equipment-effectiveness.ts';
import { WEEK } from '../plant/crew.ts';
import type { BatchRecord, Phase, PlantReport } from '../plant/report-types.ts';
import type { ScenarioResult } from './scenario-result.ts';

/** Phases in which a chamber works on a batch; waiting and holding are not among them. */
const WORKING: readonly Phase[] = [
  'loading',
  'freezing',
  'pumpDown',
  'primary',
  'secondary',
  'unloading',
  'defrost',
  'cleaning',
];

function workingTime({ phases }: BatchRecord): number {
  return WORKING.reduce((sum, phase) => sum + (phases[phase] ?? 0), 0);
}

/** Working time of a product's batches if each took as little as the quickest, over what they took [–]; 1 without batches. */
function performanceOf(plant: PlantReport): number {
  const ids = new Set(plant.batchRecords.map((batch) => batch.productId));
  let ideal = 0;
  let actual = 0;
  for (const id of ids) {
    const times = plant.batchRecords.filter((batch) => batch.productId === id).map(workingTime);
    ideal += Math.min(...times) * times.length;
    actual += times.reduce((sum, time) => sum + time, 0);
  }
  return actual > 0 ? ideal / actual : 1;
}

/**
 * Overall effectiveness of the chambers in a week without stoppages: they run when they work on a batch, ideally each batch takes
 * as little time as the quickest of its product, and good is what is fit for sale.
 */
export function chamberEffectiveness({ plant, account }: ScenarioResult): Effectiveness {
  const plannedTime = plant.chambers * WEEK;
  const runningTime = plant.utilisation.chambers * plannedTime;
  const saleable = account.week.products.reduce((sum, product) => sum + product.saleable, 0);
  return equipmentEffectiveness({
    plannedTime,
    runningTime,
    idealTime: runningTime * performanceOf(plant),
    goodShare: plant.dryOut > 0 ? Math.min(1, saleable / plant.dryOut) : 0,
  });
}
