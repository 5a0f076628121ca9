/**
 * A spreadsheet formula and what it comes to. Both are put together by the functions below, so that the figure kept beside a
 * formula in the file is that formula's own, worked out the way a spreadsheet would.
 */
export interface Expression {
  /** As a spreadsheet reads it, without the equals sign. */
  readonly text: string;
  /** NaN where it comes to words and not to a number. */
  readonly value: number;
  /** The words it comes to, which may be none. */
  readonly words?: string;
  /** How tightly it holds together: a comparison 0, a sum 1, a product 2, a power 3, anything closed 4. */
  readonly hold: 0 | 1 | 2 | 3 | 4;
}

/** Cells in a row or column and what they come to. */
export interface CellRange {
  readonly text: string;
  readonly values: readonly number[];
}

type Value = Expression | number;

function closed(text: string, value: number): Expression {
  return { text, value, hold: 4 };
}

/** A cell or a defined name. */
export function reference(text: string, value: number, words?: string): Expression {
  return { ...closed(text, value), ...(words === undefined ? {} : { words }) };
}

function number(value: number): Expression {
  return value < 0 ? { text: String(value), value, hold: 1 } : closed(plainNumber(value), value);
}

/** A number as every spreadsheet reads it in a formula. */
function plainNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a formula cannot hold ${value}`);
  return String(value).toUpperCase();
}

/** Words in place of a number; sums and extremes over ranges pass them over. */
export function said(words: string): Expression {
  return { text: `"${words.replaceAll('"', '""')}"`, value: Number.NaN, words, hold: 4 };
}

/** An empty cell. */
export const NOTHING = said('');

function asExpression(value: Value): Expression {
  return typeof value === 'number' ? number(value) : value;
}

function held(value: Expression, least: number): string {
  return value.hold >= least ? value.text : `(${value.text})`;
}

function join(values: readonly Value[], sign: string, hold: 1 | 2): string {
  return values
    .map(asExpression)
    .map((value, k) => held(value, k === 0 ? hold : hold + 1))
    .join(sign);
}

export function plus(...terms: readonly Value[]): Expression {
  const value = terms.map(asExpression).reduce((sum, term) => sum + term.value, 0);
  return { text: terms.map((term) => held(asExpression(term), 1)).join('+'), value, hold: 1 };
}

export function minus(first: Value, second: Value): Expression {
  return {
    text: join([first, second], '-', 1),
    value: asExpression(first).value - asExpression(second).value,
    hold: 1,
  };
}

export function negative(of: Value): Expression {
  return { text: `-${held(asExpression(of), 4)}`, value: 0 - asExpression(of).value, hold: 1 };
}

export function times(...factors: readonly Value[]): Expression {
  const value = factors.map(asExpression).reduce((product, factor) => product * factor.value, 1);
  return { text: factors.map((factor) => held(asExpression(factor), 2)).join('*'), value, hold: 2 };
}

export function over(above: Value, below: Value): Expression {
  return {
    text: join([above, below], '/', 2),
    value: asExpression(above).value / asExpression(below).value,
    hold: 2,
  };
}

export function power(base: Value, exponent: Value): Expression {
  return {
    text: `${held(asExpression(base), 4)}^${held(asExpression(exponent), 4)}`,
    value: asExpression(base).value ** asExpression(exponent).value,
    hold: 3,
  };
}

function call(name: string, parts: readonly Value[], value: number): Expression {
  return closed(`${name}(${parts.map((part) => asExpression(part).text).join(',')})`, value);
}

function valuesOf(parts: readonly Value[]): number[] {
  return parts.map((part) => asExpression(part).value);
}

export function smallest(...parts: readonly Value[]): Expression {
  return call('MIN', parts, Math.min(...valuesOf(parts)));
}

export function largest(...parts: readonly Value[]): Expression {
  return call('MAX', parts, Math.max(...valuesOf(parts)));
}

/** Halves away from zero, as spreadsheets round. */
function toCent(value: number): number {
  return (Math.sign(value) * Math.round(Math.abs(value) * 100)) / 100 + 0;
}

/** To the cent. */
export function cents(of: Value): Expression {
  return call('ROUND', [of, 2], toCent(asExpression(of).value));
}

/** To the cent, towards zero. */
export function centsDown(of: Value): Expression {
  const { value } = asExpression(of);
  // Whole cents in binary may lie a hair below themselves.
  return call('ROUNDDOWN', [of, 2], (Math.sign(value) * Math.floor(Math.abs(value) * 100 + 1e-6)) / 100 + 0);
}

export function wholePart(of: Value): Expression {
  return call('INT', [of], Math.floor(asExpression(of).value));
}

export function remainder(of: Value, by: Value): Expression {
  const [value = 0, divisor = 1] = valuesOf([of, by]);
  return call('MOD', [of, by], value - divisor * Math.floor(value / divisor));
}

/** A question that is answered by yes, kept as 1, or no, kept as 0. */
function compared(first: Value, sign: string, second: Value, holds: boolean): Expression {
  return {
    text: `${held(asExpression(first), 1)}${sign}${held(asExpression(second), 1)}`,
    value: holds ? 1 : 0,
    hold: 0,
  };
}

export function isBelow(first: Value, second: Value): Expression {
  return compared(first, '<', second, asExpression(first).value < asExpression(second).value);
}

export function isAtMost(first: Value, second: Value): Expression {
  return compared(first, '<=', second, asExpression(first).value <= asExpression(second).value);
}

export function isEqual(first: Value, second: Value): Expression {
  return compared(first, '=', second, asExpression(first).value === asExpression(second).value);
}

export function allOf(...questions: readonly Expression[]): Expression {
  return call('AND', questions, questions.every((question) => question.value === 1) ? 1 : 0);
}

export function anyOf(...questions: readonly Expression[]): Expression {
  return call('OR', questions, questions.some((question) => question.value === 1) ? 1 : 0);
}

export function either(question: Expression, then: Value, otherwise: Value): Expression {
  const taken = asExpression(question.value === 1 ? then : otherwise);
  return { ...call('IF', [question, then, otherwise], taken.value), words: taken.words };
}

function numbersIn(values: readonly number[]): number[] {
  return values.filter((value) => !Number.isNaN(value));
}

function added(values: readonly number[]): number {
  return numbersIn(values).reduce((sum, value) => sum + value, 0);
}

export function countOf(range: CellRange): Expression {
  return closed(`COUNT(${range.text})`, numbersIn(range.values).length);
}

export function sumOf(...ranges: readonly CellRange[]): Expression {
  return closed(`SUM(${ranges.map((range) => range.text).join(',')})`, added(ranges.flatMap((range) => range.values)));
}

export function lowestOf(range: CellRange): Expression {
  return closed(`MIN(${range.text})`, Math.min(...numbersIn(range.values)));
}

export function highestOf(...ranges: readonly CellRange[]): Expression {
  return closed(
    `MAX(${ranges.map((range) => range.text).join(',')})`,
    Math.max(...numbersIn(ranges.flatMap((range) => range.values))),
  );
}

/** @param place counted from 1 */
export function entryOf(range: CellRange, place: Value): Expression {
  const { text, value } = asExpression(place);
  return closed(`INDEX(${range.text},${text})`, range.values[value - 1] ?? Number.NaN);
}

/** Σ of a range's cells whose fellow in another range equals a value. */
export function sumWhere(range: CellRange, fellows: CellRange, wanted: Value): Expression {
  const { text, value } = asExpression(wanted);
  const sum = added(range.values.filter((_, k) => fellows.values[k] === value));
  return closed(`SUMIF(${fellows.text},${text},${range.text})`, sum);
}

/** Level payment at the end of each of some periods that clears a debt, as a positive amount. */
export function levelPayment(rate: Value, periods: Value, debt: Value): Expression {
  const [r = 0, n = 1, owed = 0] = valuesOf([rate, periods, debt]);
  const value = r === 0 ? owed / n : (owed * r) / -Math.expm1(-n * Math.log1p(r));
  return call('PMT', [rate, periods, negative(debt)], value);
}

function discounted(rate: number, values: readonly number[]): number {
  return added(values.map((value, k) => value * Math.exp(-(k + 1) * Math.log1p(rate))));
}

/** Present value of a range whose first cell lies one period ahead, as spreadsheets have it. */
export function presentValueOf(rate: Value, range: CellRange): Expression {
  const { text, value } = asExpression(rate);
  return closed(`NPV(${text},${range.text})`, discounted(value, range.values));
}

/** Modified internal rate per period of a range that begins now. */
export function modifiedRateOf(range: CellRange, finance: Value, reinvest: Value): Expression {
  const [paidAt = 0, laidAt = 0] = valuesOf([finance, reinvest]);
  const periods = range.values.length - 1;
  const paid = discounted(
    paidAt,
    range.values.map((value) => Math.min(0, value)),
  );
  const received = discounted(
    laidAt,
    range.values.map((value) => Math.max(0, value)),
  );
  // Both sums lie one period too early, each by its own rate.
  const ratio = (received * (1 + laidAt) ** (periods + 1)) / (0 - paid * (1 + paidAt));
  return closed(
    `MIRR(${range.text},${asExpression(finance).text},${asExpression(reinvest).text})`,
    ratio ** (1 / periods) - 1,
  );
}

/**
 * Internal rate per period of a range that begins now. It is looked for by the spreadsheet; the figure kept is that of whoever
 * looked for all of them.
 */
export function internalRateOf(range: CellRange, known: number): Expression {
  return closed(`IRR(${range.text},0.01)`, known);
}
