import { WEEKS_PER_MONTH } from '../cost/month-length.ts';
import { type DemandTerms, monthlyDemand } from '../cost/monthly-demand.ts';
import { baseValues } from '../inputs/base-values.ts';
import { seasonWeights } from '../inputs/season-weights.ts';
import type { Plan, Product, Site } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import { horizonMonths } from './horizon-months.ts';

const CALENDAR: Readonly<Record<Site['startMonth'], number>> = {
  jan: 0,
  feb: 1,
  mar: 2,
  apr: 3,
  may: 4,
  jun: 5,
  jul: 6,
  aug: 7,
  sep: 8,
  oct: 9,
  nov: 10,
  dec: 11,
};

/** Calendar month in which the plan starts, 0 = January. */
export function startMonth(plan: Plan): number {
  return CALENDAR[plan.site.startMonth];
}

/** Weeks closed in every month, the year's closures spread evenly [week]. */
export function closedWeeksPerMonth(plan: Plan): number {
  return baseValues('site', plan.site).closedWeeks / WEEK / 12;
}

/** Weeks of full running in a month, closures and small stoppages taken off [week]. */
export function runningWeeksPerMonth(plan: Plan): number {
  return Math.max(0, WEEKS_PER_MONTH - closedWeeksPerMonth(plan)) * baseValues('site', plan.site).availability;
}

/** Demand for a product as months need it. */
export function demandTerms(product: Product): DemandTerms {
  const { weeklyDemand, growth } = baseValues('product', product);
  return {
    perMonth: weeklyDemand === null ? null : weeklyDemand * WEEKS_PER_MONTH,
    seasonality: seasonWeights(product),
    growth,
  };
}

/**
 * Dried product that a running week has to bring in the busiest month of the plan [kg/week], what is unfit for sale on top: the
 * month's demand has to be met in the weeks that are run. Null for no limit, or where nothing is ever run.
 */
export function busiestWeek(plan: Plan, product: Product): number | null {
  const terms = demandTerms(product);
  const weeks = runningWeeksPerMonth(plan);
  if (terms.perMonth === null || weeks <= 0) return null;
  const start = startMonth(plan);
  const months = Array.from({ length: horizonMonths(plan) }, (_, month) => monthlyDemand(terms, start, month) ?? 0);
  return Math.max(...months) / weeks / baseValues('product', product).saleableYield;
}
