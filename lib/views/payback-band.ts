import type { CashBand } from '../risk/cash-band.ts';
import { quantityWithUnit, type ShownAs } from './format-quantity.ts';

/** The lowest and the highest [money]. */
export type CashSpan = readonly [low: number, high: number];

/** The band of one of the scenarios that are drawn. */
export interface BandInput extends CashBand {
  readonly scenarioId: string;
}

/** The band in a month, just before what is bought in it or just after; null where there is none. */
export function spanAt(band: BandInput | null, month: number, side: 'before' | 'after'): CashSpan | null {
  const low = band?.[side].low[month];
  const high = band?.[side].high[month];
  return low === undefined || high === undefined ? null : [low, high];
}

/** Heads of the columns that the band adds to a table. */
export function bandColumns(
  band: BandInput | null,
  lines: readonly { readonly scenarioId: string; readonly name: string }[],
): string[] {
  if (!band) return [];
  const name = lines.find((line) => line.scenarioId === band.scenarioId)?.name ?? '';
  return [`${name}, one draw in ten below`, `${name}, one in ten above`];
}

/** Its figures in a month, in the order of the columns. */
export function bandValues(band: BandInput | null, month: number): (number | null)[] {
  if (!band) return [];
  return [...(spanAt(band, month, 'after') ?? [null, null])];
}

/** The band in words. */
export function bandWords(band: BandInput, name: string, shown: ShownAs): string {
  const month = band.after.low.length - 1;
  const [low, high] = (spanAt(band, month, 'after') ?? [0, 0]).map((value) => quantityWithUnit(value, 'money', shown));
  return `The shaded band holds eight in ten draws of ${name}, each month by itself: after ${month} months they lie between ${low} and ${high}.`;
}
