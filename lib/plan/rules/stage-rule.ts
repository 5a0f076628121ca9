import type { Finding } from '../../result.ts';
import type { Plan, Scenario } from '../plan-types.ts';
import { planError } from './plan-error.ts';

function find(plan: Plan, id: string | null): Scenario | undefined {
  return plan.scenarios.find((scenario) => scenario.id === id);
}

/** True when following what comes before leads back to the scenario. */
function isCircle(plan: Plan, scenario: Scenario): boolean {
  const seen = new Set<string>();
  let before = find(plan, scenario.after);
  while (before && before.id !== plan.scenarios[0]?.id && !seen.has(before.id)) {
    if (before.id === scenario.id) return true;
    seen.add(before.id);
    before = find(plan, before.after);
  }
  return false;
}

function stageFindings(plan: Plan, scenario: Scenario, path: string): readonly Finding[] {
  const { after } = scenario;
  if (after === null) return [];
  const field = `${path}.after`;
  const before = find(plan, after);
  if (!before) {
    const problem = `There is no scenario with the id "${after}".`;
    return [planError(field, after, problem, 'Choose a scenario that is in the plan, or none.')];
  }
  if (!isCircle(plan, scenario)) return [];
  const problem = `"${scenario.name}" comes after "${before.name}", which comes after it.`;
  return [planError(field, before.name, problem, 'Let one of them come after today.')];
}

/** A scenario comes after one that is there, and never after itself. What the first comes after means nothing. */
export function stageRule(plan: Plan): readonly Finding[] {
  return plan.scenarios.flatMap((scenario, i) => (i === 0 ? [] : stageFindings(plan, scenario, `scenarios.${i}`)));
}
