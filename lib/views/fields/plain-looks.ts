import type { ChoiceField, FlagField, InputField, NumberField } from '../../inputs/input-field.ts';
import { keyOf } from '../../inputs/register.ts';
import { readFieldCell } from '../../plan/read-cell.ts';
import { fail, succeed } from '../../result.ts';
import { findChoice } from '../entry-column.ts';
import { NONE } from '../format-number.ts';
import { type ShownAs, unitSign } from '../format-quantity.ts';
import { convertedFigure, entryFigure } from './entry-figure.ts';
import { entryUnit } from './entry-unit.ts';
import { type FieldLook, NO_ORIGIN } from './field-look.ts';
import { quantityLook } from './quantity-look.ts';

function namesOf(field: InputField): Pick<FieldLook, 'key' | 'label' | 'meaning' | 'group'> {
  return { key: keyOf(field), label: field.label, meaning: field.meaning, group: field.group };
}

/** How a bare number in the row's own unit is shown and read. */
function numberLook(field: NumberField, shown: ShownAs): FieldLook {
  const unit = entryUnit(field, shown.system);
  const figure = (value: unknown) => convertedFigure(value as number, field.dimension, field.unit, unit);
  const plainText = (value: unknown) => (value === null ? '' : String(figure(value)));
  return {
    ...namesOf(field),
    unit: unitSign(unit, shown.currency),
    isFigure: true,
    options: null,
    text: (value) => (value === null ? NONE : entryFigure(figure(value))),
    plainText,
    originOf: NO_ORIGIN,
    read: (text, value) => {
      // A figure that was not changed keeps the digits that are not shown.
      if (text.trim() === plainText(value)) return succeed({ value, understood: '' });
      const entry = readFieldCell(text, { field, path: field.id, shown: unit, currency: shown.currency });
      if (!entry.ok) return fail({ problem: entry.error.problem, remedy: entry.error.remedy });
      return succeed({ value: entry.value?.value ?? null, understood: entry.value?.words ?? 'none' });
    },
    usual: field.value,
  };
}

const YES_NO = [
  { value: true, label: 'yes' },
  { value: false, label: 'no' },
] as const;

/** How one of a few words is shown and read. */
function wordLook(
  field: ChoiceField | FlagField,
  choices: readonly { readonly value: string | boolean; readonly label: string }[],
): FieldLook {
  const text = (value: unknown) => choices.find((choice) => choice.value === value)?.label ?? String(value);
  return {
    ...namesOf(field),
    unit: '',
    isFigure: false,
    options: choices.map((choice) => choice.label),
    text,
    plainText: text,
    originOf: NO_ORIGIN,
    read: (typed) => {
      const found = findChoice(typed, choices);
      return found.ok ? succeed({ value: found.value, understood: text(found.value) }) : found;
    },
    usual: field.value,
  };
}

/** How a row of the register is shown and read. */
export function lookOf(field: InputField, shown: ShownAs): FieldLook {
  switch (field.kind) {
    case 'quantity':
      return quantityLook(field, shown);
    case 'number':
      return numberLook(field, shown);
    case 'choice':
      return wordLook(field, field.options);
    case 'flag':
      return wordLook(field, YES_NO);
  }
}
