import type { LogEntry, Plan } from '../plan-types.ts';
import {
  BATCH_COLUMNS,
  COLUMN_WORDS,
  columnField,
  isFigureColumn,
  type LogColumn,
  TEST_COLUMNS,
} from './log-columns.ts';
import { writeCsv } from './write-csv.ts';

const COLUMNS: readonly LogColumn[] = ['date', 'chamber', 'product', ...BATCH_COLUMNS, ...TEST_COLUMNS, 'note'];

function headOf(column: LogColumn): string {
  const words = COLUMN_WORDS[column][0] ?? column;
  if (!isFigureColumn(column)) return words;
  const { dimension, unit } = columnField(column);
  return dimension === 'time' ? words : `${words} ${unit}`;
}

function cellOf(plan: Plan, entry: LogEntry, column: LogColumn): string {
  if (column === 'chamber') return plan.chambers.find(({ id }) => id === entry.chamber)?.name ?? entry.chamber;
  if (column === 'product') {
    return entry.kind === 'batch' ? (plan.products.find(({ id }) => id === entry.product)?.name ?? entry.product) : '';
  }
  const value = (entry as unknown as Readonly<Record<string, unknown>>)[column];
  return value === null || value === undefined ? '' : String(value);
}

/** The batch log as comma-separated text that `importLog` and spreadsheets read; no cell of it is run as a formula. */
export function exportLog(plan: Plan): string {
  const rows = plan.batchLog.map((entry) => COLUMNS.map((column) => cellOf(plan, entry, column)));
  return writeCsv([COLUMNS.map(headOf), ...rows]);
}
