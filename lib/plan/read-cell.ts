import { type FieldProblem, numberProblem } from '../inputs/field-check.ts';
import type { NumberField, QuantityField } from '../inputs/input-field.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { fromBase, toBase } from '../units/convert.ts';
import { DIMENSIONS, type Dimension } from '../units/dimension.ts';
import { type CellProblem, cellProblem } from './cell/amount.ts';
import { cellWords } from './cell/cell-words.ts';
import { parseSum } from './cell/sum-parser.ts';
import { plainSigns } from './cell/unit-forms.ts';
import { shownValue } from './raw-value.ts';

/** What a cell is about. */
export interface CellContext {
  readonly dimension: Dimension;
  /** Unit in which the sheet shows the cell; a bare number is taken in it. */
  readonly shown: string;
  /** Currency code for what is said of money. */
  readonly currency: string;
}

/** What was understood of a cell. */
export interface CellReading {
  readonly value: number;
  /** The unit that was written, or the one shown when none was. */
  readonly unit: string;
  /** What was understood, such as `7 cfm = 11.893149 m³/h`. */
  readonly words: string;
}

const LONGEST = 200;

/** A number in parentheses and nothing else, as spreadsheets write what is owed. */
const OWED = /^([$€£¥]?) ?\(([^()+*/-]*)\)( ?[^()+*/-]*)$/;

/** The text without the currency code, which says no more of an amount of money than the field does. */
function withoutCode(text: string, context: CellContext): string {
  const { currency, dimension } = context;
  if (!dimension.startsWith('money') || !/^[A-Z]{3}$/.test(currency)) return text;
  return text.replace(new RegExp(`(?<![a-z])${currency}(?![a-z])`, 'gi'), '');
}

function withoutTrimmings(text: string, context: CellContext): string {
  const plain = withoutCode(plainSigns(text), context).replace(/^ ?=/, '').trim();
  const owed = OWED.exec(plain);
  return owed ? `-${owed[1]}${owed[2]}${owed[3]}` : plain;
}

/** A number with a percent sign and nothing else, in a field of amounts: 12 % of money or of hours would be taken as 0.12 of them. */
function isLoneShare(plain: string, dimension: Dimension): boolean {
  if (!/^[-+]? ?[\d.,]+ ?%$/.test(plain)) return false;
  return !DIMENSIONS[dimension].some(({ symbol }) => symbol === '' || symbol === '1' || symbol.startsWith('%'));
}

/**
 * The value of what a user typed into a cell: a number, a sum, units, `12%`, `$5`, `1,234.5`, `(1,234.5)` for a negative.
 * Never throws; a value that is not finite is a problem and not a reading.
 */
export function readCell(text: string, context: CellContext): Result<CellReading, CellProblem> {
  if (text.length > LONGEST) return cellProblem('The entry is too long.', `Keep it within ${LONGEST} characters.`);
  const plain = withoutTrimmings(text, context);
  if (plain === '') return cellProblem('The cell is empty.', 'Enter a number.');
  if (isLoneShare(plain, context.dimension)) {
    return cellProblem('A share alone is no amount here.', 'Say what it is a share of, such as 200*5%.');
  }
  const amount = parseSum(plain, context.dimension);
  if (!amount.ok) return amount;
  const { value, unit } = { value: amount.value.value, unit: amount.value.unit ?? context.shown };
  if (!Number.isFinite(value)) return cellProblem('The number is too large.', 'Enter a smaller number.');
  return succeed({ value, unit, words: cellWords(value, unit, context.dimension, context.shown, context.currency) });
}

/** How a cell of the register is shown, and where it stands in the plan. */
export interface FieldCell {
  readonly field: QuantityField | NumberField;
  /** Path in the plan, for findings. */
  readonly path: string;
  readonly shown: string;
  readonly currency: string;
}

function inFieldUnit(field: QuantityField | NumberField, reading: CellReading): CellReading {
  if (field.kind === 'quantity' || reading.unit === field.unit) return reading;
  const value = fromBase(toBase(reading.value, field.dimension, reading.unit), field.dimension, field.unit);
  return { ...reading, value, unit: field.unit };
}

/**
 * The value typed into a cell of the register, checked against its range. Null when the cell was emptied and may be empty.
 * Bare numbers of the plan, such as purchase months, come back in the row's own unit.
 */
export function readFieldCell(text: string, cell: FieldCell): Result<CellReading | null, Finding> {
  const { field, path, shown, currency } = cell;
  if (text.trim() === '' && field.nullable) return succeed(null);
  const refuse = ({ problem, remedy }: CellProblem | FieldProblem): Result<never, Finding> =>
    fail({ severity: 'error', field: path, value: shownValue(text), problem, remedy });
  const reading = readCell(text, { dimension: field.dimension, shown, currency });
  if (!reading.ok) return refuse(reading.error);
  const outside = numberProblem(field, reading.value.value, reading.value.unit);
  return outside ? refuse(outside) : succeed(inFieldUnit(field, reading.value));
}
