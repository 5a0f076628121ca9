import { equivalentAnnualCost } from '../finance/equivalent-annual-cost.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { runningWeeksPerMonth } from './market.ts';
import { scenarioEquipment } from './scenario-equipment.ts';
import type { ScenarioWeek } from './scenario-week.ts';

const JOULES_PER_KILOWATT_HOUR = 3.6e6;

/** Price of all pumps less what they fetch when worn out, as a level yearly cost over their lives [money/year], negative. */
function owning(plan: Plan, scenario: Scenario): number {
  const { discountRate } = baseValues('financing', plan.financing);
  return [...scenarioEquipment(scenario).pumps].reduce((sum, [id, count]) => {
    const { price, salvage, usefulLife } = baseValues('pump', findById(plan.pumps, id, 'pump'));
    const terms = { price, salvage: salvage * price, lifeYears: usefulLife / 12, yearlyCost: 0 };
    return sum + count * equivalentAnnualCost(discountRate, terms);
  }, 0);
}

/**
 * What the pumps of a scenario cost a year [money/year], negative: their price over their lives at the return wanted, less resale,
 * with current, oil, rebuilds and what their failures cost on average. It compares one large pump with several small ones of
 * another life, see `equivalentAnnualCost`. A roughing pump's and a spare's price are in it.
 */
export function pumpsPerYear(plan: Plan, scenario: Scenario, { plant, account, failures }: ScenarioWeek): number {
  const weeks = 12 * runningWeeksPerMonth(plan);
  const current = (plant.energy.pumps / JOULES_PER_KILOWATT_HOUR) * account.electricity.meanPrice;
  const upkeep = account.upkeep.reduce((sum, pump) => sum + pump.total, 0);
  return owning(plan, scenario) - (current + upkeep) * weeks - failures.cost.total;
}
