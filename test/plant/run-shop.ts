import type { PlantProblem, PlantReport } from '../../lib/plant/report-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';

/** Report of a shop that is expected to work. */
export function reportOf(spec: ShopSpec): PlantReport {
  const outcome = simulateShop(spec);
  if (!outcome.ok) throw new Error(`the shop does not work: ${JSON.stringify(outcome.error)}`);
  return outcome.value;
}

/** Problem of a shop that is expected not to work. */
export function problemOf(spec: ShopSpec): PlantProblem {
  const outcome = simulateShop(spec);
  if (outcome.ok) throw new Error('the shop works');
  return outcome.error;
}

/** Seconds per batch that the batches of a report spent in a phase, mean. */
export function meanPhase(report: PlantReport, phase: PlantReport['week']['lanes'][number]['phase']): number {
  const total = report.batchRecords.reduce((sum, batch) => sum + (batch.phases[phase] ?? 0), 0);
  return total / report.batchRecords.length;
}
