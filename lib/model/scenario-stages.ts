import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioChain } from '../plan/scenario-chain.ts';
import { todayOf } from './scenario-equipment.ts';

/** One purchase on the way to a scenario: from what the shop has before it to what it has after. */
export interface Stage {
  readonly before: Scenario;
  readonly scenario: Scenario;
  /** Month of the plan at whose start it is bought. */
  readonly month: number;
}

/** The purchases that lead from today to a scenario, in order of month; none for today itself. */
export function scenarioStages(plan: Plan, scenario: Scenario): readonly Stage[] {
  const chain = scenarioChain(plan, scenario);
  return chain.map((stage, k) => ({
    before: chain[k - 1] ?? todayOf(plan),
    scenario: stage,
    month: Math.round(stage.purchaseMonth),
  }));
}
