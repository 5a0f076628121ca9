import { type BlendProduct, marketBlend } from '../cost/market-blend.ts';
import { WEEKS_PER_MONTH } from '../cost/month-length.ts';
import { monthlyDemand } from '../cost/monthly-demand.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { demandTerms, runningWeeksPerMonth, startMonth } from './market.ts';
import type { AccountedWeek, ScenarioWeek } from './scenario-week.ts';

/** A way of running the shop, from a month on. */
export interface TradePhase {
  /** 0 is the first month of the plan; below 0 for what runs already. */
  readonly month: number;
  readonly week: ScenarioWeek;
}

/** A phase looked at over the months of the plan: how much of each is run as for the larger market. */
export interface BlendedPhase extends TradePhase {
  /** By month [–], 0–1. */
  readonly shares: readonly number[];
}

/** Dried product of a week [kg/week]. */
function dryOut({ plant }: AccountedWeek, productId: string): number {
  return plant.products.find((product) => product.productId === productId)?.dryOut ?? 0;
}

/** Running cost of what a week makes of a product [money/week]. */
function runningCost(week: AccountedWeek, productId: string): number {
  const costed = week.account.week.products.find((product) => product.productId === productId);
  return (costed?.cost.perDryKilogram ?? 0) * dryOut(week, productId);
}

/** A figure of the two weeks of a phase, mixed for a month. */
function blended(phase: BlendedPhase, month: number, figure: (week: AccountedWeek) => number): number {
  const share = phase.shares[month] ?? 0;
  const today = figure(phase.week);
  return phase.week.larger ? (1 - share) * today + share * figure(phase.week.larger) : today;
}

/** Dried product of a running week in a month [kg/week]. */
export function dryPerWeek(phase: BlendedPhase, productId: string, month: number): number {
  return blended(phase, month, (week) => dryOut(week, productId));
}

/** Running cost of a dried kilogram in a month [money/kg]; 0 for what a phase does not make. */
export function costPerDryKilogram(phase: BlendedPhase, productId: string, month: number): number {
  const dry = dryPerWeek(phase, productId, month);
  return dry > 0 ? blended(phase, month, (week) => runningCost(week, productId)) / dry : 0;
}

/** Cost that runs on whatever is made, and what failing pumps take beyond idle machines [money/month]. */
export function standingPerMonth(phase: BlendedPhase, month: number): number {
  const standing = blended(phase, month, ({ account }) => account.week.standingCost.week);
  const { spoiled, repairs } = phase.week.failures.cost;
  return standing * WEEKS_PER_MONTH + (spoiled + repairs) / 12;
}

/**
 * How much of each month is run as for the larger market: the share that brings in most, see `marketBlend`. Nothing where
 * a phase has no such week.
 */
export function blendPhase(plan: Plan, phase: TradePhase, horizon: number): BlendedPhase {
  const { week } = phase;
  const { larger } = week;
  if (!larger) return { ...phase, shares: new Array<number>(horizon).fill(0) };
  const start = startMonth(plan);
  const products = larger.plant.products.map(({ productId }) => ({
    ...monthOf(plan, week, larger, productId),
    terms: demandTerms(findById(plan.products, productId, 'product')),
  }));
  const shares = Array.from({ length: horizon }, (_, month) =>
    marketBlend(products.map(({ terms, ...made }) => ({ ...made, demand: monthlyDemand(terms, start, month) }))),
  );
  return { ...phase, shares };
}

/** What a month run in either way brings of a product, and what a kilogram of it leaves. */
function monthOf(
  plan: Plan,
  week: ScenarioWeek,
  larger: AccountedWeek,
  productId: string,
): Omit<BlendProduct, 'demand'> {
  const { price, saleableYield } = baseValues('product', findById(plan.products, productId, 'product'));
  const perDry = runningWeeksPerMonth(plan) * week.failures.availability * saleableYield;
  const source = dryOut(week, productId) > 0 ? week : larger;
  const made = dryOut(source, productId) * saleableYield;
  return {
    today: dryOut(week, productId) * perDry,
    larger: dryOut(larger, productId) * perDry,
    margin: made > 0 ? price - runningCost(source, productId) / made : 0,
  };
}
