import { type ScenarioWeek, weeksFinance } from '../model/evaluate-scenario.ts';
import { scenarioCost } from '../model/scenario-cost.ts';
import { todayOf } from '../model/scenario-equipment.ts';
import type { ScenarioFinance } from '../model/scenario-result.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import { type Stress, stressedPlan } from './stressed-plan.ts';

/** What the simulation found of the plan as it is: stress changes money, not machines. */
export interface Plants {
  readonly today: PlantReport;
  readonly own: PlantReport;
}

/**
 * The money of a scenario when things go wrong, the simulated weeks kept as they are. Today goes wrong alike, but for
 * the delay, so that the return is that of the purchase. A customer that is lost takes a share of what was sold, of
 * every product and in every month; others who were kept waiting do not step in. Late machines are paid for, and their
 * loan is paid off, as planned; until they start, the shop sells and costs what it does today.
 * Throws RangeError when the plan has no such scenario, or on a share outside 0–1 or a delay that is not whole.
 */
export function stressedFinance(plan: Plan, scenarioId: string, plants: Plants, stress: Stress): ScenarioFinance {
  requireStress(stress);
  const changed = stressedPlan(plan, stress);
  const scenario = findById(changed.scenarios, scenarioId, 'scenario');
  const kept = 1 - stress.customerLost;
  const today = weekOf(changed, todayOf(changed), plants.today, kept);
  const own = weekOf(changed, scenario, plants.own, kept);
  return weeksFinance(changed, scenario, today, own, stress.monthsLate);
}

/** Costs are those of the whole week, so that a kilogram costs what it did; then less is made. */
function weekOf(plan: Plan, scenario: Scenario, plant: PlantReport, kept: number): ScenarioWeek {
  const account = scenarioCost(plan, scenario, plant);
  const products = plant.products.map((product) => ({ ...product, dryOut: product.dryOut * kept }));
  return { plant: { ...plant, products }, account };
}

function requireStress({ revenueFall, costRise, rateRise, monthsLate, customerLost }: Stress): void {
  const isShare = (share: number) => share >= 0 && share <= 1;
  if (!isShare(revenueFall) || !isShare(customerLost) || !(costRise >= -1)) {
    throw new RangeError(`revenue fall ${revenueFall}, customer lost ${customerLost}, cost rise ${costRise}`);
  }
  if (!Number.isInteger(monthsLate) || monthsLate < 0 || !Number.isFinite(rateRise)) {
    throw new RangeError(`${monthsLate} months late, interest up by ${rateRise}`);
  }
}
