import type { QuantityField } from '../../inputs/input-field.ts';
import type { Quantity } from '../../inputs/quantity.ts';
import { fieldOf } from '../../inputs/register.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import type { Told } from './own-answers.ts';

function quantityField(id: string): QuantityField {
  const field = fieldOf(id);
  if (field.kind !== 'quantity') throw new RangeError(`the input "${id}" is no quantity`);
  return field;
}

function within(field: QuantityField, value: number): number {
  return Math.min(field.max, Math.max(field.min, value));
}

/** The usual value of an input times a factor, kept within what is allowed: a guess. @param id such as `chamber.volume` */
export function scaledGuess(id: string, factor: number): Quantity {
  const field = quantityField(id);
  if (field.value === null) throw new RangeError(`the input "${id}" has no usual value to scale`);
  const value = within(field, Number((field.value * factor).toPrecision(3)));
  return { value, unit: field.unit, origin: 'guess' };
}

/** A share of what the user told, kept within what is allowed. */
export function toldQuantity(id: string, told: Told, origin: Quantity['origin'], share = 1): Quantity {
  const field = quantityField(id);
  const note = share === 1 ? 'As you told it' : 'Your figure, spread evenly over the products';
  const base = toBase(told.value * share, field.dimension, told.unit);
  const inFieldUnit = fromBase(base, field.dimension, field.unit);
  if (within(field, inFieldUnit) !== inFieldUnit) {
    return { value: within(field, inFieldUnit), unit: field.unit, origin, note };
  }
  return { value: Number((told.value * share).toPrecision(10)), unit: told.unit, origin, note };
}
