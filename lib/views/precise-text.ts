import type { Dimension } from '../units/dimension.ts';
import { formatFixed } from './format-number.ts';
import { type ShownAs, shownValue, unitText, withUnit } from './format-quantity.ts';

/** Digits that mean something in an explanation: enough to do the sum again by hand. */
const SIGNIFICANT = 5;

/** Decimals of a figure, ends of mere zeros left out; of money at least two. */
function digitsFor(value: number, isMoney: boolean): number {
  if (Number.isInteger(value)) return 0;
  if (isMoney && Math.abs(value) >= 1) return 2;
  const most = Math.min(12, Math.max(0, SIGNIFICANT - 1 - Math.floor(Math.log10(Math.abs(value)))));
  const decimals = value.toFixed(most).replace(/0+$/, '').split('.')[1]?.length ?? 0;
  return Math.max(decimals, isMoney && Math.abs(value) >= 0.01 ? 2 : 0);
}

/** A figure with its unit, in about five digits; the figure is given in the engine's unit. */
export function preciseText(value: number, dimension: Dimension, shown: ShownAs): string {
  const figure = shownValue(value, dimension, shown);
  // Values such as 0.30000000000000004 are whole to a reader.
  const rounded = Number(figure.toPrecision(12));
  return withUnit(formatFixed(rounded, digitsFor(rounded, dimension.startsWith('money'))), unitText(dimension, shown));
}
