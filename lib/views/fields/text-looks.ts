import { LIMITS } from '../../plan/limits.ts';
import { fail, succeed } from '../../result.ts';
import { type FieldLook, NO_ORIGIN } from './field-look.ts';
import { parseWeekdays, weekdaysText } from './weekdays-text.ts';

interface TextWords {
  readonly key: string;
  readonly label: string;
  readonly meaning: string;
  readonly group: string;
}

const asText = (value: unknown): string => String(value ?? '');

const BARE = { unit: '', isFigure: false, options: null, originOf: NO_ORIGIN } as const;

/** A name: never empty, and not too long. */
export function nameLook(words: TextWords): FieldLook {
  return {
    ...words,
    ...BARE,
    text: asText,
    plainText: asText,
    read: (text) => {
      const name = text.trim();
      if (name === '') return fail({ problem: 'The name is empty.', remedy: 'Give it a name.' });
      if (name.length > LIMITS.name) {
        return fail({ problem: `The name has ${name.length} letters.`, remedy: `Use ${LIMITS.name} at most.` });
      }
      return succeed({ value: name, understood: '' });
    },
    usual: undefined,
  };
}

/** Words that may be left out. */
export function wordsLook(words: TextWords): FieldLook {
  return {
    ...words,
    ...BARE,
    text: asText,
    plainText: asText,
    read: (text) =>
      text.length <= LIMITS.name
        ? succeed({ value: text.trim(), understood: '' })
        : fail({ problem: 'The text is too long.', remedy: `Use ${LIMITS.name} letters at most.` }),
    usual: '',
  };
}

/** The code of a currency. Figures are not converted when it changes: it only says what they are in. */
export function currencyLook(words: TextWords): FieldLook {
  return {
    ...words,
    ...BARE,
    text: asText,
    plainText: asText,
    read: (text) => {
      const code = text.trim().toUpperCase();
      if (/^[A-Z]{3}$/.test(code)) return succeed({ value: code, understood: '' });
      return fail({
        problem: `"${text.trim()}" is not the code of a currency.`,
        remedy: 'Use three letters, such as USD.',
      });
    },
    usual: undefined,
  };
}

/** Days of the week, such as "Mon–Fri". */
export function weekdaysLook(group: string): FieldLook {
  const text = (value: unknown) => weekdaysText(value as readonly number[]);
  return {
    ...BARE,
    key: 'weekdays',
    label: 'Days',
    meaning: 'Days of the week on which it holds, such as Mon–Fri or Mon, Wed, Sat.',
    group,
    text,
    plainText: text,
    read: (typed) => {
      const days = parseWeekdays(typed);
      return days.ok ? succeed({ value: days.value, understood: text(days.value) }) : days;
    },
    usual: [],
  };
}
