import { baseValues } from '../inputs/base-values.ts';
import { type ExpectedFailures, expectedFailures } from '../model/pump-failure-expected.ts';
import { type FailureChoice, pumpFailureTerms } from '../model/pump-failure-terms.ts';
import type { ScenarioResult } from '../model/scenario-result.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { percentiles } from './percentile.ts';
import { type FailureYear, simulateFailures } from './pump-failure-simulation.ts';
import { standardError } from './standard-error.ts';

/** How long and from which seed years are lived through. */
export interface FailureRun {
  /** Whole number of years, best thousands: one year in twenty has to be met often. */
  readonly years: number;
  readonly seed: number;
}

/** What many simulated years cost [money/year]. */
export interface FailureSpread {
  readonly mean: number;
  /** By which the mean is uncertain for the number of years that were simulated. */
  readonly standardError: number;
  /** Half of the years cost less. */
  readonly median: number;
  /** One year in twenty costs this or more. */
  readonly worstInTwenty: number;
  /** Share of years in which no pump failed [–]. */
  readonly withoutFailure: number;
}

export interface PumpFailureRisk {
  readonly expected: ExpectedFailures;
  readonly spread: FailureSpread;
}

/**
 * What failing pumps do to a scenario: the mean year in closed form and the spread of years by simulation. Nothing that
 * is lost is caught up afterwards. The availability that the plan gives for the site leaves failing pumps out, so that
 * they count once.
 * Throws RangeError as `simulateFailures` does.
 * @param result of this scenario
 * @param choice with or without a spare; what the scenario says itself when not given
 */
export function pumpFailureRisk(
  plan: Plan,
  scenario: Scenario,
  result: ScenarioResult,
  run: FailureRun,
  choice?: FailureChoice,
): PumpFailureRisk {
  const terms = pumpFailureTerms(plan, scenario, result.plant, result.account.week, choice);
  return {
    expected: expectedFailures(terms),
    spread: failureSpread(simulateFailures(terms, run.years, run.seed)),
  };
}

/** Mean, median and worst one-in-twenty of simulated years. Throws RangeError when there is none. */
export function failureSpread(years: readonly FailureYear[]): FailureSpread {
  const costs = years.map((year) => year.cost);
  const [median = Number.NaN, worstInTwenty = Number.NaN] = percentiles(costs, [0.5, 0.95]);
  const mean = costs.reduce((sum, cost) => sum + cost, 0) / costs.length;
  return {
    mean,
    standardError: standardError(costs),
    median,
    worstInTwenty,
    withoutFailure: years.filter((year) => year.failures === 0).length / years.length,
  };
}

/** Whether a pump on the shelf pays. */
export interface SparePump {
  readonly without: PumpFailureRisk;
  readonly with: PumpFailureRisk;
  /** Of one pump of the kind [money]. */
  readonly price: number;
  /** What the mean year costs less with it [money/year]. */
  readonly savedPerYear: number;
  /** Years until it has saved its price; null when it never does. */
  readonly payback: number | null;
}

/** The scenario with and without a spare pump on the shelf, from the same seed. Throws RangeError as `pumpFailureRisk` does. */
export function sparePump(plan: Plan, scenario: Scenario, result: ScenarioResult, run: FailureRun): SparePump {
  const { price } = baseValues('pump', findById(plan.pumps, scenario.pump, 'pump'));
  const without = pumpFailureRisk(plan, scenario, result, run, { spare: false });
  const withSpare = pumpFailureRisk(plan, scenario, result, run, { spare: true });
  const savedPerYear = without.expected.cost.total - withSpare.expected.cost.total;
  return {
    without,
    with: withSpare,
    price,
    savedPerYear,
    payback: savedPerYear > 0 ? price / savedPerYear : null,
  };
}
