import { fromBase, toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';

/** A number with thousands set apart and at most eight significant figures. */
function groupedNumber(value: number): string {
  const short = String(Number(value.toPrecision(8)));
  const [whole = '', ...decimals] = short.split('.');
  if (short.includes('e')) return short;
  return [whole.replace(/\B(?=(\d{3})+$)/g, ','), ...decimals].join('.');
}

function unitWords(unit: string, currency: string): string {
  if (unit === '1') return '';
  return unit.replace(/^money/, currency);
}

function amountWords(value: number, unit: string, currency: string): string {
  return `${groupedNumber(value)} ${unitWords(unit, currency)}`.trimEnd();
}

/** What was understood: the value as entered and, where the sheet shows another unit, in that unit too. */
export function cellWords(value: number, unit: string, dimension: Dimension, shown: string, currency: string): string {
  const entered = amountWords(value, unit, currency);
  if (unit === shown) return entered;
  const inShown = fromBase(toBase(value, dimension, unit), dimension, shown);
  return `${entered} = ${amountWords(inShown, shown, currency)}`;
}
