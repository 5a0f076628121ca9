import { freshId } from '../../plan/commands/fresh-id.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { Plan, Scenario } from '../../plan/plan-types.ts';
import type { OptionChoice } from './option-types.ts';

/** A plan with an option among its scenarios. */
export interface OptionPlan {
  readonly plan: Plan;
  readonly scenario: Scenario;
}

/**
 * The plan with an option as its last scenario: what the search does not choose – products, month of purchase, hose lengths – is that
 * of `baseId`. Throws RangeError when the plan has no such scenario.
 */
export function optionPlan(plan: Plan, baseId: string, choice: OptionChoice): OptionPlan {
  const base = findById(plan.scenarios, baseId, 'scenario');
  const scenario = { ...base, ...choice, id: freshId(plan.scenarios, 'option'), name: 'Option' };
  return { plan: { ...plan, scenarios: [...plan.scenarios, scenario] }, scenario };
}
