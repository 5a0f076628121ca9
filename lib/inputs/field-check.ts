import { fromBase, toBase } from '../units/convert.ts';
import type { NumberField, QuantityField } from './input-field.ts';
import { plainNumber } from './plain-number.ts';
import type { Quantity } from './quantity.ts';

/** What is wrong with a value of one field, in plain words; `key` names the part of the quantity that is meant. */
export interface FieldProblem {
  readonly problem: string;
  readonly remedy: string;
  readonly key?: 'low' | 'high';
}

/** Room for rounding when a limit is converted between units, as a share of the limit. */
const ROUNDING = 1e-9;

function inUnit(field: NumberField | QuantityField, limit: number, unit: string): number {
  return fromBase(toBase(limit, field.dimension, field.unit), field.dimension, unit);
}

function withUnit(value: number, unit: string): string {
  return unit === '' || unit === '1' ? plainNumber(value) : `${plainNumber(value)} ${unit}`;
}

function rangeRemedy(field: NumberField | QuantityField, unit: string): string {
  const low = withUnit(inUnit(field, field.min, unit), unit);
  return `Give a value from ${low} to ${withUnit(inUnit(field, field.max, unit), unit)}.`;
}

/** What is wrong with a number given in `unit` for this field; undefined when it is allowed. */
export function numberProblem(
  field: NumberField | QuantityField,
  value: number,
  unit: string,
): FieldProblem | undefined {
  const least = inUnit(field, field.min, unit);
  const most = inUnit(field, field.max, unit);
  const slack = ROUNDING * Math.max(Math.abs(least), Math.abs(most));
  const remedy = rangeRemedy(field, unit);
  if (!Number.isFinite(value)) return { problem: `${field.label} is not a finite number.`, remedy };
  if (value < least - slack)
    return { problem: `${field.label} is ${withUnit(value, unit)}, which is too low.`, remedy };
  if (value > most + slack)
    return { problem: `${field.label} is ${withUnit(value, unit)}, which is too high.`, remedy };
  if (field.integer && !Number.isInteger(value)) {
    return {
      problem: `${field.label} must be a whole number.`,
      remedy: `Give a whole number, such as ${Math.round(value)}.`,
    };
  }
  return undefined;
}

function boundProblem(field: QuantityField, quantity: Quantity, key: 'low' | 'high'): FieldProblem | undefined {
  const bound = quantity[key];
  if (bound === undefined) return undefined;
  const outside = numberProblem(field, bound, quantity.unit);
  if (outside) return { ...outside, problem: `The ${key} of ${outside.problem}`, key };
  const wrong = key === 'low' ? bound > quantity.value : bound < quantity.value;
  if (!wrong) return undefined;
  const side = key === 'low' ? 'above' : 'below';
  return {
    problem: `${field.label}: the ${key} value ${withUnit(bound, quantity.unit)} is ${side} the likely value.`,
    remedy: 'Keep low, likely and high in rising order.',
    key,
  };
}

/** All that is wrong with a quantity of this field; its unit must already be one of the dimension's. */
export function quantityProblems(field: QuantityField, quantity: Quantity): readonly FieldProblem[] {
  const wrong = numberProblem(field, quantity.value, quantity.unit);
  // Low and high are only judged against a likely value that can stand.
  if (wrong) return [wrong];
  const bounds = [boundProblem(field, quantity, 'low'), boundProblem(field, quantity, 'high')];
  return bounds.filter((found) => found !== undefined);
}
