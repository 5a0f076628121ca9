import type { DrawMeasure } from '../risk/draw-measure.ts';
import type { DrawSummary } from '../risk/draw-summary.ts';
import type { DrawOutcome } from '../risk/evaluate-draws.ts';
import type { SampleSpread } from '../risk/sample-spread.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { countOf, formatFixed, formatPercent, NONE } from './format-number.ts';
import { axisMoney, quantityWithUnit, type ShownAs } from './format-quantity.ts';
import { histogram } from './histogram.ts';
import { paybackMonthNumber } from './payback-view.ts';

/** Figures whose spread is drawn. */
export type SpreadMeasure = Extract<DrawMeasure, 'payback' | 'netPresentValue' | 'lowestCover'>;

export const SPREAD_LABELS: Readonly<Record<SpreadMeasure, string>> = {
  payback: 'Payback',
  netPresentValue: 'Net present value',
  lowestCover: 'Lowest DSCR',
};

/** What many draws brought, as it comes from the engine. */
export interface SpreadInput {
  readonly summary: DrawSummary;
  readonly outcomes: readonly DrawOutcome[];
  readonly dscrLine: number;
  readonly inputs: number;
}

export interface SpreadBar {
  readonly key: string;
  /** What the bar stands for, for the axis and the tip. */
  readonly label: string;
  readonly axis: string;
  readonly count: number;
  readonly share: number;
  /** Below the lender's line, below zero, or not paid back. */
  readonly isBad: boolean;
}

export interface SpreadView {
  readonly finding: string;
  readonly summary: string;
  readonly axisName: string;
  readonly bars: readonly SpreadBar[];
  /** Round marks of the axis of shares [–]. */
  readonly shareTicks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

const BINS = 14;

type Computed = Extract<DrawOutcome, { kind: 'computed' }>;

function computedOf(outcomes: readonly DrawOutcome[]): Computed[] {
  return outcomes.filter((outcome) => outcome.kind === 'computed');
}

/** Value of each draw that has the figure; a payback beyond the horizon is null. */
function valuesOf(outcomes: readonly DrawOutcome[], measure: SpreadMeasure): (number | null)[] {
  return computedOf(outcomes).flatMap((outcome) => {
    if (measure === 'lowestCover') return outcome.lowestCover === null ? [] : [outcome.lowestCover];
    return outcome.versusToday ? [outcome.versusToday[measure]] : [];
  });
}

/** A figure as it stands under a bar. */
function axisText(value: number, measure: SpreadMeasure, shown: ShownAs): string {
  if (measure === 'netPresentValue') return axisMoney(value, shown);
  return String(Number(value.toPrecision(6)));
}

/** Mark under a bar: both of its ends, but of money, which is long, the lower one. */
function edgeText(from: number, to: number, measure: SpreadMeasure, shown: ShownAs): string {
  const low = axisText(from, measure, shown);
  return measure === 'netPresentValue' ? low : `${low}–${axisText(to, measure, shown)}`;
}

function figure(value: number | null, measure: SpreadMeasure, shown: ShownAs): string {
  if (value === null) return measure === 'payback' ? 'later' : NONE;
  if (measure === 'netPresentValue') return quantityWithUnit(value, 'money', shown);
  return measure === 'payback' ? `${formatFixed(value, 1)} months` : formatFixed(value, 2);
}

function isBadBin(to: number, measure: SpreadMeasure, line: number): boolean {
  if (measure === 'payback') return false;
  return to <= (measure === 'lowestCover' ? line : 0) + 1e-9;
}

function barsOf(input: SpreadInput, measure: SpreadMeasure, shown: ShownAs): SpreadBar[] {
  const values = valuesOf(input.outcomes, measure);
  const known = values.filter((value) => value !== null);
  const bars = histogram(known, BINS).map(({ from, to, count }) => ({
    key: String(from),
    label: `${axisText(from, measure, shown)} to ${axisText(to, measure, shown)}`,
    axis: edgeText(from, to, measure, shown),
    count,
    share: count / values.length,
    isBad: isBadBin(to, measure, input.dscrLine),
  }));
  const later = values.length - known.length;
  if (later === 0) return bars;
  const last = { key: 'later', label: 'not within the horizon', axis: 'later', count: later };
  return [...bars, { ...last, share: later / values.length, isBad: true }];
}

function inTen(spread: SampleSpread | null, measure: SpreadMeasure, shown: ShownAs): string {
  if (!spread) return '';
  return `Eight draws in ten lie from ${figure(spread.p10, measure, shown)} to ${figure(spread.p90, measure, shown)}.`;
}

function paybackFinding({ summary }: SpreadInput): string {
  const { payback } = summary.spreads;
  const late = summary.laterThanHorizon ?? 0;
  if (!payback) return 'There is no payback to spread: nothing is weighed against today';
  if (late > 0.5) return `In ${formatPercent(late)} of the draws it has not paid back within the horizon`;
  const tail = late > 0 ? `, and in ${formatPercent(late)} of the draws not within the horizon` : '';
  const middle = payback.p50 === null ? 'later' : `by month ${paybackMonthNumber(payback.p50)}`;
  return `Half of the draws have paid back ${middle}${tail}`;
}

function valueFinding(input: SpreadInput, shown: ShownAs): string {
  const spread = input.summary.spreads.netPresentValue;
  const values = valuesOf(input.outcomes, 'netPresentValue').filter((value) => value !== null);
  if (!spread || values.length === 0) return 'There is no net present value to spread';
  const losses = values.filter((value) => value < 0).length / values.length;
  const chance = losses === 0 ? 'no draw makes it a loss' : `${formatPercent(losses)} of the draws make it a loss`;
  return `Worth ${figure(spread.p50, 'netPresentValue', shown)} in the middle of all draws; ${chance}`;
}

function coverFinding({ summary, dscrLine }: SpreadInput): string {
  if (!summary.spreads.lowestCover || summary.missesLine === null) return 'There is no debt to cover';
  const line = formatFixed(dscrLine, 2);
  if (summary.missesLine === 0) return `In no draw does the DSCR fall below the lender’s ${line}`;
  return `In ${formatPercent(summary.missesLine)} of the draws the DSCR falls below the lender’s ${line}`;
}

function findingOf(input: SpreadInput, measure: SpreadMeasure, shown: ShownAs): string {
  if (measure === 'payback') return paybackFinding(input);
  return measure === 'netPresentValue' ? valueFinding(input, shown) : coverFinding(input);
}

function summaryOf(input: SpreadInput, measure: SpreadMeasure, shown: ShownAs): string {
  const { draws, refused } = input.summary;
  const lead = `${countOf(draws, 'draw')} of ${countOf(input.inputs, 'input')} that have a low or a high, each between its low and its high and most often near its likely value.`;
  const left = refused > 0 ? ` In ${countOf(refused, 'draw')} the shop could not run; they are left out.` : '';
  return `${lead} ${inTen(input.summary.spreads[measure], measure, shown)}${left} What has no range is taken as certain.`;
}

const PERCENTILES = [
  ['p5', 'One in twenty is below'],
  ['p10', 'One in ten is below'],
  ['p50', 'Half are below'],
  ['p90', 'One in ten is above'],
  ['p95', 'One in twenty is above'],
] as const;

function tableOf({ summary }: SpreadInput, shown: ShownAs): DataTable {
  const measures = (Object.keys(SPREAD_LABELS) as SpreadMeasure[]).filter((measure) => summary.spreads[measure]);
  return {
    caption: `Spread over ${summary.draws} draws`,
    head: ['', ...measures.map((measure) => SPREAD_LABELS[measure])],
    rows: PERCENTILES.map(([key, label]) => [
      label,
      ...measures.map((measure) => figure(summary.spreads[measure]?.[key] ?? null, measure, shown)),
    ]),
  };
}

function seriesOf(outcomes: readonly DrawOutcome[], shown: ShownAs): DataSeries {
  return {
    head: [
      'Draw',
      'Payback [months]',
      `Net present value [${shown.currency}]`,
      'Lowest DSCR',
      'Dried product [kg/week]',
      `Left over a week [${shown.currency}]`,
    ],
    rows: outcomes.map((outcome, k) => {
      if (outcome.kind === 'refused') return [k + 1, null, null, null, null, null];
      const { versusToday, lowestCover, dryOut, contribution } = outcome;
      return [
        k + 1,
        versusToday?.payback ?? null,
        versusToday?.netPresentValue ?? null,
        lowestCover,
        dryOut,
        contribution,
      ];
    }),
  };
}

const AXIS_NAMES: Readonly<Record<SpreadMeasure, string>> = {
  payback: 'months to payback',
  netPresentValue: 'net present value, from',
  lowestCover: 'lowest DSCR of any twelve months',
};

/** Everything the figure "spread" shows. */
export function spreadView(input: SpreadInput, measure: SpreadMeasure, shown: ShownAs): SpreadView {
  const bars = barsOf(input, measure, shown);
  return {
    finding: findingOf(input, measure, shown),
    summary: summaryOf(input, measure, shown),
    axisName: AXIS_NAMES[measure],
    bars,
    shareTicks: roundTicks(0, Math.max(0.01, ...bars.map(({ share }) => share)), 5),
    table: tableOf(input, shown),
    series: seriesOf(input.outcomes, shown),
  };
}
