import * as z from 'zod';
import { LIMITS } from './limits.ts';

const ID_PATTERN = /^[A-Za-z0-9][A-Za-z0-9-]{0,59}$/;

/** True for text that can be an id: letters, digits and hyphens, and no name that every object already carries. */
export function isId(text: string): boolean {
  return ID_PATTERN.test(text) && !(text in Object.prototype);
}

export const idSchema = z.string().refine(isId, {
  error: 'This id cannot be used.',
  params: { remedy: 'Use letters, digits and hyphens, such as "chamber-2".' },
});

export const nameSchema = z
  .string()
  .max(LIMITS.name)
  .refine((text) => text.trim() !== '', { error: 'The name is empty.', params: { remedy: 'Give it a name.' } });

export const noteSchema = z.string().max(LIMITS.note);

const COLUMN_PATTERN = /^[A-Za-z0-9][\w.:-]{0,119}$/;

/** Notes on cells by the id of their column. */
export const notesSchema = z
  .record(z.string().regex(COLUMN_PATTERN), z.string().min(1).max(LIMITS.cellNote))
  .refine((notes) => Object.keys(notes).length <= LIMITS.cellNotes, {
    error: `A scenario has more than ${LIMITS.cellNotes} notes.`,
    params: { remedy: 'Remove some of them.' },
  });

export const placeSchema = z.string().max(LIMITS.name);

export const currencySchema = z.string().regex(/^[A-Z]{3}$/, {
  error: 'The currency is not a three-letter code.',
});

export const dateSchema = z.string().refine(isDate, {
  error: 'This is not a date.',
  params: { remedy: 'Write year, month and day, such as 2026-03-31.' },
});

/** True for a calendar date written as year-month-day. */
export function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

function daysInMonth(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}
