import { evaluateScenario, stageWeeks, todayWeek } from '../../../lib/model/evaluate-scenario.ts';
import { lenderBasis } from '../../../lib/model/lender-basis.ts';
import type { ScenarioResult } from '../../../lib/model/scenario-result.ts';
import type { Simulate } from '../../../lib/model/scenario-week.ts';
import { findById } from '../../../lib/plan/find-by-id.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { lenderWorkbook } from '../../../lib/views/workbook/lender-workbook.ts';
import type { WorkbookFile } from '../../../lib/views/workbook/workbook-types.ts';

export interface WorkbookOf {
  readonly result: ScenarioResult;
  readonly book: WorkbookFile;
}

/** The workbook of a scenario and the result it must agree with; null when the scenario cannot be worked out. */
export function workbookOf(plan: Plan, scenarioId: string, simulate: Simulate): WorkbookOf | null {
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  const today = todayWeek(plan, simulate);
  const outcome = evaluateScenario(plan, scenarioId, today, simulate);
  const weeks = stageWeeks(plan, scenario, today, simulate);
  if (outcome.kind !== 'computed' || !weeks.ok) return null;
  const { result } = outcome;
  return { result, book: lenderWorkbook(plan, lenderBasis(plan, scenario, weeks.value), result) };
}
