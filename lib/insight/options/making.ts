import { baseValues } from '../../inputs/base-values.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { chamberLoad } from '../../plant/chamber-load.ts';
import { taskTime } from '../../plant/crew.ts';
import { chamberFreezingTime } from '../../plant/freezing-stage.ts';
import { dryOutput } from '../../plant/load-law.ts';
import type { ChamberSpec, ProductSpec, ShopSpec, TaskName } from '../../plant/types.ts';
import { quickestDrying } from './quickest-drying.ts';
import { remembered } from './remembered.ts';

const SECONDS_PER_HOUR = 3600;

/** One batch of a product in one type of chamber, at its best. */
export interface Making {
  readonly productId: string;
  readonly chamberId: string;
  /** Fit for sale [kg]. */
  readonly saleable: number;
  /** Time it holds its chamber, from loading to clean again, never more than in any run [s]; infinite where it never dries. */
  readonly cycle: number;
  /** Hands-on time [s]. */
  readonly hands: number;
  /** Price less ingredients, packaging and other costs of a batch [money]; current and oil are left out. */
  readonly margin: number;
}

/** Shortest drying times found already, by product and chamber. */
export type DryingTimes = Map<string, number>;

/** What an hour of hired hands costs where it goes with the work [money/s]; 0 where shifts are paid whatever is done. */
export function handsPrice(plan: Plan): number {
  const { wage, onCost, guaranteed } = baseValues('crew', plan.crew);
  return guaranteed ? 0 : (wage * (1 + onCost)) / SECONDS_PER_HOUR;
}

function dryingTime(product: ProductSpec, chamber: ChamberSpec, known: DryingTimes): number {
  const key = `${product.id} ${chamber.typeId}`;
  return remembered(known, key, () => quickestDrying(product, chamber));
}

function batchMargin(plan: Plan, productId: string, wet: number, saleable: number): number {
  const { price, wetCost, trimLoss, packaging, otherPerBatch } = baseValues(
    'product',
    findById(plan.products, productId, 'product'),
  );
  return saleable * (price - packaging) - (wet / (1 - trimLoss)) * wetCost - otherPerBatch;
}

function makingOf(plan: Plan, spec: ShopSpec, product: ProductSpec, chamber: ChamberSpec, known: DryingTimes): Making {
  const load = chamberLoad(product, chamber);
  const tasks: readonly TaskName[] = ['load', 'unload', 'clean'];
  const hands = tasks.reduce((sum, task) => sum + taskTime(spec.crew, task, load.wet), 0);
  const freezing = chamberFreezingTime(product, chamber, spec.freezer) ?? Number.POSITIVE_INFINITY;
  const { saleableYield } = baseValues('product', findById(plan.products, product.id, 'product'));
  const saleable = dryOutput(load) * saleableYield;
  return {
    productId: product.id,
    chamberId: chamber.typeId,
    saleable,
    cycle: hands + freezing + dryingTime(product, chamber, known) + chamber.defrostTime,
    hands,
    margin: batchMargin(plan, product.id, load.wet, saleable),
  };
}

/** Every batch a shop could make: each product of its mix in each of its types of chamber. @param known kept between calls */
export function makings(plan: Plan, spec: ShopSpec, known: DryingTimes): Making[] {
  const chambers = new Map(spec.groups.flatMap((group) => group.chambers).map((unit) => [unit.chamber.typeId, unit]));
  return [...chambers.values()].flatMap(({ chamber }) =>
    spec.mix.map(({ product }) => makingOf(plan, spec, product, chamber, known)),
  );
}
