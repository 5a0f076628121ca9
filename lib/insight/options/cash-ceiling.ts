import { WEEKS_PER_MONTH } from '../../cost/month-length.ts';
import { assetBook } from '../../finance/capital-assets.ts';
import { fromCents } from '../../finance/cents.ts';
import { baseValues } from '../../inputs/base-values.ts';
import { equipmentPurchases } from '../../model/equipment-purchases.ts';
import { scenarioStages } from '../../model/scenario-stages.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { Plan, Scenario } from '../../plan/plan-types.ts';
import { shiftTime } from '../../plan/shift-time.ts';
import type { Span } from './margin-ceiling.ts';
import type { OptionContext } from './option-context.ts';
import type { OptionPlan } from './option-plan.ts';

/** What every month's rounding to whole cents may come to, all lines together [money]. */
const ROUNDING = 0.1;

/** Money that an option moves whatever its week is like. */
export interface OptionBooks {
  readonly plan: Plan;
  readonly scenario: Scenario;
  /** Month of its first purchase. */
  readonly from: number;
  /** Years from then to the horizon. */
  readonly years: number;
  /** Equipment sold less bought, by month [money]. */
  readonly equipment: readonly number[];
  /** What is written off less gains on sales, by month [money]. */
  readonly writtenOff: readonly number[];
  /** Purchase of all stages [money]. */
  readonly capital: number;
}

/** The books of an option, from what it buys. @param capital see `optionNeeds` */
export function optionBooks({ horizon }: OptionContext, { plan, scenario }: OptionPlan, capital: number): OptionBooks {
  const stages = scenarioStages(plan, scenario);
  const book = assetBook(equipmentPurchases(plan, stages), horizon);
  const from = stages[0]?.month ?? 0;
  return {
    plan,
    scenario,
    from,
    years: (horizon - from) / 12,
    equipment: book.bought.map((bought, month) => fromCents((book.sold[month] ?? 0) - bought)),
    writtenOff: book.depreciation.map((written, month) => fromCents(written - (book.gain[month] ?? 0))),
    capital,
  };
}

/** Hired hours of a week that are paid whatever is done [money/week]. @param onShift people-time of the pattern [s/week] */
function guaranteedPerWeek(plan: Plan, onShift: number): number {
  const { wage, onCost, guaranteed, ownerAtChambers } = baseValues('crew', plan.crew);
  return guaranteed ? (Math.max(0, onShift - ownerAtChambers) / 3600) * wage * (1 + onCost) : 0;
}

/** Least that must be paid each month whatever is made [money/month]: rent, standing charge, maintenance, guaranteed hours. */
export function leastStanding(plan: Plan, scenario: Scenario): number {
  const { rentAndFixed, electricityFixed } = baseValues('site', plan.site);
  const maintenance = scenario.chambers.reduce((sum, { chamber, count }) => {
    return sum + count * baseValues('chamber', findById(plan.chambers, chamber, 'chamber type')).maintenance;
  }, 0);
  return (
    rentAndFixed + electricityFixed + maintenance + guaranteedPerWeek(plan, shiftTime(plan, scenario)) * WEEKS_PER_MONTH
  );
}

function sumIn(series: readonly number[], { from, until }: Span): number {
  return series.slice(from, until).reduce((sum, amount) => sum + amount, 0);
}

/** Earnings before tax and write-offs over a span: today's until the purchase, then at most what `margin` allows. */
function earnings(
  context: OptionContext,
  books: OptionBooks,
  standing: number,
  margin: (span: Span) => number,
  span: Span,
): number {
  const own = { from: Math.max(span.from, books.from), until: span.until };
  const before = sumIn(context.todayEarnings, { from: span.from, until: books.from });
  const months = Math.max(0, own.until - own.from);
  return before + (months > 0 ? margin(own) - standing * months : 0);
}

/**
 * Yearly cash beyond today's, see `OptionFigures`, if sales less running cost from the purchase on were `margin` [money/year]. Never
 * less than what the projection gives for that margin or a smaller one: tax on full years is at least rate × (earnings less what is
 * written off), since losses are used once at most; it rises by less than earnings do; months beyond the last full year are
 * taken untaxed, because their tax may fall due after the horizon.
 * @param margin over a span of months [money]
 */
export function yearlyCash(
  context: OptionContext,
  books: OptionBooks,
  standing: number,
  margin: (span: Span) => number,
): number {
  const { horizon, plan, todayCash } = context;
  const fullYears = { from: 0, until: 12 * Math.floor(horizon / 12) };
  const { taxRate } = baseValues('financing', plan.financing);
  const earned = earnings(context, books, standing, margin, fullYears);
  const tax = taxRate * Math.max(0, earned - sumIn(books.writtenOff, fullYears));
  const untaxed = earnings(context, books, standing, margin, { from: fullYears.until, until: horizon });
  const equipment = sumIn(books.equipment, { from: 0, until: horizon });
  const beyond = earned - tax + untaxed + equipment + books.capital - todayCash;
  return (beyond + ROUNDING * horizon) / books.years;
}
