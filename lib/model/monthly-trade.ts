import { monthlyVolumes, type UnsoldRule, type VolumeMonth } from '../cost/monthly-volumes.ts';
import { phasedCapacity } from '../cost/phased-capacity.ts';
import { stockedCosts } from '../cost/stocked-costs.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Product } from '../plan/plan-types.ts';
import { closedWeeksPerMonth, demandTerms, startMonth } from './market.ts';
import {
  type BlendedPhase,
  blendPhase,
  costPerDryKilogram,
  dryPerWeek,
  standingPerMonth,
  type TradePhase,
} from './trade-phase.ts';

/** One product's months. */
export interface ProductTrade {
  readonly productId: string;
  readonly volumes: readonly VolumeMonth[];
  /** Running cost of what is sold or thrown away [money/month]. */
  readonly variableCosts: readonly number[];
}

/** Sales and costs by month [money/month], all positive. */
export interface MonthlyTrade {
  readonly revenue: readonly number[];
  /** Running cost of what is sold or thrown away. */
  readonly variableCosts: readonly number[];
  readonly fixedCosts: readonly number[];
  /** Running cost of what lies in store at the end of each month [money]. */
  readonly stockValue: readonly number[];
  readonly products: readonly ProductTrade[];
}

/** The phase that runs in a month. */
function phaseIn(phases: readonly BlendedPhase[], month: number): BlendedPhase {
  const phase = phases.findLast((candidate) => candidate.month <= month);
  if (!phase) throw new RangeError(`no way of running the shop in month ${month}`);
  return phase;
}

function byMonth(horizon: number, value: (month: number) => number): number[] {
  return Array.from({ length: horizon }, (_, month) => value(month));
}

function unsoldRule(product: Product): UnsoldRule {
  const { unsold, mostKept } = baseValues('product', product);
  return unsold === 'keep' ? { kind: 'keep', mostKept } : { kind: unsold };
}

/** Dried product that a running week can bring, by month, new machines coming up to speed [kg/week]. */
export function capacityByMonth(
  plan: Plan,
  phases: readonly BlendedPhase[],
  productId: string,
  horizon: number,
): number[] {
  const { rampMonths, rampStart } = baseValues('site', plan.site);
  return phasedCapacity(
    phases.map((phase) => ({
      month: phase.month,
      perWeek: byMonth(horizon, (month) => dryPerWeek(phase, productId, month)),
    })),
    { months: rampMonths, startShare: rampStart },
    horizon,
  );
}

function productVolumes(plan: Plan, phases: readonly BlendedPhase[], product: Product, horizon: number): VolumeMonth[] {
  const site = baseValues('site', plan.site);
  return monthlyVolumes({
    horizonMonths: horizon,
    startMonth: startMonth(plan),
    capacity: capacityByMonth(plan, phases, product.id, horizon),
    saleableYield: baseValues('product', product).saleableYield,
    closedWeeks: new Array<number>(12).fill(closedWeeksPerMonth(plan)),
    availability: byMonth(horizon, (month) => site.availability * phaseIn(phases, month).week.failures.availability),
    demand: demandTerms(product),
    unsold: unsoldRule(product),
  });
}

function productTrade(plan: Plan, phases: readonly BlendedPhase[], productId: string, horizon: number): MonthlyTrade {
  const product = findById(plan.products, productId, 'product');
  const { price, saleableYield } = baseValues('product', product);
  const volumes = productVolumes(plan, phases, product, horizon);
  const spent = volumes.map(
    ({ made }, month) => (made / saleableYield) * costPerDryKilogram(phaseIn(phases, month), productId, month),
  );
  const { costs, stockValue } = stockedCosts(volumes, spent);
  return {
    revenue: volumes.map((month) => month.sold * price),
    variableCosts: costs,
    fixedCosts: [],
    stockValue,
    products: [{ productId, volumes, variableCosts: costs }],
  };
}

function addUp(
  trades: readonly MonthlyTrade[],
  line: Exclude<keyof MonthlyTrade, 'products'>,
  horizon: number,
): number[] {
  return byMonth(horizon, (month) => trades.reduce((sum, trade) => sum + (trade[line][month] ?? 0), 0));
}

/**
 * Sales, running and standing cost by month: each product sells the smaller of what the machines give (closures, small
 * stoppages, failing pumps and ramp taken off) and what the market takes. Phases are in order of month; the first runs from
 * month 0 or earlier.
 */
export function monthlyTrade(plan: Plan, phases: readonly TradePhase[], horizon: number): MonthlyTrade {
  const blends = phases.map((phase) => blendPhase(plan, phase, horizon));
  const ids = new Set(phases.flatMap(({ week }) => week.plant.products.map((product) => product.productId)));
  const trades = [...ids].map((id) => productTrade(plan, blends, id, horizon));
  return {
    revenue: addUp(trades, 'revenue', horizon),
    variableCosts: addUp(trades, 'variableCosts', horizon),
    fixedCosts: byMonth(horizon, (month) => standingPerMonth(phaseIn(blends, month), month)),
    stockValue: addUp(trades, 'stockValue', horizon),
    products: trades.flatMap((trade) => trade.products),
  };
}
