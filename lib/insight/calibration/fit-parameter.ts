import type { QuantityField } from '../../inputs/input-field.ts';
import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { fieldOf } from '../../inputs/register.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { toBase } from '../../units/convert.ts';
import { FIT_RULES, type FitKey } from './fit-key.ts';
import type { LoggedBatch } from './logged-batches.ts';
import { type Prior, priorOf } from './prior.ts';

/** One value to be fitted. Its place z counts standard deviations of the belief from the believed value. */
export interface FitParameter {
  readonly list: 'chambers' | 'products';
  readonly id: string;
  readonly key: FitKey;
  readonly prior: Prior;
  /** Value in the plan, in the engine's unit. */
  readonly before: number;
  /** Place of that value, and how far the fit may go. */
  readonly start: number;
  readonly least: number;
  readonly most: number;
}

/** Beyond so many standard deviations of the belief the model is wrong, not the value. */
const FURTHEST = 5;

type Item = Plan['chambers'][number] | Plan['products'][number];

/** Value of a parameter at a place, in the engine's unit. */
export function valueAtPlace(parameter: FitParameter, place: number): number {
  const { prior, key } = parameter;
  return FIT_RULES[key].scale.from(prior.centre + prior.spread * place);
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function parameterOf(list: FitParameter['list'], item: Item, key: FitKey): FitParameter {
  const { section, scale, usualSpread } = FIT_RULES[key];
  const field = fieldOf(`${section}.${key}`) as QuantityField;
  const quantity = (item as unknown as Readonly<Record<FitKey, Quantity>>)[key];
  const prior = priorOf(field, quantity, scale, usualSpread);
  const before = inBase(quantity, field.dimension);
  const place = (value: number) => (scale.to(value) - prior.centre) / prior.spread;
  const limit = (value: number) => place(toBase(value, field.dimension, field.unit));
  const least = clamp(limit(field.min), -FURTHEST, 0);
  const most = clamp(limit(field.max), 0, FURTHEST);
  return { list, id: item.id, key, prior, before, start: clamp(place(before), least, most), least, most };
}

/** What bears on a product's hours, by how it dries. */
const PRODUCT_KEYS: Readonly<Record<Plan['products'][number]['form'], readonly FitKey[]>> = {
  pieces: ['spread', 'permeability', 'driedConductivity', 'desorptionRate'],
  poured: ['spread', 'permeability', 'desorptionRate'],
  bound: ['desorptionRate'],
};

function chamberKeys(batches: readonly LoggedBatch[]): readonly FitKey[] {
  const hasPressure = batches.some((batch) => batch.highestPressure !== null);
  return hasPressure ? ['heatContact', 'trapVapourConductance'] : ['heatContact'];
}

/** The values on which the hours and pressures of these batches hang, chambers first, in the plan's order. */
export function fitParameters(plan: Plan, batches: readonly LoggedBatch[]): readonly FitParameter[] {
  const chambers = plan.chambers.flatMap((chamber) => {
    const own = batches.filter((batch) => batch.chamber === chamber.id);
    return own.length === 0 ? [] : chamberKeys(own).map((key) => parameterOf('chambers', chamber, key));
  });
  const products = plan.products.flatMap((product) =>
    batches.some((batch) => batch.product === product.id)
      ? PRODUCT_KEYS[product.form].map((key) => parameterOf('products', product, key))
      : [],
  );
  return [...chambers, ...products];
}
