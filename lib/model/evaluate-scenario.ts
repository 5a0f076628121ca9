import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { horizonMonths, planProjection } from './plan-projection.ts';
import { plantFinding } from './plant-finding.ts';
import { scenarioCapital } from './scenario-capital.ts';
import { type CostAccount, scenarioCost } from './scenario-cost.ts';
import { scenarioEquipment, todayOf } from './scenario-equipment.ts';
import { scenarioFinance } from './scenario-finance.ts';
import type { ScenarioFinance, ScenarioOutcome, ScenarioResult } from './scenario-result.ts';
import { scenarioWarnings } from './scenario-warnings.ts';
import { shopSpec } from './shop-spec.ts';

/** What the simulation and the week's accounts say of a scenario, before any month is looked at. */
export interface ScenarioWeek {
  readonly plant: PlantReport;
  readonly account: CostAccount;
}

/** Runs a shop's week: `simulateShop`, or something that remembers what it has run. */
export type Simulate = typeof simulateShop;

/** Simulates a scenario's week and costs it; findings when the shop cannot run like that. */
export function scenarioWeek(
  plan: Plan,
  scenario: Scenario,
  simulate: Simulate = simulateShop,
): Result<ScenarioWeek, readonly Finding[]> {
  const outcome = simulate(shopSpec(plan, scenario));
  if (!outcome.ok) return fail([plantFinding(plan, scenario, outcome.error)]);
  return succeed({ plant: outcome.value, account: scenarioCost(plan, scenario, outcome.value) });
}

function purchaseTooLate(plan: Plan, scenario: Scenario): Finding[] {
  const horizon = horizonMonths(plan);
  const place = plan.scenarios.indexOf(scenario);
  // Today buys nothing, so its month does not matter.
  if (place === 0 || scenario.purchaseMonth < horizon) return [];
  return [
    {
      severity: 'error',
      field: `scenarios.${place}.purchaseMonth`,
      value: `${scenario.purchaseMonth}`,
      problem: `The purchase comes after the ${horizon} months that are looked ahead.`,
      remedy: 'Buy earlier, or look further ahead.',
    },
  ];
}

/** What is wrong with today stops every comparison, and is said of today. */
function todayFailed(findings: readonly Finding[]): Finding[] {
  return findings.map((finding) => ({
    ...finding,
    problem: `In the first scenario, against which all are judged: ${finding.problem}`,
  }));
}

/**
 * What a scenario does to the purse, given the week of today's shop and its own week.
 * @param late months by which the new machines start later than they are paid for, ≥ 0
 */
export function weeksFinance(
  plan: Plan,
  scenario: Scenario,
  today: ScenarioWeek,
  own: ScenarioWeek,
  late = 0,
): ScenarioFinance {
  const first = todayOf(plan);
  const isToday = scenario.id === first.id;
  const bought = Math.round(scenario.purchaseMonth);
  // The shop has run as today before the plan begins, so that a purchase in its first month is a change too.
  const now = { month: -1, plant: today.plant, week: today.account.week };
  const then = { month: bought + late, plant: own.plant, week: own.account.week };
  const todayProjection = planProjection(plan, first, [now]);
  const projection = isToday ? todayProjection : planProjection(plan, scenario, [now, then], bought);
  return scenarioFinance(plan, todayProjection, projection, isToday);
}

function assemble(plan: Plan, scenario: Scenario, today: ScenarioWeek, own: ScenarioWeek): ScenarioResult {
  const capital = scenarioCapital(plan, scenario);
  const { chamberCount, pumpCount } = scenarioEquipment(scenario);
  const { shown, ...account } = own.account;
  return {
    scenarioId: scenario.id,
    name: scenario.name,
    chambers: chamberCount,
    pumps: pumpCount,
    plant: own.plant,
    cost: shown,
    account,
    capital: capital.lines.map(({ name, amount }) => ({ label: name, amount })),
    capitalTotal: capital.total,
    finance: weeksFinance(plan, scenario, today, own),
    warnings: scenarioWarnings(plan, scenario, own.plant),
  };
}

/** The week of today's shop, for callers that evaluate many scenarios of one plan and want it worked out once. */
export function todayWeek(plan: Plan, simulate: Simulate = simulateShop): Result<ScenarioWeek, readonly Finding[]> {
  return scenarioWeek(plan, todayOf(plan), simulate);
}

/**
 * Everything about one scenario of a checked plan: its week, its cost, its capital and what it brings against today. The one
 * place where plant, cost and finance meet. Deterministic; does not depend on which scenarios were evaluated before.
 * @param today the week of today's shop, when it is known already
 * @param simulate how a week is run, for callers that keep weeks to use again
 * @throws RangeError when the plan has no scenario of that id
 */
export function evaluateScenario(
  plan: Plan,
  scenarioId: string,
  today = todayWeek(plan),
  simulate: Simulate = simulateShop,
): ScenarioOutcome {
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  const { name } = scenario;
  const late = purchaseTooLate(plan, scenario);
  if (late.length > 0) return { kind: 'refused', scenarioId, name, findings: late };
  const first = todayOf(plan);
  if (!today.ok) {
    return { kind: 'refused', scenarioId, name, findings: first === scenario ? today.error : todayFailed(today.error) };
  }
  const own = first === scenario ? today : scenarioWeek(plan, scenario, simulate);
  if (!own.ok) return { kind: 'refused', scenarioId, name, findings: own.error };
  return { kind: 'computed', result: assemble(plan, scenario, today.value, own.value) };
}
