import { stageWeeks, todayWeek } from '../model/evaluate-scenario.ts';
import type { ScenarioResult } from '../model/scenario-result.ts';
import type { Simulate } from '../model/scenario-week.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { type PumpFailureRisk, pumpFailureRisk, type SparePump, sparePump } from './pump-failure.ts';
import { type ReverseStress, reverseStress } from './reverse-stress.ts';
import { type StressOutcome, stressTest } from './stress-test.ts';

/** What may go wrong with a scenario, as plain data. */
export interface ScenarioRisk {
  readonly scenarioId: string;
  /** As the scenario is, with its spare or without. */
  readonly failures: PumpFailureRisk;
  /** With and without a pump on the shelf, whatever the scenario has. */
  readonly spare: SparePump;
  readonly stress: readonly StressOutcome[];
  /** Fall of revenue at which earnings just pay the lenders. */
  readonly untilUncovered: ReverseStress;
  /** Fall of revenue at which debt cover is down to the lender's line. */
  readonly untilLine: ReverseStress;
}

/** Years lived through: one in twenty of them is met two hundred times. */
const YEARS = 4000;

/** Any number will do; the same one gives the same years. */
const SEED = 20;

/**
 * Failing pumps, stress and reverse stress of a scenario that has been worked out. Null when the weeks behind it cannot be run.
 * @param result of this scenario of this plan
 * @param simulate best one that remembers the weeks it has run, so that nothing is simulated again
 */
export function scenarioRisk(plan: Plan, result: ScenarioResult, simulate: Simulate): ScenarioRisk | null {
  const { scenarioId } = result;
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  const weeks = stageWeeks(plan, scenario, todayWeek(plan, simulate), simulate);
  if (!weeks.ok) return null;
  const run = { years: YEARS, seed: SEED };
  return {
    scenarioId,
    failures: pumpFailureRisk(plan, scenario, result, run),
    spare: sparePump(plan, scenario, result, run),
    stress: stressTest(plan, scenarioId, weeks.value),
    untilUncovered: reverseStress(plan, scenarioId, weeks.value, 1),
    untilLine: reverseStress(plan, scenarioId, weeks.value, result.finance.line),
  };
}
