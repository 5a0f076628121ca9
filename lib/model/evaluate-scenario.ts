import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { horizonMonths } from './horizon-months.ts';
import { monthlyTrade } from './monthly-trade.ts';
import { planProjection } from './plan-projection.ts';
import { pumpsPerYear } from './pump-ownership.ts';
import { scenarioBestMix } from './scenario-best-mix.ts';
import { scenarioBreakEven } from './scenario-break-even.ts';
import { stageCapital } from './scenario-capital.ts';
import { scenarioEquipment, todayOf } from './scenario-equipment.ts';
import { scenarioFinance } from './scenario-finance.ts';
import type {
  CapitalLine,
  ScenarioFinance,
  ScenarioOutcome,
  ScenarioResult,
  ScenarioTrade,
} from './scenario-result.ts';
import { type Stage, scenarioStages } from './scenario-stages.ts';
import { scenarioWarnings } from './scenario-warnings.ts';
import { type ScenarioWeek, type Simulate, scenarioWeek } from './scenario-week.ts';
import type { TradePhase } from './trade-phase.ts';

/** The weeks on the way to a scenario: of today, and of each of its stages in order. */
export interface StageWeeks {
  readonly today: ScenarioWeek;
  readonly stages: readonly ScenarioWeek[];
}

function purchaseTooLate(plan: Plan, stages: readonly Stage[]): Finding[] {
  const horizon = horizonMonths(plan);
  return stages
    .filter((stage) => stage.month >= horizon)
    .slice(0, 1)
    .map(({ scenario }) => ({
      severity: 'error',
      field: `scenarios.${plan.scenarios.indexOf(scenario)}.purchaseMonth`,
      value: `${scenario.purchaseMonth}`,
      problem: `The purchase comes after the ${horizon} months that are looked ahead.`,
      remedy: 'Buy earlier, or look further ahead.',
    }));
}

/** A stage that is bought no later than the one it comes after. */
function outOfOrder(plan: Plan, stages: readonly Stage[]): Finding[] {
  return stages
    .filter((stage, k) => k > 0 && stage.month <= (stages[k - 1]?.month ?? 0))
    .slice(0, 1)
    .map(({ scenario, before }) => ({
      severity: 'error',
      field: `scenarios.${plan.scenarios.indexOf(scenario)}.purchaseMonth`,
      value: `${scenario.purchaseMonth}`,
      problem: `"${scenario.name}" comes after "${before.name}", which is bought no earlier.`,
      remedy: `Buy it later than month ${before.purchaseMonth}, or let it come after another.`,
    }));
}

/** What is wrong with another scenario stops this one too, and is said of that one. */
function failedBefore(findings: readonly Finding[], words: string): Finding[] {
  return findings.map((finding) => ({ ...finding, problem: `${words}: ${finding.problem}` }));
}

const OF_TODAY = 'In the first scenario, against which all are judged';

/**
 * What a scenario does to the purse, given the weeks on the way to it.
 * @param late months by which new machines start later than they are paid for, ≥ 0
 */
export function weeksFinance(plan: Plan, scenario: Scenario, weeks: StageWeeks, late = 0): ScenarioFinance {
  const stages = scenarioStages(plan, scenario);
  const phases = tradePhases(stages, weeks, late);
  const today = planProjection(plan, [], [phases[0]]);
  const projection = stages.length === 0 ? today : planProjection(plan, stages, phases);
  return scenarioFinance(plan, stages, today, projection);
}

/** The ways of running the shop on the way to a scenario. */
function tradePhases(stages: readonly Stage[], weeks: StageWeeks, late: number): [TradePhase, ...TradePhase[]] {
  const then = stages.map((stage, k) => ({ month: stage.month + late, week: weeks.stages[k] ?? weeks.today }));
  // The shop has run as today before the plan begins, so that a purchase in its first month is a change too.
  return [{ month: -1, week: weeks.today }, ...then];
}

function scenarioTrade(plan: Plan, scenario: Scenario, weeks: StageWeeks): ScenarioTrade {
  const phases = tradePhases(scenarioStages(plan, scenario), weeks, 0);
  const { products, fixedCosts } = monthlyTrade(plan, phases, horizonMonths(plan));
  return { products, fixedCosts };
}

function capitalLines(plan: Plan, stages: readonly Stage[]): CapitalLine[] {
  return stages.flatMap((stage) =>
    stageCapital(plan, stage).lines.map(({ name, amount }) => ({ label: name, amount, month: stage.month })),
  );
}

function assemble(plan: Plan, scenario: Scenario, weeks: StageWeeks): ScenarioResult {
  const capital = capitalLines(plan, scenarioStages(plan, scenario));
  const { chamberCount, pumpCount } = scenarioEquipment(scenario);
  const own = weeks.stages.at(-1) ?? weeks.today;
  const { shown, ...account } = own.account;
  const finance = weeksFinance(plan, scenario, weeks);
  return {
    scenarioId: scenario.id,
    name: scenario.name,
    chambers: chamberCount,
    pumps: pumpCount,
    plant: own.plant,
    cost: shown,
    account,
    capital,
    capitalTotal: capital.reduce((sum, line) => sum + line.amount, 0),
    finance,
    trade: scenarioTrade(plan, scenario, weeks),
    breakEven: scenarioBreakEven(own, finance.yearlyDebtService),
    bestMix: scenarioBestMix(plan, own),
    failures: own.failures,
    pumpsPerYear: pumpsPerYear(plan, scenario, own),
    warnings: scenarioWarnings(plan, scenario, own.plant, finance),
  };
}

/** The week of today's shop, for callers that evaluate many scenarios of one plan and want it worked out once. */
export function todayWeek(plan: Plan, simulate: Simulate = simulateShop): Result<ScenarioWeek, readonly Finding[]> {
  return scenarioWeek(plan, todayOf(plan), simulate);
}

/** The weeks on the way to a scenario, or why one of them cannot be. @param today the week of today's shop */
export function stageWeeks(
  plan: Plan,
  scenario: Scenario,
  today: ReturnType<typeof todayWeek>,
  simulate: Simulate = simulateShop,
): Result<StageWeeks, readonly Finding[]> {
  const isToday = scenario.id === todayOf(plan).id;
  if (!today.ok) return fail(isToday ? today.error : failedBefore(today.error, OF_TODAY));
  const stages: ScenarioWeek[] = [];
  for (const stage of scenarioStages(plan, scenario)) {
    const week = scenarioWeek(plan, stage.scenario, simulate);
    if (!week.ok) {
      const words = `In "${stage.scenario.name}", after which this one comes`;
      return fail(stage.scenario === scenario ? week.error : failedBefore(week.error, words));
    }
    stages.push(week.value);
  }
  return succeed({ today: today.value, stages });
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
  const stages = scenarioStages(plan, scenario);
  const wrong = [...purchaseTooLate(plan, stages), ...outOfOrder(plan, stages)];
  if (wrong.length > 0) return { kind: 'refused', scenarioId, name, findings: wrong };
  const weeks = stageWeeks(plan, scenario, today, simulate);
  if (!weeks.ok) return { kind: 'refused', scenarioId, name, findings: weeks.error };
  return { kind: 'computed', result: assemble(plan, scenario, weeks.value) };
}
