import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import { entryColumns } from '../../lib/views/entry-columns.ts';
import { NOTHING_COMPUTED, scenarioRows } from '../../lib/views/scenario-rows.ts';
import type { SheetState } from '../../lib/views/sheet-state.ts';

/** The demo plan as the sheet holds it, with nothing waiting to be mended. */
export const DEMO_STATE: SheetState = { plan: DEMO_PLAN, rejected: [], misread: [] };

export const DEMO_COLUMNS = entryColumns(DEMO_PLAN);

/** Its rows, with nothing worked out. */
export const DEMO_ROWS = scenarioRows({
  state: DEMO_STATE,
  columns: DEMO_COLUMNS,
  outputs: [],
  shown: { system: 'us', currency: 'USD' },
  computed: () => NOTHING_COMPUTED,
});

/** The column with this id; throws when there is none, so that a test cannot pass by looking at nothing. */
export function columnOf(id: string, plan: Plan = DEMO_PLAN): EntryColumn {
  const column = entryColumns(plan).find((candidate) => candidate.id === id);
  if (!column) throw new RangeError(`no column "${id}"`);
  return column;
}

export function scenarioOf(plan: Plan, id: string): Scenario {
  const scenario = plan.scenarios.find((candidate) => candidate.id === id);
  if (!scenario) throw new RangeError(`no scenario "${id}"`);
  return scenario;
}
