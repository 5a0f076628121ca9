import type { Dimension } from '../units/dimension.ts';
import { formatFixed } from './format-number.ts';
import { type ShownAs, shownValue, unitText, withUnit } from './format-quantity.ts';

/** Digits that mean something in an explanation: enough to do the sum again by hand. */
const SIGNIFICANT = 5;

function digitsFor(value: number, isMoney: boolean): number {
  if (Number.isInteger(value)) return 0;
  const wanted = SIGNIFICANT - 1 - Math.floor(Math.log10(Math.abs(value)));
  if (isMoney && Math.abs(value) >= 1) return 2;
  return Math.min(12, Math.max(isMoney && Math.abs(value) >= 0.01 ? 2 : 0, wanted));
}

/** A figure with its unit, in about five digits; the figure is given in the engine's unit. */
export function preciseText(value: number, dimension: Dimension, shown: ShownAs): string {
  const figure = shownValue(value, dimension, shown);
  // Values such as 0.30000000000000004 are whole to a reader.
  const rounded = Number(figure.toPrecision(12));
  return withUnit(formatFixed(rounded, digitsFor(rounded, dimension.startsWith('money'))), unitText(dimension, shown));
}
