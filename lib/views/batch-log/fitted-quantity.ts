import type { QuantityField } from '../../inputs/input-field.ts';
import type { Quantity } from '../../inputs/quantity.ts';
import { fieldOf } from '../../inputs/register.ts';
import type { FittedValue, InputName } from '../../insight/calibration/calibration.ts';
import { FITTED_SOURCE } from '../../plan/fitted-source.ts';
import { pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import { countOf } from '../format-number.ts';

/** Digits of a fitted value that are worth writing down. */
const DIGITS = 4;

/** The register's row for a fitted value. */
export function fittedField({ list, key }: InputName): QuantityField {
  return fieldOf(`${list === 'chambers' ? 'chamber' : 'product'}.${key}`) as QuantityField;
}

/** Path of the input in this plan; null when its chamber or product is gone. */
export function fittedPath(plan: Plan, { list, id, key }: InputName): string | null {
  return pathOfPlace(plan, `${list}.@${id}.${key}`);
}

/** True for a value that the log has something to say about. */
export function isWorthUsing({ verdict }: FittedValue): boolean {
  return verdict !== 'undetermined';
}

const COUNTED = {
  hours: ['batch', 'batches'],
  weights: ['weighing', 'weighings'],
  riseTests: ['pressure-rise test', 'pressure-rise tests'],
} as const;

/** What a value was told by: "7 batches". */
export function toldBy({ from, count }: FittedValue): string {
  const [one, many] = COUNTED[from];
  return countOf(count, one, many);
}

/** The quantity a fitted value becomes in the plan: measured, with the ends of its middle 95 % as low and high. */
export function fittedQuantity(plan: Plan, fitted: FittedValue): Quantity | null {
  const held = valueAtPlace(plan, `${fitted.list}.@${fitted.id}.${fitted.key}`) as Quantity | null | undefined;
  if (!held) return null;
  const { unit } = held;
  const { dimension, unit: own, min, max } = fittedField(fitted);
  const inUnit = (limit: number) => fromBase(toBase(limit, dimension, own), dimension, unit);
  const written = (value: number) => {
    const rounded = Number(fromBase(value, dimension, unit).toPrecision(DIGITS));
    return Math.min(inUnit(max), Math.max(inUnit(min), rounded));
  };
  const { value, low, high } = fitted.after;
  const range = { value: written(value), low: written(low), high: written(high) };
  return { ...range, unit, origin: 'measured', source: FITTED_SOURCE, note: `From ${toldBy(fitted)}.` };
}
