import { type Finding, fail, type Result, succeed } from '../../result.ts';
import type { CellProblem } from '../cell/amount.ts';
import { LIMITS } from '../limits.ts';
import type { LogEntry, Plan } from '../plan-types.ts';
import { readFieldCell } from '../read-cell.ts';
import { logEntryFindings } from '../rules/log-rule.ts';
import { type DecimalStyle, withPoint } from './decimal-style.ts';
import { withoutGuard } from './formula-guard.ts';
import { BATCH_COLUMNS, columnField, type FigureColumn, type LogColumn, TEST_COLUMNS } from './log-columns.ts';
import { findNamed, nearestNamed } from './nearest-name.ts';
import { type DateOrder, readDate } from './read-date.ts';
import type { HeadColumn } from './read-header.ts';

/** How the rows of one table are to be read. */
export interface RowReading {
  readonly plan: Plan;
  readonly columns: readonly HeadColumn[];
  readonly dateOrder: DateOrder;
  readonly decimals: DecimalStyle;
  /** The chamber type of rows that name none; null when the plan has several. */
  readonly onlyChamber: string | null;
}

/** What is wrong with one cell of a row. */
export interface CellFault {
  /** The column's head as it stands in the text, or what is missing. */
  readonly column: string;
  readonly value: string;
  readonly problem: string;
  readonly remedy: string;
}

/** A log entry that has no id yet. */
export type UnnamedEntry = LogEntry extends infer Entry ? (Entry extends unknown ? Omit<Entry, 'id'> : never) : never;

type RowResult = Result<UnnamedEntry, readonly CellFault[]>;

interface Row {
  readonly reading: RowReading;
  readonly cells: readonly string[];
  readonly faults: CellFault[];
}

function headOf({ reading }: Row, column: LogColumn): HeadColumn | undefined {
  return reading.columns.find((candidate) => candidate.column === column);
}

function textOf(row: Row, column: LogColumn): string {
  const head = headOf(row, column);
  return head ? withoutGuard(row.cells[head.place] ?? '') : '';
}

const LONGEST_SHOWN = 40;

function blame(row: Row, column: LogColumn, { problem, remedy }: CellProblem): null {
  const text = textOf(row, column);
  const value = text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
  row.faults.push({ column: headOf(row, column)?.head ?? column, value, problem, remedy });
  return null;
}

function take<Value>(row: Row, column: LogColumn, result: Result<Value, CellProblem>): Value | null {
  return result.ok ? result.value : blame(row, column, result.error);
}

function itemNamed(
  row: Row,
  column: 'chamber' | 'product',
  items: readonly { readonly id: string; readonly name: string }[],
): string | null {
  const noun = column === 'chamber' ? 'chamber type' : 'product';
  const text = textOf(row, column);
  if (text === '') return blame(row, column, { problem: `The ${noun} is missing.`, remedy: `Name the ${noun}.` });
  const found = findNamed(items, text);
  if (found) return found.id;
  const near = nearestNamed(items, text);
  const remedy = near
    ? `Did you mean "${near.name}"? Write it that way, or add this one to the plan first.`
    : `Add it to the plan first, or write one of: ${items
        .map((item) => item.name)
        .slice(0, 6)
        .join(', ')}.`;
  return blame(row, column, { problem: `The plan has no ${noun} of this name.`, remedy });
}

function chamberOf(row: Row): string | null {
  const { onlyChamber, plan } = row.reading;
  return textOf(row, 'chamber') === '' && onlyChamber !== null ? onlyChamber : itemNamed(row, 'chamber', plan.chambers);
}

/** 26:30 is a way to write twenty-six and a half hours. */
function withoutColon(text: string, head: HeadColumn): string {
  const clock = /^(\d{1,4}):([0-5]\d)(?::[0-5]\d)?$/.exec(text);
  if (!clock || head.column !== 'hours') return text;
  return `${Number(clock[1]) + Number(clock[2]) / 60} h`;
}

function figureOf(row: Row, column: FigureColumn): number | null {
  const head = headOf(row, column);
  const text = textOf(row, column);
  const field = columnField(column);
  if (!head || text === '') {
    if (!field.nullable) blame(row, column, { problem: `${field.label} is missing.`, remedy: 'Fill it in.' });
    return null;
  }
  const pointed = withPoint(withoutColon(text, head), row.reading.decimals);
  if (pointed === null) {
    const [whole = '', part = ''] = text.split(',');
    const remedy = `Write ${whole}${part} or ${whole}.${part}.`;
    return blame(row, column, { problem: 'The comma may stand for thousands or for decimals.', remedy });
  }
  const read = readFieldCell(pointed, {
    field,
    path: column,
    shown: head.unit,
    currency: row.reading.plan.site.currency,
  });
  return take(row, column, read.ok ? succeed(read.value ? tidy(read.value.value) : null) : fail(read.error));
}

/** A figure brought over from another unit, without the digits nobody weighed. */
function tidy(value: number): number {
  return Number(value.toPrecision(7));
}

function dateOf(row: Row): string | null {
  return take(row, 'date', readDate(textOf(row, 'date'), row.reading.dateOrder));
}

function noteOf(row: Row): string {
  return textOf(row, 'note').slice(0, LIMITS.note);
}

function isTest(row: Row): boolean {
  const filled = (column: LogColumn) => textOf(row, column) !== '';
  return TEST_COLUMNS.some(filled) && !BATCH_COLUMNS.some(filled);
}

function finish(row: Row, entry: Record<string, unknown>): RowResult {
  if (row.faults.length > 0) return fail(row.faults);
  const made = entry as unknown as UnnamedEntry;
  const wrong = logEntryFindings({ ...made, id: 'new' } as LogEntry, '').map(
    ({ field, value, problem, remedy }: Finding): CellFault => ({
      column: headOf(row, field.slice(1) as LogColumn)?.head ?? field,
      value,
      problem,
      remedy,
    }),
  );
  return wrong.length > 0 ? fail(wrong) : succeed(made);
}

/** The entry a row stands for, or everything that is wrong with it. A row with readings of a test and no batch is a test. */
export function readLogRow(cells: readonly string[], reading: RowReading): RowResult {
  const row: Row = { reading, cells, faults: [] };
  if (cells.length > Math.max(...reading.columns.map(({ place }) => place)) + 40) {
    blame(row, 'note', {
      problem: 'The row has far more cells than the first line.',
      remedy: 'Check its separators and quotation marks.',
    });
    return fail(row.faults);
  }
  const date = dateOf(row);
  const chamber = chamberOf(row);
  const note = noteOf(row);
  if (isTest(row)) {
    const [from, to, minutes] = TEST_COLUMNS.map((column) => figureOf(row, column));
    return finish(row, { kind: 'pressureRise', date, chamber, from, to, minutes, note });
  }
  const product = itemNamed(row, 'product', reading.plan.products);
  const [wet, dry, hours, highestPressure] = BATCH_COLUMNS.map((column) => figureOf(row, column));
  return finish(row, { kind: 'batch', date, chamber, product, wet, dry, hours, highestPressure, note });
}
