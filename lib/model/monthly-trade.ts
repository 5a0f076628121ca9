import { WEEKS_PER_MONTH } from '../cost/month-length.ts';
import { monthlyVolumes } from '../cost/monthly-volumes.ts';
import { phasedCapacity } from '../cost/phased-capacity.ts';
import type { ProductCost, WeeklyCost } from '../cost/weekly-cost.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import type { PlantReport } from '../plant/report-types.ts';

/** A way of running the shop, from a month on. */
export interface TradePhase {
  /** 0 is the first month of the plan; below 0 for what runs already. */
  readonly month: number;
  readonly plant: PlantReport;
  readonly week: WeeklyCost;
}

/** Sales and costs by month [money/month], all positive. */
export interface MonthlyTrade {
  readonly revenue: readonly number[];
  readonly variableCosts: readonly number[];
  readonly fixedCosts: readonly number[];
}

/** New machines begin at this share of what they will give. */
const RAMP_START = 0.5;

/** The phase that runs in a month. */
function phaseIn(phases: readonly TradePhase[], month: number): TradePhase {
  const phase = phases.findLast((candidate) => candidate.month <= month);
  if (!phase) throw new RangeError(`no way of running the shop in month ${month}`);
  return phase;
}

function dryPerWeek(phase: TradePhase, productId: string): number {
  return phase.plant.products.find((product) => product.productId === productId)?.dryOut ?? 0;
}

/** Running cost per kilogram fit for sale [money/kg]; 0 for what a phase does not make. */
function unitCost(phase: TradePhase, productId: string): number {
  const cost: ProductCost | undefined = phase.week.products.find((product) => product.productId === productId);
  return cost?.cost.perSaleableKilogram ?? 0;
}

function productTrade(plan: Plan, phases: readonly TradePhase[], productId: string, horizon: number): MonthlyTrade {
  const product = baseValues('product', findById(plan.products, productId, 'product'));
  const site = baseValues('site', plan.site);
  const capacity = phasedCapacity(
    phases.map((phase) => ({ month: phase.month, perWeek: dryPerWeek(phase, productId) })),
    { months: site.rampMonths, startShare: RAMP_START },
    horizon,
  );
  const volumes = monthlyVolumes({
    horizonMonths: horizon,
    startMonth: 0,
    capacity,
    saleableYield: product.saleableYield,
    closedWeeks: Array.from({ length: 12 }, () => site.closedWeeks / WEEK / 12),
    availability: site.availability,
    demand: {
      perMonth: product.weeklyDemand === null ? null : product.weeklyDemand * WEEKS_PER_MONTH,
      seasonality: [],
      growth: product.growth,
    },
    unsold: { kind: 'makeToOrder' },
  });
  return {
    revenue: volumes.map((month) => month.sold * product.price),
    variableCosts: volumes.map((volume, month) => volume.made * unitCost(phaseIn(phases, month), productId)),
    fixedCosts: [],
  };
}

/** Cost that runs on whatever is made [money/month]. */
function standingPerMonth(phase: TradePhase): number {
  return phase.week.standingCost.week * WEEKS_PER_MONTH;
}

function addUp(parts: readonly (readonly number[])[], horizon: number): number[] {
  return Array.from({ length: horizon }, (_, month) => parts.reduce((sum, part) => sum + (part[month] ?? 0), 0));
}

/**
 * Sales, running and standing cost by month: each product sells the smaller of what the machines give (closures,
 * availability and ramp taken off) and what the market takes. Phases are in order of month; the first runs from month 0 or earlier.
 */
export function monthlyTrade(plan: Plan, phases: readonly TradePhase[], horizon: number): MonthlyTrade {
  const ids = new Set(phases.flatMap((phase) => phase.plant.products.map((product) => product.productId)));
  const trades = [...ids].map((id) => productTrade(plan, phases, id, horizon));
  return {
    revenue: addUp(
      trades.map((trade) => trade.revenue),
      horizon,
    ),
    variableCosts: addUp(
      trades.map((trade) => trade.variableCosts),
      horizon,
    ),
    fixedCosts: Array.from({ length: horizon }, (_, month) => standingPerMonth(phaseIn(phases, month))),
  };
}
