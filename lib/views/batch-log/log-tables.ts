import { BATCH_COLUMNS, columnField, type FigureColumn, TEST_COLUMNS } from '../../plan/log-text/log-columns.ts';
import type { LogEntry, Plan } from '../../plan/plan-types.ts';
import { logFigure, logUnit } from './log-figure.ts';

/** One figure of a logged entry with the words of its column, so that a narrow screen can show both together. */
export interface LogCell {
  readonly column: FigureColumn;
  readonly head: string;
  readonly text: string;
}

/** One entry of the log as it is shown. */
export interface LogRow {
  readonly id: string;
  readonly date: string;
  /** Product of a batch, or the chamber of a test. */
  readonly what: string;
  readonly chamber: string;
  readonly cells: readonly LogCell[];
  readonly note: string;
  /** Words for buttons that act on it, such as "Sweetcorn of 2026-09-07". */
  readonly words: string;
}

export interface LogTable {
  readonly heads: readonly { readonly column: FigureColumn; readonly words: string }[];
  /** Latest first. */
  readonly rows: readonly LogRow[];
}

function headWords(column: FigureColumn, plan: Plan): string {
  const unit = logUnit(column, plan.site.unitSystem);
  const { label } = columnField(column);
  return label.toLowerCase() === 'hours' ? label : `${label}, ${unit}`;
}

function rowOf(entry: LogEntry, plan: Plan, heads: LogTable['heads']): LogRow {
  const values = entry as unknown as Readonly<Record<string, number | null>>;
  const chamber = plan.chambers.find(({ id }) => id === entry.chamber)?.name ?? entry.chamber;
  const product = entry.kind === 'batch' ? plan.products.find(({ id }) => id === entry.product) : undefined;
  const what = product?.name ?? chamber;
  const cells = heads.map(({ column, words }) => ({
    column,
    head: words,
    text: logFigure(values[column] ?? null, column, plan.site.unitSystem),
  }));
  return { id: entry.id, date: entry.date, what, chamber, cells, note: entry.note, words: `${what} of ${entry.date}` };
}

function tableOf(plan: Plan, kind: LogEntry['kind'], columns: readonly FigureColumn[]): LogTable {
  const heads = columns.map((column) => ({ column, words: headWords(column, plan) }));
  const entries = plan.batchLog.filter((entry) => entry.kind === kind);
  // Entries of one day stay in the order in which they were written.
  const latestFirst = [...entries].reverse().sort((a, b) => b.date.localeCompare(a.date));
  return { heads, rows: latestFirst.map((entry) => rowOf(entry, plan, heads)) };
}

/** The batches of the log as a table. */
export function batchTable(plan: Plan): LogTable {
  return tableOf(plan, 'batch', BATCH_COLUMNS);
}

/** The pressure-rise tests of the log as a table. */
export function testTable(plan: Plan): LogTable {
  return tableOf(plan, 'pressureRise', TEST_COLUMNS);
}
