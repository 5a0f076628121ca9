import { defaultQuantity } from '../../inputs/default-values.ts';
import type { NumberField, QuantityField } from '../../inputs/input-field.ts';
import type { Quantity } from '../../inputs/quantity.ts';
import { keyOf } from '../../inputs/register.ts';
import { readFieldCell } from '../../plan/read-cell.ts';
import { fail, type Result, succeed } from '../../result.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import { NONE } from '../format-number.ts';
import { type ShownAs, unitSign } from '../format-quantity.ts';
import type { TextFault } from '../mix-text.ts';
import { convertedFigure, entryFigure } from './entry-figure.ts';
import { entryUnit } from './entry-unit.ts';
import type { FieldLook, FieldReading } from './field-look.ts';

/** A figure turned from one unit of the field into another, with all its digits. */
function inUnit(field: QuantityField, value: number, from: string, to: string): number {
  return from === to ? value : fromBase(toBase(value, field.dimension, from), field.dimension, to);
}

/** Digits of a bound that is turned into another unit: more would only claim an accuracy that nobody gave. */
const BOUND_DIGITS = 6;

/** Low and high in a unit, left out where they would no longer lie on their side of the value. */
function boundsAround(field: QuantityField, held: Quantity, value: number, unit: string): Partial<Quantity> {
  const convert = (bound: number | undefined) => {
    if (bound === undefined || unit === held.unit) return bound;
    return Number(inUnit(field, bound, held.unit, unit).toPrecision(BOUND_DIGITS));
  };
  const [low, high] = [convert(held.low), convert(held.high)];
  return {
    ...(low !== undefined && low <= value ? { low } : {}),
    ...(high !== undefined && high >= value ? { high } : {}),
  };
}

/** The quantity with another value. A published figure that is typed over is a guess until its origin is given again. */
export function withValue(field: QuantityField, held: Quantity | null, value: number, unit: string): Quantity {
  if (held === null) return { value, unit, origin: 'guess' };
  const { note, source, origin } = held;
  const kept = origin === 'handbook' ? { origin: 'guess' as const } : { origin, ...(source ? { source } : {}) };
  return { value, unit, ...kept, ...boundsAround(field, held, value, unit), ...(note ? { note } : {}) };
}

function isSameAmount(field: QuantityField, held: Quantity | null, value: number, unit: string): boolean {
  if (held === null) return false;
  const [now, then] = [toBase(held.value, field.dimension, held.unit), toBase(value, field.dimension, unit)];
  return Math.abs(now - then) <= 1e-9 * Math.max(Math.abs(now), Math.abs(then));
}

/** True when the text is the figure that stands in the cell, which may be a rounded one. */
function isAsShown(text: string, look: Pick<FieldLook, 'plainText' | 'text'>, held: Quantity | null): boolean {
  return held !== null && (text.trim() === look.plainText(held) || text.trim() === look.text(held));
}

function figureOf(field: QuantityField, held: unknown, unit: string): number | null {
  return held === null
    ? null
    : convertedFigure((held as Quantity).value, field.dimension, (held as Quantity).unit, unit);
}

/** How a quantity with its origin is shown and read. */
export function quantityLook(field: QuantityField, shown: ShownAs): FieldLook {
  const unit = entryUnit(field, shown.system);
  const texts = {
    text: (value: unknown) => {
      const figure = figureOf(field, value, unit);
      return figure === null ? NONE : entryFigure(figure);
    },
    plainText: (value: unknown) => String(figureOf(field, value, unit) ?? ''),
  };
  const read = (text: string, value: unknown): Result<FieldReading, TextFault> => {
    const held = value as Quantity | null;
    if (isAsShown(text, texts, held)) return succeed({ value: held, understood: '' });
    const entry = readFieldCell(text, { field, path: field.id, shown: unit, currency: shown.currency });
    if (!entry.ok) return fail({ problem: entry.error.problem, remedy: entry.error.remedy });
    if (entry.value === null) return succeed({ value: null, understood: 'none' });
    const { value: amount, unit: typed, words } = entry.value;
    const isSame = isSameAmount(field, held, amount, typed);
    return succeed({ value: isSame ? held : withValue(field, held, amount, typed), understood: words });
  };
  return {
    key: keyOf(field),
    label: field.label,
    meaning: field.meaning,
    unit: unitSign(unit, shown.currency),
    group: field.group,
    isFigure: true,
    options: null,
    ...texts,
    originOf: (value) => (value === null ? null : (value as Quantity).origin),
    read,
    usual: defaultQuantity(field),
  };
}

/** Value of a bound or limit of the field, given in `from`, as a figure in the unit shown. */
export function figureShown(field: QuantityField | NumberField, value: number, from: string, shown: ShownAs): string {
  return entryFigure(convertedFigure(value, field.dimension, from, entryUnit(field, shown.system)));
}

/** A figure of the field turned into the unit in which a quantity is kept. */
export function inHeldUnit(field: QuantityField, value: number, from: string, held: Quantity): number {
  return inUnit(field, value, from, held.unit);
}
