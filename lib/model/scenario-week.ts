import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { largerMarket } from './larger-market.ts';
import { plantFinding } from './plant-finding.ts';
import { type ExpectedFailures, expectedFailures } from './pump-failure-expected.ts';
import { pumpFailureTerms } from './pump-failure-terms.ts';
import { type CostAccount, scenarioCost } from './scenario-cost.ts';
import { shopSpec } from './shop-spec.ts';

/** Runs a shop's week: `simulateShop`, or something that remembers what it has run. */
export type Simulate = typeof simulateShop;

/** A simulated week of a scenario and its accounts. */
export interface AccountedWeek {
  readonly plant: PlantReport;
  readonly account: CostAccount;
}

/** What simulation and the week's accounts say of a scenario, before any month is looked at. */
export interface ScenarioWeek extends AccountedWeek {
  /** The week for the market of the busiest month; null where it would differ little. */
  readonly larger: AccountedWeek | null;
  /** The mean year of failing pumps. */
  readonly failures: ExpectedFailures;
}

/** Costs the simulated weeks of a scenario. @param larger for the market of the busiest month; null for none */
export function accountWeek(
  plan: Plan,
  scenario: Scenario,
  plant: PlantReport,
  larger: PlantReport | null,
): ScenarioWeek {
  const account = scenarioCost(plan, scenario, plant);
  return {
    plant,
    account,
    larger: larger && { plant: larger, account: scenarioCost(plan, scenario, larger) },
    failures: expectedFailures(pumpFailureTerms(plan, scenario, plant, account.week)),
  };
}

/**
 * Simulates a scenario's week for today's market and, where a product is held back by it and sells more in some month, once
 * more for the market of the busiest month; findings when the shop cannot run like that. Should only the second week fail, which
 * a trap or a freezer cannot cause, the first stands alone.
 */
export function scenarioWeek(
  plan: Plan,
  scenario: Scenario,
  simulate: Simulate = simulateShop,
): Result<ScenarioWeek, readonly Finding[]> {
  const spec = shopSpec(plan, scenario);
  const outcome = simulate(spec);
  if (!outcome.ok) return fail([plantFinding(plan, scenario, outcome.error)]);
  const wider = largerMarket(plan, spec, outcome.value);
  const larger = wider && simulate(wider);
  return succeed(accountWeek(plan, scenario, outcome.value, larger?.ok ? larger.value : null));
}
