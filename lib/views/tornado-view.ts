import { fieldAtPath } from '../plan/field-at-path.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { Tornado, TornadoBar } from '../risk/tornado.ts';
import { toBase } from '../units/convert.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, NONE } from './format-number.ts';
import { axisMoney, quantityWithUnit, type ShownAs } from './format-quantity.ts';
import { inputNote } from './input-note.ts';
import { findPath } from './uncertain-path.ts';

/** Figures of which a tornado is drawn. */
export type TornadoMeasure = 'netPresentValue' | 'contribution' | 'lowestCover';

export const TORNADO_LABELS: Readonly<Record<TornadoMeasure, string>> = {
  netPresentValue: 'Net present value',
  contribution: 'Left over a week',
  lowestCover: 'Lowest DSCR',
};

export interface TornadoRow {
  readonly key: string;
  readonly label: string;
  /** The figure with the input low and high; the likely figure where there is none. */
  readonly low: number;
  readonly high: number;
  readonly lowInput: string;
  readonly highInput: string;
  readonly lowText: string;
  readonly highText: string;
}

export interface TornadoView {
  readonly finding: string;
  readonly summary: string;
  readonly likely: number;
  /** Widest first. */
  readonly rows: readonly TornadoRow[];
  readonly ticks: readonly number[];
  readonly axisText: (value: number) => string;
  readonly table: DataTable;
  readonly series: DataSeries;
}

/** More bars than this tell no more. */
const MOST_BARS = 12;

function figure(value: number | null, measure: TornadoMeasure, shown: ShownAs): string {
  if (value === null) return NONE;
  return measure === 'lowestCover' ? formatFixed(value, 2) : quantityWithUnit(value, 'money', shown);
}

function inputText(bar: TornadoBar, value: number, shown: ShownAs): string {
  const field = fieldAtPath(bar.input.path);
  if (!field || !('dimension' in field)) return String(value);
  return quantityWithUnit(toBase(value, field.dimension, bar.input.unit), field.dimension, shown);
}

/** What an input is called: its label, and whose it is. The plan may have been put in another order since it was drawn. */
function labelOf(plan: Plan, bar: TornadoBar, shown: ShownAs): string {
  const path = findPath(plan, bar.input.key);
  if (path === null) return bar.input.fieldId;
  const note = inputNote(plan, path, shown);
  return note.thing === '' ? note.label : `${note.label}: ${note.thing}`;
}

function rowOf(plan: Plan, bar: TornadoBar, likely: number, measure: TornadoMeasure, shown: ShownAs): TornadoRow {
  const { low, high } = bar.input.points;
  return {
    key: bar.input.key,
    label: labelOf(plan, bar, shown),
    low: bar.atLow ?? likely,
    high: bar.atHigh ?? likely,
    lowInput: inputText(bar, low, shown),
    highInput: inputText(bar, high, shown),
    lowText: figure(bar.atLow, measure, shown),
    highText: figure(bar.atHigh, measure, shown),
  };
}

function findingOf(rows: readonly TornadoRow[], measure: TornadoMeasure): string {
  const [first] = rows;
  const name = TORNADO_LABELS[measure].replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
  if (!first) return `No uncertain input moves the ${name}`;
  return `The ${name} hangs most on ${first.label}: ${first.lowText} at its low, ${first.highText} at its high`;
}

function tableOf(rows: readonly TornadoRow[], measure: TornadoMeasure): DataTable {
  return {
    caption: `${TORNADO_LABELS[measure]} with one input at its low or its high, all others likely`,
    head: ['', 'Low', 'which gives', 'High', 'and that gives'],
    rows: rows.map((row) => [row.label, row.lowInput, row.lowText, row.highInput, row.highText]),
  };
}

function seriesOf(plan: Plan, tornado: Tornado, measure: TornadoMeasure, shown: ShownAs): DataSeries {
  const unit = measure === 'lowestCover' ? '' : ` [${shown.currency}]`;
  const name = `${TORNADO_LABELS[measure]}${unit}`;
  return {
    head: ['Input', 'Unit', 'Low', 'Likely', 'High', `${name} at low`, `${name} at high`],
    rows: tornado.bars.map((bar) => {
      const { low, likely, high } = bar.input.points;
      return [labelOf(plan, bar, shown), bar.input.unit, low, likely, high, bar.atLow, bar.atHigh];
    }),
  };
}

/** Everything the figure "what moves the answer" shows; null where the scenario has no such figure. */
export function tornadoView(plan: Plan, tornado: Tornado, measure: TornadoMeasure, shown: ShownAs): TornadoView | null {
  const { likely } = tornado;
  if (likely === null) return null;
  const moving = tornado.bars.filter((bar) => bar.swing > 1e-9 * Math.abs(likely));
  const rows = moving.slice(0, MOST_BARS).map((bar) => rowOf(plan, bar, likely, measure, shown));
  const ends = rows.flatMap((row) => [row.low, row.high]);
  const more = moving.length - rows.length;
  const left = more > 0 ? ` ${more} that move it less are left out of the picture and stand in the saved table.` : '';
  return {
    finding: findingOf(rows, measure),
    summary: `Each bar is one uncertain input taken to its low and to its high, all others as likely as they are: ${figure(likely, measure, shown)}.${left} Inputs without a range do not show here; give the guesses a low and a high.`,
    likely,
    rows,
    ticks: roundTicks(Math.min(likely, ...ends), Math.max(likely, ...ends), 5),
    axisText: (value) => (measure === 'lowestCover' ? formatFixed(value, 2) : axisMoney(value, shown)),
    table: tableOf(rows, measure),
    series: seriesOf(plan, tornado, measure, shown),
  };
}
