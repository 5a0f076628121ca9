import type { BatchUse, Calibration, ComparedBatch } from '../../insight/calibration/calibration.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { roundTicks } from '../chart-scale.ts';
import type { DataTable } from '../data-table.ts';
import { formatPercent, formatSensible, NONE } from '../format-number.ts';

/** One batch of the chart [h]. */
export interface ComparedPoint {
  readonly id: string;
  readonly words: string;
  readonly measured: number;
  readonly before: number;
  readonly after: number;
  readonly isOdd: boolean;
  /** Where it is drawn along the logged hours: a batch far out stands at the edge, so that the others are not squeezed together. */
  readonly place: number;
  /** What is written beside one at the edge; empty for all others. */
  readonly edgeWords: string;
}

/** The batches of one product. */
export interface ComparedGroup {
  readonly product: string;
  readonly name: string;
  readonly points: readonly ComparedPoint[];
}

export interface ComparedView {
  readonly finding: string;
  readonly summary: string;
  readonly groups: readonly ComparedGroup[];
  /** Round marks of both axes [h]. */
  readonly ticks: readonly number[];
  readonly table: DataTable;
}

/** Misses that differ by less than this are the same. */
const SAME = 0.01;

const SECONDS = 3600;

function findingOf({ miss }: Calibration): string {
  if (!miss) return 'No logged batch can be compared with the model yet';
  const [before, after] = [formatPercent(miss.before), formatPercent(miss.after)];
  if (miss.before - miss.after < SAME) return `The model agrees with the log within ${before} as it is`;
  return `The plan misses logged hours by ${before}; with fitted values it is ${after}`;
}

function pointOf(batch: ComparedBatch, name: string, edge: number): ComparedPoint[] {
  const { id, date, time, before, after, use } = batch;
  if (before === null || after === null) return [];
  const measured = time / SECONDS;
  return [
    {
      id,
      words: `${name}, ${date}`,
      measured,
      before: before / SECONDS,
      after: after / SECONDS,
      isOdd: use === 'odd',
      place: Math.min(measured, edge),
      edgeWords: measured > edge ? `${Number(measured.toPrecision(3))} h →` : '',
    },
  ];
}

/** Round marks of both axes [h]: all that had a say, and all that is expected. */
function ticksOf(batches: readonly ComparedBatch[]): number[] {
  const hours = batches.flatMap(({ time, before, after, use }) => [
    ...(use === 'odd' ? [] : [time]),
    before ?? 0,
    after ?? 0,
  ]);
  return roundTicks(0, Math.max(SECONDS, ...hours) / SECONDS, 6);
}

function groupsOf(plan: Plan, batches: readonly ComparedBatch[], edge: number): ComparedGroup[] {
  return plan.products.flatMap(({ id, name }) => {
    const points = batches.filter(({ product }) => product === id).flatMap((batch) => pointOf(batch, name, edge));
    return points.length === 0 ? [] : [{ product: id, name, points }];
  });
}

const USE_WORDS: Readonly<Record<BatchUse, string>> = {
  fitted: 'yes',
  odd: 'no, far out',
  neverDry: 'no, never dry in the model',
  loadOutOfRange: 'no, load out of range',
};

function hoursText(seconds: number | null): string {
  return seconds === null ? NONE : formatSensible(seconds / SECONDS);
}

function tableOf(plan: Plan, batches: readonly ComparedBatch[]): DataTable {
  const names = new Map(plan.products.map(({ id, name }) => [id, name]));
  return {
    caption: 'Logged and expected hours of every batch [h]',
    head: ['Batch', 'Logged', 'Plan as it is', 'With fitted values', 'Had a say'],
    rows: batches.map((batch, k) => [
      `${k + 1}. ${names.get(batch.product) ?? batch.product}, ${batch.date}`,
      hoursText(batch.time),
      hoursText(batch.before),
      hoursText(batch.after),
      USE_WORDS[batch.use],
    ]),
  };
}

/** Logged against expected hours, before and after the fit. */
export function comparedView(plan: Plan, calibration: Calibration): ComparedView {
  const { batches, scatter } = calibration;
  const ticks = ticksOf(batches);
  const groups = groupsOf(plan, batches, ticks.at(-1) ?? 1);
  const isAnyAtEdge = groups.some(({ points }) => points.some(({ edgeWords }) => edgeWords !== ''));
  const atEdge = isAnyAtEdge ? ' A batch far out stands at the edge, with its hours beside it.' : '';
  const summary = `Every mark is a batch; on the line the model agrees with the log. Pale rings are the plan as it is, full marks are with fitted values.${atEdge} Like batches differ by about ${formatPercent(scatter)} from one to the next, which no value explains.`;
  return {
    finding: findingOf(calibration),
    summary,
    groups,
    ticks,
    table: tableOf(plan, batches),
  };
}
