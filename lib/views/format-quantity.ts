import { fromBase, shownUnit } from '../units/convert.ts';
import type { Dimension, UnitSystem } from '../units/dimension.ts';
import { formatFixed, formatSensible, NONE } from './format-number.ts';

/** How the user wants figures shown. */
export interface ShownAs {
  readonly system: UnitSystem;
  /** Three-letter code, such as USD. */
  readonly currency: string;
}

/** The sign of a currency as people write it, such as "$"; the code itself where there is none. */
export function currencySign(currency: string): string {
  const parts = new Intl.NumberFormat('en-US', { style: 'currency', currency }).formatToParts(0);
  return parts.find((part) => part.type === 'currency')?.value ?? currency;
}

/** Units that are words and not signs, as they follow a figure. */
const PLURALS: Readonly<Record<string, string>> = { month: 'months', year: 'years', week: 'weeks', d: 'days' };

/** A unit symbol as people read it, money in the plan's currency: "lb/week", "$/kWh", "months", "". */
export function unitSign(unit: string, currency: string): string {
  if (unit === '1') return '';
  return PLURALS[unit] ?? unit.replace('money', currencySign(currency));
}

/** The unit shown for a dimension, money in the plan's currency: "lb/week", "$/kWh", "". */
export function unitText(dimension: Dimension, shown: ShownAs): string {
  return unitSign(shownUnit(dimension, shown.system), shown.currency);
}

function isMoney(dimension: Dimension): boolean {
  return dimension.startsWith('money');
}

function formatMoney(value: number): string {
  return formatFixed(value, Math.abs(value) < 99.995 && !Number.isInteger(value) ? 2 : 0);
}

function formatOneDecimal(value: number): string {
  return formatFixed(value, Math.abs(value) < 999.95 ? 1 : 0);
}

function formatShown(value: number, dimension: Dimension): string {
  if (isMoney(dimension)) return formatMoney(value);
  if (dimension === 'count') return formatFixed(value, Number.isInteger(value) ? 0 : 1);
  if (dimension === 'fraction') return formatFixed(value, Math.abs(value) < 9.95 ? 1 : 0);
  if (dimension === 'time' || dimension === 'months' || dimension === 'ratePerYear') return formatOneDecimal(value);
  return formatSensible(value);
}

/** Value of a quantity in the shown unit; the figure is given in the engine's unit. */
export function shownValue(value: number, dimension: Dimension, shown: ShownAs): number {
  return fromBase(value, dimension, shownUnit(dimension, shown.system));
}

/** The figure alone, for a column whose head carries the unit; "—" for none. */
export function quantityText(value: number | null, dimension: Dimension, shown: ShownAs): string {
  return value === null ? NONE : formatShown(shownValue(value, dimension, shown), dimension);
}

/** The figure with its unit, for a sentence or a tooltip: "$1,240", "61 %", "37 lb/week". */
export function quantityWithUnit(value: number | null, dimension: Dimension, shown: ShownAs): string {
  if (value === null) return NONE;
  return withUnit(quantityText(value, dimension, shown), unitText(dimension, shown));
}

/** A figure and a unit put together as people write them: "12 months", "$1,240", "−$4/lb". */
export function withUnit(figure: string, unit: string): string {
  if (unit === '') return figure;
  const [sign = '', ...rest] = unit.split('/');
  // A rate such as 1/h: "3/h".
  if (sign === '1') return [figure, ...rest].join('/');
  const isCurrency = !/^[a-z%°µ]/i.test(sign) || /^[A-Z]{3}$/.test(sign);
  if (!isCurrency) return `${figure} ${unit}`;
  const [, minus = '', digits = figure] = /^(−?)(.*)$/.exec(figure) ?? [];
  return [`${minus}${sign}${digits}`, ...rest].join('/');
}

/** Money on an axis, in few characters: "$120k", "−$4k", "$0". */
export function axisMoney(value: number, shown: ShownAs): string {
  const size = Math.abs(value);
  const figure =
    size >= 1e6
      ? `${formatSensible(size / 1e6)}M`
      : size >= 1000
        ? `${formatSensible(size / 1000)}k`
        : formatFixed(size, 0);
  const text = `${currencySign(shown.currency)}${figure.replace(/\.0+(?=[kM]$)/, '')}`;
  return value < 0 ? `−${text}` : text;
}
