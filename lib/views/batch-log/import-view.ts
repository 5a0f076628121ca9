import type { LogImport } from '../../plan/log-text/import-log.ts';
import type { CellFault } from '../../plan/log-text/read-log-row.ts';
import type { LogEntry, Plan } from '../../plan/plan-types.ts';
import type { DataTable } from '../data-table.ts';
import { countOf } from '../format-number.ts';
import { batchTable, type LogTable, testTable } from './log-tables.ts';

/** One row that stays out, in words. */
export interface LeftOutLine {
  readonly line: number;
  readonly faults: readonly string[];
}

/** What an import would do, in words and tables. */
export interface ImportView {
  readonly summary: string;
  readonly tables: readonly DataTable[];
  readonly leftOut: readonly LeftOutLine[];
  readonly known: string;
  readonly notes: readonly string[];
}

function faultWords({ column, value, problem, remedy }: CellFault): string {
  const shown = value === '' ? '' : ` "${value}"`;
  return `${column}${shown}: ${problem} ${remedy}`;
}

function tableFor(caption: string, { heads, rows }: LogTable): DataTable[] {
  if (rows.length === 0) return [];
  return [
    {
      caption: `${caption}, latest first`,
      head: ['Date', 'What', 'Chamber', ...heads.map(({ words }) => words), 'Note'],
      rows: rows.map((row) => [row.date, row.what, row.chamber, ...row.cells.map(({ text }) => text), row.note]),
    },
  ];
}

function takenTables(plan: Plan, entries: readonly LogEntry[]): readonly DataTable[] {
  const preview = { ...plan, batchLog: entries };
  return [
    ...tableFor('Batches that will come in', batchTable(preview)),
    ...tableFor('Tests that will come in', testTable(preview)),
  ];
}

function linesWords(lines: readonly number[]): string {
  return `${lines.length === 1 ? 'line' : 'lines'} ${lines.join(', ')}`;
}

/** What will be taken from a text and what stays out and why. */
export function importView(found: LogImport, plan: Plan): ImportView {
  const { entries, known, leftOut, notes } = found;
  const parts = [
    `${countOf(entries.length, 'row')} will come in`,
    ...(known.length > 0
      ? [`${countOf(known.length, 'row')} ${known.length === 1 ? 'is' : 'are'} in the log already`]
      : []),
    ...(leftOut.length > 0 ? [`${countOf(leftOut.length, 'row')} cannot be read`] : []),
  ];
  return {
    summary: `${parts.join(', ')}.`,
    tables: takenTables(plan, entries),
    leftOut: leftOut.map(({ line, faults }) => ({ line, faults: faults.map(faultWords) })),
    known: known.length === 0 ? '' : `Known already, so left out: ${linesWords(known.map(({ line }) => line))}.`,
    notes,
  };
}
