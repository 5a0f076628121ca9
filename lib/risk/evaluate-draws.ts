import { evaluateScenario, todayWeek } from '../model/evaluate-scenario.ts';
import type { Payback, ScenarioOutcome, ScenarioResult } from '../model/scenario-result.ts';
import { checkPlan } from '../plan/check-plan.ts';
import type { Plan } from '../plan/plan-types.ts';
import { planWithValues } from './draw-plan.ts';
import { type PlantMemory, plantMemory } from './plant-memory.ts';
import type { UncertainInput } from './uncertain-inputs.ts';

/** Draws to be worked out, each for all of the scenarios. Plain data, so that it can go to another thread. */
export interface DrawRequest {
  readonly plan: Plan;
  readonly scenarioIds: readonly string[];
  readonly inputs: readonly UncertainInput[];
  /** By draw: values in the order and units of the inputs. */
  readonly draws: readonly (readonly number[])[];
}

/** What one draw makes of one scenario. */
export type DrawOutcome =
  | {
      readonly kind: 'computed';
      /** Null for today itself. */
      readonly versusToday: DrawReturn | null;
      /** Lowest debt cover of any twelve months running [–]; null without debt service. */
      readonly lowestCover: number | null;
      /** Whether that is below the lender's line of this draw; false without debt service. */
      readonly missesLine: boolean;
      /** Dried food [kg/week]. */
      readonly dryOut: number;
      /** Sales less running cost [money/week]. */
      readonly contribution: number;
    }
  /** The shop cannot run like that, or the drawn values contradict each other. */
  | { readonly kind: 'refused'; readonly problem: string };

export interface DrawReturn {
  /** Months; 0 when nothing has to be spent, null when the horizon ends before it has paid back. */
  readonly payback: number | null;
  /** [money] */
  readonly netPresentValue: number;
  /** After-tax cash against today, loans left out, added up; month 0 first [money]. */
  readonly cumulative: readonly number[];
  /** What of it is equipment bought or sold at that very moment, money out negative [money]. */
  readonly equipment: readonly number[];
}

/**
 * Works draws out, one list of outcomes for each draw, in the order of the scenarios. All scenarios meet the same
 * values in a draw, so that they can be compared pair by pair. The plant is simulated again only where a draw changes what it
 * is told; draws that differ in money alone and follow each other share one simulation.
 * Throws RangeError on a scenario or an input that the plan has not got.
 * @param onDraw told the number of draws done after each
 */
export function evaluateDraws(
  request: DrawRequest,
  onDraw: (done: number) => void = () => {},
  memory: PlantMemory = plantMemory(),
): DrawOutcome[][] {
  const { plan, inputs, scenarioIds, draws } = request;
  return draws.map((values, k) => {
    const outcomes = evaluateDraw(planWithValues(plan, inputs, values), scenarioIds, memory);
    onDraw(k + 1);
    return outcomes;
  });
}

function evaluateDraw(plan: Plan, scenarioIds: readonly string[], { simulate }: PlantMemory): DrawOutcome[] {
  const checked = checkPlan(plan);
  if (!checked.ok) {
    const problem = checked.error[0]?.problem ?? '';
    return scenarioIds.map(() => ({ kind: 'refused', problem }));
  }
  const today = todayWeek(plan, simulate);
  return scenarioIds.map((id) => drawOutcome(evaluateScenario(plan, id, today, simulate)));
}

function drawOutcome(outcome: ScenarioOutcome): DrawOutcome {
  if (outcome.kind === 'refused') return { kind: 'refused', problem: outcome.findings[0]?.problem ?? '' };
  const { plant, cost, finance } = outcome.result;
  return {
    kind: 'computed',
    versusToday: drawReturn(outcome.result),
    lowestCover: finance.lowestCover,
    missesLine: finance.meetsLine === false,
    dryOut: plant.dryOut,
    contribution: cost.contributionPerWeek,
  };
}

function drawReturn({ finance: { versusToday } }: ScenarioResult): DrawReturn | null {
  if (!versusToday) return null;
  const { payback, netPresentValue, cumulative, lines } = versusToday;
  return { payback: monthsOf(payback), netPresentValue, cumulative, equipment: lines.equipment };
}

function monthsOf(payback: Payback): number | null {
  if (payback.kind === 'crossed') return payback.months;
  return payback.kind === 'noOutlay' ? 0 : null;
}
