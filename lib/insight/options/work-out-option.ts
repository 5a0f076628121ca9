import { fromCents } from '../../finance/cents.ts';
import { evaluateScenario } from '../../model/evaluate-scenario.ts';
import type { ScenarioResult, ScenarioReturn } from '../../model/scenario-result.ts';
import { scenarioStages } from '../../model/scenario-stages.ts';
import type { Simulate } from '../../model/scenario-week.ts';
import type { Utilisation } from '../../plant/report-types.ts';
import { succeed } from '../../result.ts';
import { bindings } from './bindings.ts';
import { type OptionContext, tiedUp } from './option-context.ts';
import { exceeds, optionNeeds } from './option-needs.ts';
import { optionPlan } from './option-plan.ts';
import type { OptionChoice, OptionFigures, OptionLimits, OptionOutcome, OptionSpace, Unfit } from './option-types.ts';

/** Months over which goods and unpaid bills have to be paid for before the sales of the first year do. */
const FIRST_YEAR = 12;

function workingCapital({ today, horizon }: OptionContext, result: ScenarioResult, from: number): number {
  const months = Array.from({ length: Math.min(FIRST_YEAR, horizon - from) }, (_, k) => from + k);
  const more = months.map((month) => tiedUp(result.finance.statements, month) - tiedUp(today, month));
  return fromCents(Math.max(0, ...more));
}

function meanYear(context: OptionContext, result: ScenarioResult, versus: ScenarioReturn, from: number): number {
  const { today, horizon } = context;
  const last = horizon - 1;
  const tiedAtEnd = fromCents(tiedUp(result.finance.statements, last) - tiedUp(today, last));
  const flows = versus.incremental.reduce((sum, flow) => sum + flow, 0);
  return (flows + result.capitalTotal + tiedAtEnd) / ((horizon - from) / 12);
}

function paybackMonths({ payback }: ScenarioReturn): number | null {
  if (payback.kind === 'crossed') return payback.months;
  return payback.kind === 'noOutlay' ? 0 : null;
}

/** The resource in use most; demand counts as one. */
function busiest(utilisation: Utilisation): OptionFigures['busiest'] {
  const uses = Object.entries(utilisation) as [keyof Utilisation, number | null][];
  return uses.reduce<OptionFigures['busiest']>(
    (most, [resource, use]) => (use !== null && use > (most?.use ?? 0) ? { resource, use } : most),
    null,
  );
}

interface Worked {
  readonly context: OptionContext;
  readonly result: ScenarioResult;
  readonly versus: ScenarioReturn;
  /** Month of the first purchase. */
  readonly from: number;
}

type Money = Omit<OptionFigures, 'needs' | 'binds'>;

function moneyOf({ context, result, versus, from }: Worked): Money {
  const tied = workingCapital(context, result, from);
  return {
    capital: result.capitalTotal,
    workingCapital: tied,
    money: result.capitalTotal + tied,
    yearlyCash: meanYear(context, result, versus, from),
    payback: paybackMonths(versus),
    netPresentValue: versus.netPresentValue,
    lowestCover: result.finance.lowestCover,
    dryOut: result.plant.dryOut,
    busiest: busiest(result.plant.utilisation),
  };
}

/** The limit that only a worked-out option can break; null when it keeps to both. */
function lateLimit({ money, lowestCover }: Money, limits: OptionLimits): Unfit | null {
  if (exceeds(money, limits.budget)) return 'workingCapital';
  if (lowestCover !== null && limits.dscrLine !== null && lowestCover < limits.dscrLine) return 'cover';
  return null;
}

/**
 * Runs an option's week and its accounts, and holds it against the limits that need them.
 * @param choice with its place in the space
 * @param simulate best one that remembers: options of one family then share their weeks
 */
export function workOutOption(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  { choice, place }: { readonly choice: OptionChoice; readonly place: number },
  simulate: Simulate,
): OptionOutcome {
  const option = optionPlan(context.plan, context.baseId, choice);
  const { plan, scenario } = option;
  const outcome = evaluateScenario(plan, scenario.id, succeed(context.week), simulate);
  const versus = outcome.kind === 'computed' ? outcome.result.finance.versusToday : null;
  if (outcome.kind === 'refused' || !versus) return { kind: 'unfit', place, reason: 'cannotRun' };
  const { result } = outcome;
  const from = scenarioStages(plan, scenario)[0]?.month ?? 0;
  const money = moneyOf({ context, result, versus, from });
  const broken = lateLimit(money, limits);
  if (broken) return { kind: 'unfit', place, reason: broken };
  const needs = optionNeeds(option);
  const binds = bindings(context, space, limits, choice, result.plant.utilisation.demand);
  return { kind: 'fit', place, choice, figures: { ...money, needs, binds } };
}
