import type { FieldValues } from './field-values.ts';
import type { InputField, QuantityField } from './input-field.ts';
import type { Quantity } from './quantity.ts';
import { fieldsOf, keyOf, type REGISTER, type Section } from './register.ts';

/** The default of a quantity row with its unit, origin and source; null where "none" is the usual case. */
export function defaultQuantity(field: QuantityField): Quantity | null {
  if (field.value === null) return null;
  const { value, unit, origin, source } = field;
  return source === undefined ? { value, unit, origin } : { value, unit, origin, source };
}

function defaultValue(field: InputField): Quantity | number | boolean | string | null {
  return field.kind === 'quantity' ? defaultQuantity(field) : field.value;
}

/** The defaults of a whole section, keyed as the plan keeps them. */
export function defaultValues<Name extends Section>(section: Name): FieldValues<(typeof REGISTER)[Name]> {
  const entries = fieldsOf(section).map((field) => [keyOf(field), defaultValue(field)]);
  return Object.fromEntries(entries) as FieldValues<(typeof REGISTER)[Name]>;
}
