import type { Plan } from '../../plan/plan-types.ts';

/** Text that is equal for plans whose logs lead to the same fitted values: everything the fit reads and nothing else. */
export function calibrationKey(plan: Plan): string {
  const { products, chambers, pumps, hoses, freezer, batchLog } = plan;
  const today = plan.scenarios[0];
  const drying = { pump: today?.pump, hose: today?.hose };
  const bare = batchLog.map(({ note: _note, ...entry }) => entry);
  return JSON.stringify({ products, chambers, pumps, hoses, freezer, drying, bare });
}
