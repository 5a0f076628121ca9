import { findBottleneck } from '../insight/find-bottleneck.ts';
import { evaluateScenario } from '../model/evaluate-scenario.ts';
import { parsePlan } from '../plan/parse-plan.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { chosenScenarios } from './chosen-scenarios.ts';
import { planFileFindings } from './plan-file-findings.ts';
import { type ResultsJson, resultsJson, type ScenarioJson, scenarioJson } from './results-json.ts';

function workOut(plan: Plan, scenario: Scenario): ScenarioJson {
  const outcome = evaluateScenario(plan, scenario.id);
  return scenarioJson(outcome, outcome.kind === 'computed' ? findBottleneck(plan, scenario.id) : null);
}

/**
 * Results of the scenarios of a plan, or all that is wrong with the plan. A scenario that cannot run stands among the
 * results as refused and does not stop the others.
 * @param file name of the plan's file, for the findings
 * @param text what the file holds
 * @param wanted id or name of the only scenario wanted; null for all
 * @param onStart told of each scenario before it is worked out
 */
export function evaluateText(
  file: string,
  text: string,
  wanted: string | null,
  onStart: (scenario: Scenario) => void = () => {},
): Result<ResultsJson, readonly Finding[]> {
  const parsed = parsePlan(text);
  if (!parsed.ok) return fail(planFileFindings(file, parsed.error));
  const plan = parsed.value;
  const chosen = chosenScenarios(plan, wanted);
  if (!chosen.ok) return chosen;
  const scenarios = chosen.value.map((scenario) => {
    onStart(scenario);
    return workOut(plan, scenario);
  });
  return succeed(resultsJson(plan, scenarios));
}
