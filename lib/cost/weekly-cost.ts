import { allocate } from './allocate.ts';
import type { ElectricityCost } from './electricity.ts';
import type { LabourCost } from './labour.ts';
import { type MaterialCost, type MaterialTerms, materialCost } from './materials.ts';
import { perWeek } from './month-length.ts';
import type { PumpUpkeepCost } from './pump-upkeep.ts';
import { requireAmounts } from './require-amounts.ts';

/** One product's week: what was made, what it fetches and what it took. */
export interface ProductTerms extends MaterialTerms {
  readonly productId: string;
  /** [money/kg saleable] */
  readonly pricePerKilogram: number;
  /** Time it held chambers [s/week]: what pumps, cold and power are shared out by. */
  readonly chamberTime: number;
  /** Hands-on time it took [s/week]. */
  readonly handsOn: number;
  /** Time it took of each resource that could jam [s/week], by name. */
  readonly resources: Readonly<Record<string, number>>;
}

export interface WeeklyCostTerms {
  readonly products: readonly ProductTerms[];
  readonly electricity: ElectricityCost;
  readonly upkeep: readonly PumpUpkeepCost[];
  readonly labour: LabourCost;
  /** Rent, insurance and the like, by name [money/month]. */
  readonly fixedPerMonth: Readonly<Record<string, number>>;
}

/** Costs that rise and fall with what is made [money/week]. */
export interface RunningCost {
  readonly ingredients: number;
  readonly packaging: number;
  readonly other: number;
  readonly energy: number;
  readonly upkeep: number;
  /** Hired labour where only hours worked are paid; 0 where hours are guaranteed. */
  readonly labour: number;
}

/** Costs that run on however many batches are made [money/week]. */
export interface StandingCost {
  readonly demandCharge: number;
  readonly electricityFixed: number;
  /** Hired labour where hours are guaranteed. */
  readonly labour: number;
  readonly fixed: Readonly<Record<string, number>>;
}

/** A money figure and what it is per batch and per kilogram; null where there is none to divide by. */
export interface PerUnit {
  readonly week: number;
  readonly perBatch: number | null;
  readonly perDryKilogram: number | null;
  readonly perSaleableKilogram: number | null;
}

export interface ProductCost {
  readonly productId: string;
  readonly saleable: number;
  readonly revenue: number;
  readonly running: RunningCost;
  readonly cost: PerUnit;
  /** Revenue less running cost. */
  readonly contribution: PerUnit;
  /** Time it took of each named resource [s/week]. */
  readonly resources: Readonly<Record<string, number>>;
  /** Contribution per hour of each of them [money/h]; null where the product takes none of it. */
  readonly contributionPerHour: Readonly<Record<string, number | null>>;
}

/** A week's cost and contribution; costs are positive, a loss is a negative contribution. */
export interface WeeklyCost {
  readonly products: readonly ProductCost[];
  readonly revenue: number;
  readonly running: RunningCost;
  readonly standing: StandingCost;
  readonly runningCost: PerUnit;
  readonly standingCost: PerUnit;
  readonly totalCost: PerUnit;
  readonly contribution: PerUnit;
  readonly contributionPerHour: Readonly<Record<string, number | null>>;
  /** Contribution less standing cost [money/week], the owner's time not counted. */
  readonly profit: number;
  /** The same with the owner's time at its rate taken off. */
  readonly profitAfterOwner: number;
}

interface Volume {
  readonly batches: number;
  readonly dryOut: number;
  readonly saleable: number;
}

/**
 * What a week costs and leaves, in all and by product. Materials go to the product that took them, hired labour by
 * hands-on time, energy and pump upkeep by time in the chamber.
 * Throws RangeError on a negative amount.
 */
export function weeklyCost(terms: WeeklyCostTerms): WeeklyCost {
  requireAmounts(terms.fixedPerMonth);
  const products = productCosts(terms);
  const running = addRunning(products.map((product) => product.running));
  const standing = standingCosts(terms);
  const volume = totalVolume(terms.products, products);
  const revenue = sumOf(products, (product) => product.revenue);
  const runningTotal = runningSum(running);
  const standingTotal = standingSum(standing);
  const contribution = revenue - runningTotal;
  return {
    products,
    revenue,
    running,
    standing,
    runningCost: perUnit(runningTotal, volume),
    standingCost: perUnit(standingTotal, volume),
    totalCost: perUnit(runningTotal + standingTotal, volume),
    contribution: perUnit(contribution, volume),
    contributionPerHour: perHour(contribution, addResources(terms.products)),
    profit: contribution - standingTotal,
    profitAfterOwner: contribution - standingTotal - terms.labour.ownerUnpaid,
  };
}

function productCosts(terms: WeeklyCostTerms): ProductCost[] {
  const chamberTimes = terms.products.map((product) => product.chamberTime);
  const energy = allocate(terms.electricity.energyCharge, chamberTimes);
  const upkeep = allocate(
    sumOf(terms.upkeep, (pump) => pump.total),
    chamberTimes,
  );
  const paid = terms.labour.flexible ? terms.labour.paid : 0;
  const labour = allocate(
    paid,
    terms.products.map((product) => product.handsOn),
  );
  return terms.products.map((product, k) =>
    productCost(product, { energy: energy[k] ?? 0, upkeep: upkeep[k] ?? 0, labour: labour[k] ?? 0 }),
  );
}

function productCost(product: ProductTerms, shared: Pick<RunningCost, 'energy' | 'upkeep' | 'labour'>): ProductCost {
  requireAmounts({ price: product.pricePerKilogram, chamberTime: product.chamberTime, handsOn: product.handsOn });
  requireAmounts(product.resources);
  const materials = materialCost(product);
  const { ingredients, packaging, other, saleable } = materials;
  const running: RunningCost = { ingredients, packaging, other, ...shared };
  const revenue = saleable * product.pricePerKilogram;
  const volume = volumeOf(product, materials);
  const contribution = revenue - runningSum(running);
  return {
    productId: product.productId,
    saleable,
    revenue,
    running,
    cost: perUnit(runningSum(running), volume),
    contribution: perUnit(contribution, volume),
    resources: product.resources,
    contributionPerHour: perHour(contribution, product.resources),
  };
}

function volumeOf(product: ProductTerms, materials: MaterialCost): Volume {
  return { batches: product.batches, dryOut: product.dryOut, saleable: materials.saleable };
}

function totalVolume(terms: readonly ProductTerms[], costs: readonly ProductCost[]): Volume {
  return {
    batches: sumOf(terms, (product) => product.batches),
    dryOut: sumOf(terms, (product) => product.dryOut),
    saleable: sumOf(costs, (product) => product.saleable),
  };
}

function standingCosts(terms: WeeklyCostTerms): StandingCost {
  return {
    demandCharge: terms.electricity.demandCharge,
    electricityFixed: terms.electricity.fixedCharge,
    labour: terms.labour.flexible ? 0 : terms.labour.paid,
    fixed: Object.fromEntries(Object.entries(terms.fixedPerMonth).map(([name, amount]) => [name, perWeek(amount)])),
  };
}

function addRunning(costs: readonly RunningCost[]): RunningCost {
  return {
    ingredients: sumOf(costs, (cost) => cost.ingredients),
    packaging: sumOf(costs, (cost) => cost.packaging),
    other: sumOf(costs, (cost) => cost.other),
    energy: sumOf(costs, (cost) => cost.energy),
    upkeep: sumOf(costs, (cost) => cost.upkeep),
    labour: sumOf(costs, (cost) => cost.labour),
  };
}

function runningSum(cost: RunningCost): number {
  return cost.ingredients + cost.packaging + cost.other + cost.energy + cost.upkeep + cost.labour;
}

function standingSum(cost: StandingCost): number {
  const fixed = Object.values(cost.fixed).reduce((sum, amount) => sum + amount, 0);
  return cost.demandCharge + cost.electricityFixed + cost.labour + fixed;
}

function perUnit(week: number, volume: Volume): PerUnit {
  const over = (units: number) => (units > 0 ? week / units : null);
  return {
    week,
    perBatch: over(volume.batches),
    perDryKilogram: over(volume.dryOut),
    perSaleableKilogram: over(volume.saleable),
  };
}

function perHour(contribution: number, resources: Readonly<Record<string, number>>): Record<string, number | null> {
  return Object.fromEntries(
    Object.entries(resources).map(([name, time]) => [name, time > 0 ? contribution / (time / 3600) : null]),
  );
}

function addResources(products: readonly ProductTerms[]): Record<string, number> {
  const totals: Record<string, number> = {};
  for (const product of products) {
    for (const [name, time] of Object.entries(product.resources)) totals[name] = (totals[name] ?? 0) + time;
  }
  return totals;
}

function sumOf<Item>(items: readonly Item[], amount: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + amount(item), 0);
}
