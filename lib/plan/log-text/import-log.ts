import { fail, type Result, succeed } from '../../result.ts';
import type { CellProblem } from '../cell/amount.ts';
import { LIMITS } from '../limits.ts';
import type { LogEntry, Plan } from '../plan-types.ts';
import { type CsvRow, readCsv } from './csv-table.ts';
import { decimalStyle } from './decimal-style.ts';
import { isFigureColumn, type LogColumn } from './log-columns.ts';
import { withLogIds } from './log-ids.ts';
import { type DateOrder, isTwoWayDate, orderEvidence } from './read-date.ts';
import { type HeadColumn, type LogHeader, readHeader } from './read-header.ts';
import { type CellFault, type RowReading, readLogRow, type UnnamedEntry } from './read-log-row.ts';
import { sameEntryKey } from './same-entry.ts';

/** A row that is left out, and why. */
export interface LeftOutRow {
  readonly line: number;
  readonly faults: readonly CellFault[];
}

/** A row whose batch or test the log has already. */
export interface KnownRow {
  readonly line: number;
  readonly entry: LogEntry;
}

/** What a text would bring into the log. */
export interface LogImport {
  readonly entries: readonly LogEntry[];
  readonly known: readonly KnownRow[];
  readonly leftOut: readonly LeftOutRow[];
  /** What was taken for granted, in words. */
  readonly notes: readonly string[];
  /** A date of the text that can be read both ways, when nothing in the text tells; null otherwise. */
  readonly twoWayDate: string | null;
  readonly dateOrder: DateOrder;
}

function cellsOf(
  rows: readonly CsvRow[],
  columns: readonly HeadColumn[],
  wanted: (column: LogColumn) => boolean,
): string[] {
  const places = columns.filter(({ column }) => wanted(column)).map(({ place }) => place);
  return rows.flatMap(({ cells }) => places.map((place) => cells[place] ?? ''));
}

interface Dates {
  readonly dateOrder: DateOrder;
  readonly twoWayDate: string | null;
}

/** The order of day and month: what the dates show, else what the user chose, else the custom that goes with the units. */
function datesOf(texts: readonly string[], plan: Plan, chosen: DateOrder | null): Dates {
  const evidence = orderEvidence(texts);
  if (evidence === 'day' || evidence === 'month') return { dateOrder: evidence, twoWayDate: null };
  const dateOrder = chosen ?? (plan.site.unitSystem === 'us' ? 'month' : 'day');
  return { dateOrder, twoWayDate: texts.find(isTwoWayDate) ?? null };
}

function headerNotes({ columns, unknown }: LogHeader, onlyChamber: string | null, plan: Plan): string[] {
  const unsaid = columns.filter(({ column, unitSaid }) => isFigureColumn(column) && !unitSaid);
  const hasChamber = columns.some(({ column }) => column === 'chamber');
  const chamber = plan.chambers.find(({ id }) => id === onlyChamber);
  return [
    ...unsaid.map(({ head, unit }) => `"${head}" says no unit, so bare figures in it are taken as ${unit}.`),
    ...unknown.map((head) => `The column "${head}" is not known and is left out.`),
    ...(hasChamber || !chamber ? [] : [`No column names the chamber, so all are taken as ${chamber.name}.`]),
  ];
}

/** The chamber type that rows without one mean: the only type of the plan, or of today's shop. */
function onlyChamber(plan: Plan): string | null {
  const today = plan.scenarios[0]?.chambers.filter(({ count }) => count > 0).map(({ chamber }) => chamber) ?? [];
  const ids = plan.chambers.length === 1 ? plan.chambers.map(({ id }) => id) : today;
  return ids.length === 1 ? (ids[0] ?? null) : null;
}

interface Sorted {
  readonly fresh: { readonly line: number; readonly entry: UnnamedEntry }[];
  readonly known: { readonly line: number; readonly entry: UnnamedEntry }[];
  readonly leftOut: LeftOutRow[];
}

/** Like batches on one day may be two chambers, so as many are known as the log has, and no more. */
function sortRows(rows: readonly CsvRow[], reading: RowReading, log: readonly LogEntry[]): Sorted {
  const counts = new Map<string, number>();
  for (const entry of log) counts.set(sameEntryKey(entry), (counts.get(sameEntryKey(entry)) ?? 0) + 1);
  const sorted: Sorted = { fresh: [], known: [], leftOut: [] };
  for (const { line, cells } of rows) {
    const read = readLogRow(cells, reading);
    if (!read.ok) {
      sorted.leftOut.push({ line, faults: read.error });
      continue;
    }
    const key = sameEntryKey(read.value);
    const left = counts.get(key) ?? 0;
    if (left > 0) counts.set(key, left - 1);
    (left > 0 ? sorted.known : sorted.fresh).push({ line, entry: read.value });
  }
  return sorted;
}

function roomNote(over: number): string[] {
  return over > 0 ? [`The log holds ${LIMITS.batchLog} entries; the last ${over} rows find no room.`] : [];
}

function missingColumns({ columns }: LogHeader): readonly string[] {
  const has = (column: LogColumn) => columns.some((one) => one.column === column);
  if (!has('date')) return ['date'];
  const isTests = has('from') && has('to') && has('minutes');
  if (isTests && !has('wet')) return [];
  const words: Partial<Record<LogColumn, string>> = {
    product: 'product',
    wet: 'wet kg',
    dry: 'dry kg',
    hours: 'hours',
  };
  return (Object.keys(words) as LogColumn[]).filter((column) => !has(column)).map((column) => words[column] ?? column);
}

/**
 * Reads a pasted or opened table of batches and pressure-rise tests against a plan. Nothing is dropped in silence: every row is
 * taken, known already, or left out with its line, its column, what is wrong and what would mend it. Never throws.
 * @param chosen order of day and month where the text itself does not tell
 */
export function importLog(text: string, plan: Plan, chosen: DateOrder | null = null): Result<LogImport, CellProblem> {
  const table = readCsv(text);
  if (!table.ok) return table;
  const [head, ...rows] = table.value.rows;
  if (!head) return fail({ problem: 'There is nothing to read.', remedy: 'Paste rows, or choose a file.' });
  const header = readHeader(head.cells, plan.site.unitSystem);
  if (!header.ok) return header;
  if (rows.length === 0) {
    return fail({
      problem: 'There is nothing below the first line.',
      remedy: 'Paste the rows under the line that names the columns.',
    });
  }
  const missing = missingColumns(header.value);
  if (missing.length > 0) {
    const list = missing.map((words) => `"${words}"`).join(', ');
    return fail({
      problem: `The first line has no column for ${list}.`,
      remedy: 'Add it, or give the column that name.',
    });
  }
  const { columns } = header.value;
  const dates = datesOf(
    cellsOf(rows, columns, (column) => column === 'date'),
    plan,
    chosen,
  );
  const decimals = decimalStyle(cellsOf(rows, columns, isFigureColumn));
  const only = onlyChamber(plan);
  const sorted = sortRows(
    rows,
    { plan, columns, dateOrder: dates.dateOrder, decimals, onlyChamber: only },
    plan.batchLog,
  );
  const room = Math.max(0, LIMITS.batchLog - plan.batchLog.length);
  const taken = sorted.fresh.slice(0, room);
  const named = withLogIds(
    [...taken, ...sorted.known].map(({ entry }) => entry),
    plan.batchLog,
  );
  return succeed({
    ...dates,
    entries: named.slice(0, taken.length),
    known: sorted.known.map(({ line }, i) => ({ line, entry: named[taken.length + i] as LogEntry })),
    leftOut: sorted.leftOut,
    notes: [...headerNotes(header.value, only, plan), ...roomNote(sorted.fresh.length - taken.length)],
  });
}
