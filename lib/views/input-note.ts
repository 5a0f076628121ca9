import type { InputField, QuantityField } from '../inputs/input-field.ts';
import { inBase, type Quantity } from '../inputs/quantity.ts';
import { fieldAtPath } from '../plan/field-at-path.ts';
import type { Plan } from '../plan/plan-types.ts';
import { isRawObject, valueAt } from '../plan/raw-value.ts';
import { toBase } from '../units/convert.ts';
import { NONE } from './format-number.ts';
import type { ShownAs } from './format-quantity.ts';
import { preciseText } from './precise-text.ts';
import { sourceWords } from './source-words.ts';

/** What the plan and its register say of one value. */
export interface InputNote {
  readonly label: string;
  readonly value: string;
  /** As it was entered, in its own unit; empty for a bare number or choice. */
  readonly entered: string;
  readonly meaning: string;
  /** measured, quoted, handbook, guess, or "your choice". */
  readonly origin: string;
  /** From low to high; empty when the plan gives none. */
  readonly range: string;
  /** Who says so, and what was noted; empty when nothing was. */
  readonly source: string;
  readonly note: string;
  /** Name of the thing it is a value of, such as a product; empty for what the shop has one of. */
  readonly thing: string;
  /** Where to find it: the part of the plan and the thing in it. */
  readonly place: string;
}

const PARTS: Readonly<Record<string, string>> = {
  site: 'Shop',
  crew: 'Crew',
  freezer: 'Freezer',
  financing: 'Financing',
  products: 'Products',
  chambers: 'Chambers',
  pumps: 'Pumps',
  hoses: 'Hoses',
  scenarios: 'Scenarios',
};

function thingOf(plan: Plan, path: string): string {
  const [part = '', place = ''] = path.split('.');
  const thing = valueAt(plan, [part, place]);
  return isRawObject(thing) && typeof thing.name === 'string' ? thing.name : '';
}

function placeOf(plan: Plan, path: string): string {
  const [part = ''] = path.split('.');
  return [PARTS[part] ?? part, thingOf(plan, path)].filter((word) => word !== '').join(', ');
}

function quantityNote(quantity: Quantity, field: QuantityField, shown: ShownAs) {
  const { low, high, source, note } = quantity;
  const text = (value: number) => preciseText(toBase(value, field.dimension, quantity.unit), field.dimension, shown);
  const hasRange = low !== undefined || high !== undefined;
  return {
    value: preciseText(inBase(quantity, field.dimension), field.dimension, shown),
    entered: `${quantity.value} ${quantity.unit.replace('money', shown.currency)}`.trim(),
    origin: quantity.origin,
    range: hasRange ? `${text(low ?? quantity.value)} to ${text(high ?? quantity.value)}` : '',
    source: source ? sourceWords(source) : '',
    note: note ?? '',
  };
}

function choiceText(raw: unknown, field: InputField, shown: ShownAs): string {
  if (raw === null || raw === undefined) return NONE;
  if (field.kind === 'choice') return field.options.find((option) => option.value === raw)?.label ?? String(raw);
  if (field.kind === 'flag') return raw ? 'yes' : 'no';
  return preciseText(toBase(Number(raw), field.dimension, field.unit), field.dimension, shown);
}

/** Everything there is to say of the value at a path of the plan. Throws RangeError when no input stands there. */
export function inputNote(plan: Plan, path: string, shown: ShownAs): InputNote {
  const field = fieldAtPath(path);
  if (!field) throw new RangeError(`no input at ${path}`);
  const raw = valueAt(plan, path.split('.'));
  const thing = thingOf(plan, path);
  const common = { label: field.label, meaning: field.meaning, thing, place: placeOf(plan, path) };
  if (field.kind === 'quantity' && isRawObject(raw)) {
    return { ...common, ...quantityNote(raw as unknown as Quantity, field, shown) };
  }
  const value = choiceText(raw, field, shown);
  return { ...common, value, entered: '', origin: 'your choice', range: '', source: '', note: '' };
}
