import type { Bottleneck } from '../insight/insight-types.ts';
import type { CapitalLine, CostLine, Payback, RateOfReturn, ScenarioOutcome } from '../model/scenario-result.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { Finding } from '../result.ts';
import { type OutputValue, outputValues } from './output-values.ts';

/** One scenario as it is printed. */
export type ScenarioJson =
  | {
      readonly id: string;
      readonly name: string;
      readonly kind: 'computed';
      readonly outputs: Readonly<Record<string, OutputValue>>;
      readonly cost: readonly CostLine[];
      readonly capital: readonly CapitalLine[];
      /** Months; null for today, which is judged against nothing. So are the next three and the cash. */
      readonly payback: Payback | null;
      readonly discountedPayback: Payback | null;
      readonly rateOfReturn: RateOfReturn | null;
      /** After-tax cash against today by month, loans left out, added up [money]. */
      readonly cumulativeCash: readonly number[] | null;
      readonly coverByYear: readonly (number | null)[];
      readonly bottleneck: Omit<Bottleneck, 'scenarioId'> | null;
      readonly warnings: readonly Finding[];
    }
  | { readonly id: string; readonly name: string; readonly kind: 'refused'; readonly findings: readonly Finding[] };

/** All that the command prints of a plan. */
export interface ResultsJson {
  readonly format: 'rimeplan-results';
  readonly version: 1;
  /** Name of the plan. */
  readonly plan: string;
  /** What "money" stands for. */
  readonly currency: string;
  readonly scenarios: readonly ScenarioJson[];
}

function bottleneckJson(bottleneck: Bottleneck): Omit<Bottleneck, 'scenarioId'> {
  const { scenarioId: _, ...rest } = bottleneck;
  return rest;
}

/** One scenario's outcome, with where it jams, as plain data. */
export function scenarioJson(outcome: ScenarioOutcome, bottleneck: Bottleneck | null): ScenarioJson {
  if (outcome.kind === 'refused') {
    return { id: outcome.scenarioId, name: outcome.name, kind: 'refused', findings: outcome.findings };
  }
  const { result } = outcome;
  const { coverByYear, versusToday } = result.finance;
  return {
    id: result.scenarioId,
    name: result.name,
    kind: 'computed',
    outputs: outputValues(result),
    cost: result.cost.lines,
    capital: result.capital,
    payback: versusToday?.payback ?? null,
    discountedPayback: versusToday?.discountedPayback ?? null,
    rateOfReturn: versusToday?.rateOfReturn ?? null,
    cumulativeCash: versusToday?.cumulative ?? null,
    coverByYear,
    bottleneck: bottleneck && bottleneckJson(bottleneck),
    warnings: result.warnings,
  };
}

/** The whole answer about a plan. */
export function resultsJson(plan: Plan, scenarios: readonly ScenarioJson[]): ResultsJson {
  return { format: 'rimeplan-results', version: 1, plan: plan.name, currency: plan.site.currency, scenarios };
}
