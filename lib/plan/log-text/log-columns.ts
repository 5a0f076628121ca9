import type { NumberField } from '../../inputs/input-field.ts';
import { fieldOf } from '../../inputs/register.ts';

/** Columns of a log that hold words. */
export const TEXT_COLUMNS = ['date', 'chamber', 'product', 'note'] as const;
/** Columns that hold figures of a batch, and those of a pressure-rise test. */
export const BATCH_COLUMNS = ['wet', 'dry', 'hours', 'highestPressure'] as const;
export const TEST_COLUMNS = ['from', 'to', 'minutes'] as const;

export type TextColumn = (typeof TEXT_COLUMNS)[number];
export type BatchColumn = (typeof BATCH_COLUMNS)[number];
export type TestColumn = (typeof TEST_COLUMNS)[number];
export type FigureColumn = BatchColumn | TestColumn;
export type LogColumn = TextColumn | FigureColumn;

/** Ways in which people head the columns of their logs, in small letters. The first is the one we write. */
export const COLUMN_WORDS: Readonly<Record<LogColumn, readonly string[]>> = {
  date: ['date', 'day', 'finished', 'date finished', 'finished on'],
  chamber: ['chamber', 'chamber type', 'machine', 'dryer', 'freeze dryer', 'unit'],
  product: ['product', 'food', 'what', 'item', 'batch of'],
  wet: ['wet', 'wet weight', 'weight wet', 'weight in', 'in', 'fresh', 'fresh weight', 'wet load'],
  dry: ['dry', 'dry weight', 'weight dry', 'weight out', 'out', 'dried', 'dried weight'],
  hours: ['hours', 'time', 'drying time', 'run time', 'duration', 'drying hours', 'dry time', 'run'],
  highestPressure: ['highest pressure', 'peak pressure', 'max pressure', 'maximum pressure', 'pressure', 'peak'],
  note: ['note', 'notes', 'remark', 'remarks', 'comment', 'comments'],
  from: ['pressure at the start', 'start pressure', 'pressure start', 'first reading', 'from'],
  to: ['pressure at the end', 'end pressure', 'pressure end', 'last reading', 'to'],
  minutes: ['test minutes', 'minutes', 'test time', 'test duration', 'rise time', 'rise minutes'],
};

/** The register's row for a column of figures. */
export function columnField(column: FigureColumn): NumberField {
  const section = (TEST_COLUMNS as readonly string[]).includes(column) ? 'pressureRise' : 'loggedBatch';
  return fieldOf(`${section}.${column}`) as NumberField;
}

/** True for a column that holds a figure. */
export function isFigureColumn(column: LogColumn): column is FigureColumn {
  return !(TEXT_COLUMNS as readonly string[]).includes(column);
}
