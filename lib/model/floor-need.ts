import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioEquipment } from './scenario-equipment.ts';

function sumOver(counts: ReadonlyMap<string, number>, each: (id: string) => number): number {
  return [...counts].reduce((sum, [id, count]) => sum + count * each(id), 0);
}

/** Floor that a scenario's machines take up [m²]: chambers, pumps with a roughing one among them, freezers. A spare lies on a shelf. */
export function floorNeed(plan: Plan, scenario: Scenario): number {
  const { chambers, pumps, freezers } = scenarioEquipment({ ...scenario, sparePump: 'none' });
  const cold = plan.freezer ? freezers * baseValues('freezer', plan.freezer).floorSpace : 0;
  return (
    sumOver(chambers, (id) => baseValues('chamber', findById(plan.chambers, id, 'chamber type')).floorSpace) +
    sumOver(pumps, (id) => baseValues('pump', findById(plan.pumps, id, 'pump')).floorSpace) +
    cold
  );
}
