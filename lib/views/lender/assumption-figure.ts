import type { Quantity } from '../../inputs/quantity.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { isRawObject, valueAt } from '../../plan/raw-value.ts';
import { fromBase, shownUnit, toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';
import { formatFixed, powerText, sensibleDigits } from '../format-number.ts';
import { currencySign, type ShownAs, unitSign, withUnit } from '../format-quantity.ts';

/** A value as the table of assumptions writes it, and how far it may lie off; the empty text for no range. */
export interface AssumptionFigure {
  readonly value: string;
  readonly range: string;
}

/** Money to the cent, all else in four digits at most: a converted figure is no finer than it was measured. */
function figureText(value: number, isMoney: boolean): string {
  const size = Math.abs(value);
  if (size > 0 && size < 1e-3) return powerText(Number(value.toPrecision(4)).toExponential());
  if (Number.isInteger(value)) return formatFixed(value, 0);
  if (isMoney && size >= 0.1) return formatFixed(value, 2);
  return formatFixed(value, sensibleDigits(value) + 1)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
}

/** Times and plain factors are read more easily as they were entered: 6 days and not 144 h, 1.25 and not 125 %. */
function unitFor(dimension: Dimension, entered: string, base: number, { system }: ShownAs): string {
  if (dimension === 'time' || entered === '1') return entered;
  const unit = shownUnit(dimension, system);
  const size = Math.abs(fromBase(base, dimension, unit));
  return size > 0 && size < 1e-3 ? entered : unit;
}

/** A figure in one unit with that unit behind it, and without it but for a sign of money before it. */
function writerIn(unit: string, dimension: Dimension, { currency }: ShownAs) {
  const sign = unitSign(unit, currency);
  const money = currencySign(currency);
  const figure = (value: number) => figureText(Number(value.toPrecision(12)), dimension.startsWith('money'));
  return {
    whole: (value: number) => withUnit(figure(value), value === 1 && dimension === 'time' ? unit : sign),
    bare: (value: number) => (sign.startsWith(money) ? `${money}${figure(value)}` : figure(value)),
  };
}

/** The value at a path of the plan and its range, as a reader of papers has them. Null for what is no quantity. */
export function assumptionFigure(plan: Plan, path: string, shown: ShownAs): AssumptionFigure | null {
  const field = fieldAtPath(path);
  const raw = valueAt(plan, path.split('.'));
  if (field?.kind !== 'quantity' || !isRawObject(raw)) return null;
  const { dimension } = field;
  const { value, unit: entered, low = value, high = value } = raw as unknown as Quantity;
  const base = toBase(value, dimension, entered);
  const unit = unitFor(dimension, entered, base, shown);
  const { whole, bare } = writerIn(unit, dimension, shown);
  const converted = (given: number) => fromBase(toBase(given, dimension, entered), dimension, unit);
  const range = low === high ? '' : `${bare(converted(low))} to ${whole(converted(high))}`;
  return { value: whole(converted(value)), range };
}
