import { evaluateScenario } from '../model/evaluate-scenario.ts';
import type { ScenarioOutcome } from '../model/scenario-result.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type PumpFailureRisk, pumpFailureRisk } from './pump-failure.ts';

/** One of two ways to pump the same chambers. */
export interface PumpChoice {
  readonly arrangement: 'own' | 'shared';
  readonly pumpId: string;
}

/** What a way of pumping comes to. */
export interface PumpSide extends PumpChoice {
  readonly outcome: ScenarioOutcome;
  /** Null when the shop cannot run like that. */
  readonly failures: PumpFailureRisk | null;
}

/** Years lived through to see a bad one often, and the seed they are drawn from. */
const YEARS = 4000;
const SEED = 20_261;

function variantOf(plan: Plan, scenarioId: string, { arrangement, pumpId }: PumpChoice): Scenario {
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  const name = `${scenario.name}, ${arrangement === 'own' ? 'a pump each' : 'one pump'}`;
  return { ...scenario, id: `${scenario.id}-${arrangement}`, name, pumpArrangement: arrangement, pump: pumpId };
}

/**
 * A scenario's chambers with another pump arrangement, judged against today like any row, with what failing pumps do to it.
 * Throws RangeError when the plan has no such scenario or pump.
 */
export function pumpSide(plan: Plan, scenarioId: string, choice: PumpChoice): PumpSide {
  const variant = variantOf(plan, scenarioId, choice);
  const widened = { ...plan, scenarios: [...plan.scenarios, variant] };
  const outcome = evaluateScenario(widened, variant.id);
  const failures =
    outcome.kind === 'computed'
      ? pumpFailureRisk(widened, variant, outcome.result, { years: YEARS, seed: SEED })
      : null;
  return { ...choice, outcome, failures };
}
