import { succeed } from '../../result.ts';
import { DIMENSIONS, type Dimension } from '../../units/dimension.ts';
import { type Amount, type AmountResult, addAmounts, cellProblem, divideAmounts, multiplyAmounts } from './amount.ts';
import { foreignUnitAt, unitAt } from './unit-forms.ts';

/** A text in plain signs, and how far it has been read. */
interface Cursor {
  readonly text: string;
  readonly dimension: Dimension;
  offset: number;
}

const NUMBER = /(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)(?:\.\d*)?(?:e[+-]?\d+)?|\.\d+(?:e[+-]?\d+)?/iy;
const CURRENCY = /[$€£¥]/y;
const TIMES = ['*', '/'] as const;
const PLUS = ['+', '-'] as const;

/**
 * The amount a sum comes to. The text must be in plain signs (`plainSigns`) and short, as nesting is followed by recursion.
 * Grammar: sum = product {(+|-) product}; product = signed {(*|/) signed}; signed = {+|-} value; value = (number | "(" sum ")") [unit].
 */
export function parseSum(text: string, dimension: Dimension): AmountResult {
  const cursor: Cursor = { text, dimension, offset: 0 };
  const amount = takeSum(cursor);
  if (!amount.ok) return amount;
  skipSpace(cursor);
  return cursor.offset === text.length ? amount : strayText(cursor);
}

function takeSum(cursor: Cursor): AmountResult {
  let left = takeProduct(cursor);
  for (;;) {
    if (!left.ok) return left;
    const sign = takeOneOf(cursor, PLUS);
    if (sign === undefined) return left;
    const right = takeProduct(cursor);
    if (!right.ok) return right;
    left = addAmounts(left.value, right.value, sign === '+' ? 1 : -1, cursor.dimension);
  }
}

function takeProduct(cursor: Cursor): AmountResult {
  let left = takeSigned(cursor);
  for (;;) {
    if (!left.ok) return left;
    const sign = takeOneOf(cursor, TIMES);
    if (sign === undefined) return left;
    const right = takeSigned(cursor);
    if (!right.ok) return right;
    left =
      sign === '*'
        ? multiplyAmounts(left.value, right.value)
        : divideAmounts(left.value, right.value, cursor.dimension);
  }
}

function takeSigned(cursor: Cursor): AmountResult {
  const sign = takeOneOf(cursor, PLUS);
  if (sign === undefined) return takeValue(cursor);
  const amount = takeSigned(cursor);
  if (!amount.ok || sign === '+') return amount;
  return succeed({ ...amount.value, value: -amount.value.value });
}

function takeValue(cursor: Cursor): AmountResult {
  const currency = takeCurrency(cursor);
  if (!currency.ok) return currency;
  if (takeOneOf(cursor, ['(']) === undefined) {
    const number = takeNumber(cursor);
    return number.ok ? withUnit(cursor, number.value) : number;
  }
  const inner = takeSum(cursor);
  if (!inner.ok) return inner;
  if (takeOneOf(cursor, [')']) === undefined) return missingBracket(cursor);
  return inner.value.unit === null ? withUnit(cursor, inner.value) : inner;
}

function missingBracket(cursor: Cursor): AmountResult {
  if (cursor.offset < cursor.text.length) return strayText(cursor);
  return cellProblem('A parenthesis is opened and not closed.', 'Add the closing parenthesis.');
}

function takeCurrency(cursor: Cursor): AmountResult {
  skipSpace(cursor);
  CURRENCY.lastIndex = cursor.offset;
  if (!CURRENCY.test(cursor.text)) return succeed({ value: 0, unit: null });
  if (!cursor.dimension.startsWith('money')) {
    return cellProblem('This field is not an amount of money.', 'Leave the currency sign out.');
  }
  cursor.offset += 1;
  return succeed({ value: 0, unit: null });
}

function takeNumber(cursor: Cursor): AmountResult {
  skipSpace(cursor);
  NUMBER.lastIndex = cursor.offset;
  const digits = NUMBER.exec(cursor.text)?.[0];
  if (digits === undefined) {
    if (cursor.offset < cursor.text.length) return strayText(cursor);
    return cellProblem('The entry stops where a number should follow.', 'Add the number.');
  }
  cursor.offset += digits.length;
  return succeed({ value: Number(digits.replaceAll(',', '')), unit: null });
}

function withUnit(cursor: Cursor, amount: Amount): AmountResult {
  const start = cursor.offset;
  skipSpace(cursor);
  const form = unitAt(cursor.text, cursor.offset, cursor.dimension);
  if (form) {
    cursor.offset += form.text.length;
    return succeed({ value: amount.value, unit: form.unit.symbol });
  }
  // Elsewhere a percent sign makes a plain share, so that 200*5% works in any field.
  if (cursor.text[cursor.offset] === '%') {
    cursor.offset += 1;
    return succeed({ value: amount.value / 100, unit: null });
  }
  cursor.offset = start;
  return succeed(amount);
}

function takeOneOf<Sign extends string>(cursor: Cursor, signs: readonly Sign[]): Sign | undefined {
  skipSpace(cursor);
  const sign = signs.find((candidate) => cursor.text[cursor.offset] === candidate);
  if (sign !== undefined) cursor.offset += 1;
  return sign;
}

function skipSpace(cursor: Cursor): void {
  while (cursor.text[cursor.offset] === ' ') cursor.offset += 1;
}

/** The unit of another field that stands right after a number, as its sign; in "a few" the "a" is a word and no unit. */
function misplacedUnit({ text, offset }: Cursor): string | undefined {
  const form = /[\d.)] *$/.test(text.slice(0, offset)) ? foreignUnitAt(text, offset) : undefined;
  if (!form || !/^ *(?:[-+*/)]|$)/.test(text.slice(offset + form.text.length))) return undefined;
  const { symbol } = form.unit;
  // A single letter may be meant for something else, such as the k of thousands: it is given back as it was typed.
  const isLone = symbol.length === 1 && !/°/.test(symbol);
  if (isLone) return text.slice(offset).trim().slice(0, 1);
  return symbol.startsWith('money') ? form.text : symbol;
}

/** The units that the field takes, in words. */
function unitsRemedy(dimension: Dimension): string {
  const symbols = DIMENSIONS[dimension].map(({ symbol }) => symbol.replace(/^money/, ''));
  const named = symbols.filter((symbol) => symbol !== '' && symbol !== '1');
  return named.length === 0 ? 'Leave the unit out.' : `It takes ${named.join(', ')}, or a plain number.`;
}

function strayText(cursor: Cursor): AmountResult {
  skipSpace(cursor);
  const rest = cursor.text.slice(cursor.offset);
  if (rest.startsWith(',')) {
    return cellProblem(
      'A comma only separates thousands here, such as 1,234.',
      'Write a point before decimals, such as 2.5.',
    );
  }
  const foreign = misplacedUnit(cursor);
  if (foreign) return cellProblem(`"${foreign}" is not a unit of this field.`, unitsRemedy(cursor.dimension));
  return cellProblem(
    `"${rest.slice(0, 30)}" cannot be read.`,
    'Write a number, a sum such as 3*4500+200, or a number with a unit.',
  );
}
