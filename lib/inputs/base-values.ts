import { toBase } from '../units/convert.ts';
import type { FieldValues } from './field-values.ts';
import type { NumberField, QuantityField } from './input-field.ts';
import { inBase, type Quantity } from './quantity.ts';
import { fieldsOf, keyOf, type REGISTER, type Section } from './register.ts';

type InBase<Value> = Value extends Quantity ? number : Value;

/** The values of a section with every number in the engine's unit; flags and choices as they are. */
export type BaseValues<Name extends Section> = {
  readonly [Key in keyof FieldValues<(typeof REGISTER)[Name]>]: InBase<FieldValues<(typeof REGISTER)[Name]>[Key]>;
};

function numberInBase(field: NumberField | QuantityField, value: unknown): number | null {
  if (value === null) return null;
  return field.kind === 'quantity'
    ? inBase(value as Quantity, field.dimension)
    : toBase(value as number, field.dimension, field.unit);
}

/** All values of a section in the engine's units; names, lists and references beside them are left out. */
export function baseValues<Name extends Section>(
  section: Name,
  values: FieldValues<(typeof REGISTER)[Name]>,
): BaseValues<Name> {
  const raw = values as Readonly<Record<string, unknown>>;
  const entries = fieldsOf(section).map((field) => {
    const value = raw[keyOf(field)];
    return [keyOf(field), field.kind === 'flag' || field.kind === 'choice' ? value : numberInBase(field, value)];
  });
  return Object.fromEntries(entries) as BaseValues<Name>;
}
