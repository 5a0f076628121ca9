import type { NumberField, QuantityField } from '../inputs/input-field.ts';
import { readFieldCell } from '../plan/read-cell.ts';
import { fail, type Result, succeed } from '../result.ts';
import { shownUnit, toBase } from '../units/convert.ts';
import type { ShownAs } from './format-quantity.ts';
import type { TextFault } from './mix-text.ts';

/**
 * The figure a text means, in the engine's unit of the field's dimension: sums and units are understood, a bare number is
 * in the unit shown, and the field's range is checked.
 * @param unit of a bare number, where it is not the one shown
 */
export function readFigure(
  text: string,
  field: NumberField | QuantityField,
  shown: ShownAs,
  unit = shownUnit(field.dimension, shown.system),
): Result<number, TextFault> {
  const read = readFieldCell(text, { field, path: field.id, shown: unit, currency: shown.currency });
  if (!read.ok) return fail({ problem: read.error.problem, remedy: read.error.remedy });
  if (!read.value) return fail({ problem: 'The cell is empty.', remedy: 'Enter a number.' });
  return succeed(toBase(read.value.value, field.dimension, read.value.unit));
}
