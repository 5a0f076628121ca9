import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import type { ScenarioResult, ScenarioReturn } from '../../lib/model/scenario-result.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';

/** The result of a scenario that must be computable. */
export function computed(plan: Plan, scenarioId: string): ScenarioResult {
  const outcome = evaluateScenario(plan, scenarioId);
  if (outcome.kind !== 'computed') throw new Error(JSON.stringify(outcome.findings));
  return outcome.result;
}

/** What a result says against today; throws for today itself. */
export function returnOf(result: ScenarioResult): ScenarioReturn {
  const { versusToday } = result.finance;
  if (!versusToday) throw new Error(`"${result.name}" is judged against nothing`);
  return versusToday;
}

const demo = new Map<string, ScenarioResult>();

/** A scenario of the demo plan, worked out once and shared by the tests that look at it. */
export function demoResult(scenarioId: string): ScenarioResult {
  const known = demo.get(scenarioId) ?? computed(DEMO_PLAN, scenarioId);
  demo.set(scenarioId, known);
  return known;
}
