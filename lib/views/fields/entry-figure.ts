import { fromBase, toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';

/** Figures that are kept of a value as it was entered, and of one that was turned into another unit. */
const AS_ENTERED = 10;
const CONVERTED = 4;

/** A value in another unit of its dimension, as precise as it makes sense to show. */
export function convertedFigure(value: number, dimension: Dimension, from: string, to: string): number {
  if (from === to) return Number(value.toPrecision(AS_ENTERED));
  const converted = fromBase(toBase(value, dimension, from), dimension, to);
  // Whole parts are kept whole: 12,345 lb must not turn into 12,350 lb.
  const digits = Math.max(CONVERTED, Math.trunc(Math.abs(converted)).toString().length);
  return Number(converted.toPrecision(Math.min(digits, AS_ENTERED)));
}

/** A figure as it stands in an entry: all its digits, thousands marked, a true minus sign; `2e-8` when it is tiny. */
export function entryFigure(value: number): string {
  const plain = String(Math.abs(value));
  const [whole = '', decimals] = plain.split('.');
  const marked = plain.includes('e') ? plain : whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const text = decimals === undefined || plain.includes('e') ? marked : `${marked}.${decimals}`;
  return value < 0 ? `−${text}` : text;
}
