import type { NumberField, QuantityField } from '../inputs/input-field.ts';
import { FOOD_COMPOSITIONS } from '../inputs/presets/food-compositions.ts';
import { fieldOf } from '../inputs/register.ts';
import type { OwnAnswers, OwnHours, Told } from '../plan/own/own-answers.ts';
import { readFieldCell } from '../plan/read-cell.ts';
import { fail, type Result, succeed } from '../result.ts';
import { entryUnit } from './fields/entry-unit.ts';
import { type ShownAs, unitSign } from './format-quantity.ts';
import type { TextFault } from './mix-text.ts';

/** The five questions as they are filled in. */
export interface OwnForm {
  readonly foods: readonly string[];
  readonly chambers: string;
  readonly shelfArea: string;
  readonly pump: OwnAnswers['pump'];
  readonly hours: OwnHours;
  readonly price: string;
  readonly weeklyDemand: string;
}

/** Where a form can be at fault. */
export type OwnQuestion = 'foods' | 'chambers' | 'shelfArea' | 'price' | 'weeklyDemand';

export type OwnFaults = Readonly<Partial<Record<OwnQuestion, TextFault>>>;

export const OWN_START: OwnForm = {
  foods: [],
  chambers: '1',
  shelfArea: '',
  pump: 'own',
  hours: 'days',
  price: '',
  weeklyDemand: '',
};

/** Foods to choose from. */
export const OWN_FOODS: readonly { readonly key: string; readonly label: string }[] = FOOD_COMPOSITIONS;

export const OWN_PUMPS = [
  { value: 'own', label: 'one each' },
  { value: 'shared', label: 'one for all' },
] as const;

export const OWN_TIMES: readonly { readonly value: OwnHours; readonly label: string }[] = [
  { value: 'days', label: 'weekdays, 8 to 16:30' },
  { value: 'long-days', label: 'weekdays, 7 to 20' },
  { value: 'every-day', label: 'every day, 8 to 18' },
  { value: 'two-shifts', label: 'two shifts, 6 to 22' },
];

/** The most foods a new plan begins with. */
export const MOST_FOODS = 6;

const FIELD_IDS = {
  chambers: 'scenarioChamber.count',
  shelfArea: 'chamber.shelfArea',
  price: 'product.price',
  weeklyDemand: 'product.weeklyDemand',
} as const;

type Figure = keyof typeof FIELD_IDS;

function fieldFor(figure: Figure): NumberField | QuantityField {
  const field = fieldOf(FIELD_IDS[figure]);
  if (field.kind !== 'number' && field.kind !== 'quantity')
    throw new RangeError(`the input "${field.id}" is no figure`);
  return field;
}

/** The unit in which a figure of the form is asked for. */
export function ownUnit(figure: Figure, shown: ShownAs): string {
  return unitSign(entryUnit(fieldFor(figure), shown.system), shown.currency);
}

function told(figure: Figure, text: string, shown: ShownAs): Result<Told | null, TextFault> {
  const field = fieldFor(figure);
  const unit = entryUnit(field, shown.system);
  if (text.trim() === '' && !field.nullable)
    return fail({ problem: 'This is missing.', remedy: 'A rough figure will do.' });
  const read = readFieldCell(text, { field, path: field.id, shown: unit, currency: shown.currency });
  if (!read.ok) return fail({ problem: read.error.problem, remedy: read.error.remedy });
  return succeed(read.value && { value: read.value.value, unit: read.value.unit });
}

function foodFault({ length }: readonly string[]): TextFault | null {
  if (length === 0) return { problem: 'Nothing is chosen.', remedy: 'Choose at least one; others can follow later.' };
  if (length <= MOST_FOODS) return null;
  return { problem: `${length} are chosen.`, remedy: `Begin with ${MOST_FOODS} at most; others can follow later.` };
}

function chamberFault(read: Result<Told | null, TextFault>): TextFault | null {
  if (!read.ok) return read.error;
  return (read.value?.value ?? 0) >= 1 ? null : { problem: 'There is no chamber.', remedy: 'Give at least one.' };
}

function faultOf(read: Result<unknown, TextFault>): TextFault | null {
  return read.ok ? null : read.error;
}

function withoutNulls(faults: Readonly<Record<OwnQuestion, TextFault | null>>): OwnFaults {
  return Object.fromEntries(Object.entries(faults).filter(([, fault]) => fault !== null));
}

/** The answers that a form gives, or what is wrong where. */
export function readOwnForm(form: OwnForm, shown: ShownAs): Result<OwnAnswers, OwnFaults> {
  const [chambers, shelfArea, price, weeklyDemand] = [
    told('chambers', form.chambers, shown),
    told('shelfArea', form.shelfArea, shown),
    told('price', form.price, shown),
    told('weeklyDemand', form.weeklyDemand, shown),
  ];
  const faults = withoutNulls({
    foods: foodFault(form.foods),
    chambers: chamberFault(chambers),
    shelfArea: faultOf(shelfArea),
    price: faultOf(price),
    weeklyDemand: faultOf(weeklyDemand),
  });
  const areRead = chambers.ok && shelfArea.ok && price.ok && weeklyDemand.ok;
  if (!areRead || Object.keys(faults).length > 0 || !chambers.value || !shelfArea.value || !price.value)
    return fail(faults);
  return succeed({
    foods: form.foods,
    chambers: chambers.value.value,
    shelfArea: shelfArea.value,
    pump: form.pump,
    hours: form.hours,
    price: price.value,
    weeklyDemand: weeklyDemand.value,
    currency: shown.currency,
    unitSystem: shown.system,
  });
}
