import { type StageWeeks, weeksFinance } from '../model/evaluate-scenario.ts';
import { todayOf } from '../model/scenario-equipment.ts';
import type { ScenarioFinance } from '../model/scenario-result.ts';
import { scenarioStages } from '../model/scenario-stages.ts';
import { accountWeek, type ScenarioWeek } from '../model/scenario-week.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import { type Stress, stressedPlan } from './stressed-plan.ts';

/**
 * The money of a scenario when things go wrong, the simulated weeks kept as they are: stress changes money, not machines.
 * Today goes wrong alike, but for the delay, so that the return is that of the purchase. A customer that is lost takes a
 * share of what was sold, of every product and in every month; others who were kept waiting do not step in. Late machines
 * are paid for, and their loan is paid off, as planned; until they start, the shop sells and costs what it did before.
 * Throws RangeError when the plan has no such scenario, or on a share outside 0–1 or a delay that is not whole.
 * @param weeks of the plan as it is, see `stageWeeks`
 */
export function stressedFinance(plan: Plan, scenarioId: string, weeks: StageWeeks, stress: Stress): ScenarioFinance {
  requireStress(stress);
  const changed = stressedPlan(plan, stress);
  const scenario = findById(changed.scenarios, scenarioId, 'scenario');
  const kept = 1 - stress.customerLost;
  const today = weekOf(changed, todayOf(changed), weeks.today, kept);
  const stages = scenarioStages(changed, scenario).flatMap((stage, k) => {
    const week = weeks.stages[k];
    return week ? [weekOf(changed, stage.scenario, week, kept)] : [];
  });
  return weeksFinance(changed, scenario, { today, stages }, stress.monthsLate);
}

/** Costs are those of the whole week, so that a kilogram costs what it did; then less is made. */
function weekOf(plan: Plan, scenario: Scenario, week: ScenarioWeek, kept: number): ScenarioWeek {
  const costed = accountWeek(plan, scenario, week.plant, week.larger?.plant ?? null);
  const { larger } = costed;
  return {
    ...costed,
    plant: lessMade(costed.plant, kept),
    larger: larger && { ...larger, plant: lessMade(larger.plant, kept) },
  };
}

function lessMade(plant: PlantReport, kept: number): PlantReport {
  return { ...plant, products: plant.products.map((product) => ({ ...product, dryOut: product.dryOut * kept })) };
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
