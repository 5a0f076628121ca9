import { type Result, succeed } from '../../result.ts';
import { type CellProblem, cellProblem } from '../cell/amount.ts';
import { isDate } from '../text-schemas.ts';

/** How a date of three numbers such as 03/05/2026 begins. */
export type DateOrder = 'day' | 'month';

/** What the dates of a table say together: an order, none because all can be read both ways, or two that cannot both hold. */
export type OrderEvidence = DateOrder | 'unclear' | 'contradictory';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;

const TIME = /(?:[ t]+\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?(?: ?[ap]m)?z?)$/i;
const WEEKDAY = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,? +/i;
const YEAR_FIRST = /^(\d{4})([-/.]?)(\d{1,2})\2(\d{1,2})$/;
const NUMBERS = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/;
const DAY_NAMED = /^(\d{1,2})(?:st|nd|rd|th)?[ -]+([a-z]{3,9})\.?,?[ -]+(\d{4}|\d{2})$/i;
const NAME_FIRST = /^([a-z]{3,9})\.? +(\d{1,2})(?:st|nd|rd|th)?,? +(\d{4}|\d{2})$/i;

/** Dates are of this century; older ones are slips. */
const EARLIEST = 2000;
const LATEST = 2099;

const HOW = 'Write year, month and day, such as 2026-03-31.';

function bare(text: string): string {
  return text.trim().replace(WEEKDAY, '').replace(TIME, '').trim();
}

function monthOf(name: string): number {
  return MONTHS.indexOf(name.slice(0, 3).toLowerCase() as (typeof MONTHS)[number]) + 1;
}

function fullYear(text: string): number {
  return text.length === 2 ? 2000 + Number(text) : Number(text);
}

function made(year: number, month: number, day: number): string | undefined {
  const two = (value: number) => String(value).padStart(2, '0');
  const date = `${year}-${two(month)}-${two(day)}`;
  return year >= EARLIEST && year <= LATEST && isDate(date) ? date : undefined;
}

/** The date for one order of day and month; undefined when there is no such day. */
function inOrder(parts: RegExpExecArray, order: DateOrder): string | undefined {
  const [first, second] = [Number(parts[1]), Number(parts[3])];
  const year = fullYear(parts[4] ?? '');
  return order === 'day' ? made(year, second, first) : made(year, first, second);
}

function named(text: string): string | undefined {
  const dayFirst = DAY_NAMED.exec(text);
  if (dayFirst) return made(fullYear(dayFirst[3] ?? ''), monthOf(dayFirst[2] ?? ''), Number(dayFirst[1]));
  const nameFirst = NAME_FIRST.exec(text);
  return nameFirst ? made(fullYear(nameFirst[3] ?? ''), monthOf(nameFirst[1] ?? ''), Number(nameFirst[2])) : undefined;
}

/** A date of three numbers that can be read both ways; dots are written by those who put the day first. */
export function isTwoWayDate(text: string): boolean {
  const parts = NUMBERS.exec(bare(text));
  if (!parts || parts[2] === '.') return false;
  const [day, month] = [inOrder(parts, 'day'), inOrder(parts, 'month')];
  return day !== undefined && month !== undefined && day !== month;
}

/** Whether day or month comes first in the dates of a table, by those that can be read in one way only. */
export function orderEvidence(texts: readonly string[]): OrderEvidence {
  const orders = texts.flatMap((text) => {
    const parts = NUMBERS.exec(bare(text));
    if (!parts || parts[2] === '.') return [];
    const [day, month] = [inOrder(parts, 'day'), inOrder(parts, 'month')];
    return (day === undefined) === (month === undefined) ? [] : [day === undefined ? 'month' : 'day'];
  });
  const [first] = orders as DateOrder[];
  if (!first) return 'unclear';
  return orders.every((order) => order === first) ? first : 'contradictory';
}

function byNumbers(parts: RegExpExecArray, order: DateOrder): string | undefined {
  const wanted = parts[2] === '.' ? 'day' : order;
  return inOrder(parts, wanted) ?? inOrder(parts, wanted === 'day' ? 'month' : 'day');
}

/**
 * A date as year-month-day from what people write: 2026-05-03, 3.5.2026, 5/3/26, 3 May 2026, May 3, 2026, with or without a
 * time of day. `order` says how dates of three numbers begin; one that is impossible that way is read the other way.
 */
export function readDate(text: string, order: DateOrder): Result<string, CellProblem> {
  const plain = bare(text);
  if (plain === '') return cellProblem('The date is missing.', HOW);
  if (/^[34]\d{4}$/.test(plain)) {
    return cellProblem(
      'This is the day count of a spreadsheet, not a date.',
      'Show the column as a date there and copy it again.',
    );
  }
  const yearFirst = YEAR_FIRST.exec(plain);
  const numbers = NUMBERS.exec(plain);
  const date = yearFirst
    ? made(Number(yearFirst[1]), Number(yearFirst[3]), Number(yearFirst[4]))
    : numbers
      ? byNumbers(numbers, order)
      : named(plain);
  return date === undefined ? cellProblem('This is not a date of this century that can be read.', HOW) : succeed(date);
}
