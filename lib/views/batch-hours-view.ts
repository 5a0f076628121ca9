import type { DryingLimit, Phase, PlantReport } from '../plant/report-types.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, formatPercent } from './format-number.ts';
import { DRYING_LIMITS, LIMIT_LABELS } from './limit-kinds.ts';
import { kindOfPhase, PHASE_KIND_LABELS, PHASE_KINDS } from './phase-kinds.ts';
import type { ScenarioView } from './scenario-view.ts';
import { HOUR } from './week-times.ts';

/** By what a batch's hours are told apart. */
export type HoursBy = 'phase' | 'limit';

export interface BatchHoursRow {
  readonly scenarioId: string;
  readonly name: string;
  readonly total: number;
  /** Hours of an average batch by key of the parts. */
  readonly hours: Readonly<Record<string, number>>;
}

export interface HoursPart {
  readonly key: string;
  readonly label: string;
}

export interface BatchHoursView {
  readonly finding: string;
  readonly summary: string;
  /** Parts that occur, in the order of stacking. */
  readonly parts: readonly HoursPart[];
  readonly rows: readonly BatchHoursRow[];
  readonly ticks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

/** Hours of an average finished batch by kind of phase; they sum to the hours per batch. */
function hoursByPhase(plant: PlantReport): Record<string, number> {
  const hours: Record<string, number> = {};
  const count = plant.batchRecords.length;
  for (const { phases } of plant.batchRecords) {
    for (const [phase, time] of Object.entries(phases) as [Phase, number][]) {
      const kind = kindOfPhase(phase);
      hours[kind] = (hours[kind] ?? 0) + time / HOUR / count;
    }
  }
  return hours;
}

/** Hours of drying of an average batch by what holds them back: the week's hours under each limit over its batches. */
function hoursByLimit(plant: PlantReport): Record<string, number> {
  const entries = Object.entries(plant.limits) as [DryingLimit, number][];
  return Object.fromEntries(
    entries.map(([limit, time]) => [limit, plant.batches > 0 ? time / HOUR / plant.batches : 0]),
  );
}

function rowOf({ id, name, result }: ScenarioView, by: HoursBy): BatchHoursRow {
  const hours = by === 'phase' ? hoursByPhase(result.plant) : hoursByLimit(result.plant);
  const total = Object.values(hours).reduce((sum, part) => sum + part, 0);
  return { scenarioId: id, name, total, hours };
}

function allParts(by: HoursBy): readonly HoursPart[] {
  return by === 'phase'
    ? PHASE_KINDS.map((key) => ({ key, label: PHASE_KIND_LABELS[key] }))
    : DRYING_LIMITS.map((key) => ({ key, label: LIMIT_LABELS[key] }));
}

function largest(row: BatchHoursRow, keys: readonly string[]): string {
  return keys.reduce((most, key) => ((row.hours[key] ?? 0) > (row.hours[most] ?? 0) ? key : most));
}

const WAITS = ['waitingForPeople', 'waitingForPump', 'waitingForFreezer', 'idle'];

function findingByPhase(row: BatchHoursRow): string {
  const all = `${formatFixed(row.total, 0)} hours`;
  const drying = (row.hours.primary ?? 0) + (row.hours.secondary ?? 0);
  const wait = largest(row, WAITS);
  const waited = row.hours[wait] ?? 0;
  const lead = `A batch takes ${all}, of which it dries ${formatPercent(drying / row.total)}`;
  if (waited / row.total < 0.01) return lead;
  const label = PHASE_KIND_LABELS[wait as keyof typeof PHASE_KIND_LABELS];
  return `${lead} and spends ${formatPercent(waited / row.total)} ${label}`;
}

function findingByLimit(row: BatchHoursRow): string {
  const limit = largest(row, DRYING_LIMITS) as DryingLimit;
  const share = formatPercent((row.hours[limit] ?? 0) / row.total);
  return `Drying is held back most by ${LIMIT_NAMES[limit]}: ${share} of its hours`;
}

const LIMIT_NAMES: Readonly<Record<DryingLimit, string>> = {
  shelfTemperature: 'the shelf programme',
  heaterPower: 'the heaters',
  frozenLimit: 'the frozen part, which may not get warmer',
  scorchLimit: 'the dried surface, which may not get hotter',
  ceilingByTrap: 'vapour over the cold trap',
  ceilingByGas: 'gas that the pump has not taken away',
  flooded: 'the air of chambers that start',
  desorption: 'the last water, which leaves slowly',
};

function findingOf(row: BatchHoursRow | undefined, by: HoursBy): string {
  if (!row || !(row.total > 0)) return 'Where a batch’s hours go';
  return by === 'phase' ? findingByPhase(row) : findingByLimit(row);
}

const SUMMARIES: Readonly<Record<HoursBy, string>> = {
  phase:
    'Mean over the batches that ended in the measured weeks, from the start of loading until the chamber is clean.',
  limit:
    'Hours of drying of an average batch by the one thing that would have to give for it to go faster. Only the pump’s gas, the trap’s vapour and the heaters are mended by buying; the rest is the food itself or its programme.',
};

function tableOf(rows: readonly BatchHoursRow[], parts: readonly HoursPart[]): DataTable {
  return {
    caption: 'Hours of an average batch [h]',
    head: ['', ...parts.map((part) => part.label), 'Total'],
    rows: rows.map((row) => [
      row.name,
      ...parts.map((part) => formatFixed(row.hours[part.key] ?? 0, 1)),
      formatFixed(row.total, 1),
    ]),
  };
}

function seriesOf(rows: readonly BatchHoursRow[], parts: readonly HoursPart[]): DataSeries {
  return {
    head: ['Scenario', ...parts.map((part) => `${part.label} [h]`), 'Total [h]'],
    rows: rows.map((row) => [row.name, ...parts.map((part) => row.hours[part.key] ?? 0), row.total]),
  };
}

/** Everything the figure "where a batch's hours go" shows. */
export function batchHoursView(views: readonly ScenarioView[], currentId: string, by: HoursBy): BatchHoursView {
  const rows = views.map((view) => rowOf(view, by));
  const parts = allParts(by).filter((part) => rows.some((row) => (row.hours[part.key] ?? 0) > 0));
  return {
    finding: findingOf(
      rows.find((row) => row.scenarioId === currentId),
      by,
    ),
    summary: SUMMARIES[by],
    parts,
    rows,
    ticks: roundTicks(0, Math.max(1, ...rows.map((row) => row.total)), 5),
    table: tableOf(rows, parts),
    series: seriesOf(rows, parts),
  };
}
