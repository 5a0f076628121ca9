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

/** The unit shown for a dimension, money in the plan's currency: "lb/week", "$/kWh", "". */
export function unitText(dimension: Dimension, shown: ShownAs): string {
  const unit = shownUnit(dimension, shown.system);
  return unit === '1' ? '' : unit.replace('money', currencySign(shown.currency));
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
  const figure = quantityText(value, dimension, shown);
  const unit = unitText(dimension, shown);
  if (!isMoney(dimension)) return unit === '' ? figure : `${figure} ${unit}`;
  const sign = currencySign(shown.currency);
  return `${figure.replace(/^(−?)/, `$1${sign.replace('$', '$$$$')}`)}${unit.slice(sign.length)}`;
}
