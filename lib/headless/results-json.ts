import type { Bottleneck } from '../insight/insight-types.ts';
import type { Funding } from '../model/funding.ts';
import type {
  CapitalLine,
  CostLine,
  LoanAccount,
  Payback,
  RateOfReturn,
  ScenarioBestMix,
  ScenarioBreakEven,
  ScenarioOutcome,
} from '../model/scenario-result.ts';
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
      /** Whether the lowest cover reaches the lender's line; null without debt. */
      readonly meetsLine: boolean | null;
      /** Uses and sources in whole cents. */
      readonly funding: Funding;
      /** Each loan with what is lent and when, without its schedule. */
      readonly loans: readonly Omit<LoanAccount, 'schedule'>[];
      readonly breakEven: ScenarioBreakEven;
      readonly bestMix: ScenarioBestMix | null;
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
  const { coverByYear, meetsLine, funding, loans, versusToday } = result.finance;
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
    meetsLine,
    funding,
    loans: loans.map(({ schedule: _, ...loan }) => loan),
    breakEven: result.breakEven,
    bestMix: result.bestMix,
    bottleneck: bottleneck && bottleneckJson(bottleneck),
    warnings: result.warnings,
  };
}

/** The whole answer about a plan. */
export function resultsJson(plan: Plan, scenarios: readonly ScenarioJson[]): ResultsJson {
  return { format: 'rimeplan-results', version: 1, plan: plan.name, currency: plan.site.currency, scenarios };
}
