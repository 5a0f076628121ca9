import { type FilteredCell, passesFilter } from './row-filter.ts';
import type { ScenarioRow } from './scenario-rows.ts';
import { FLAG_COLUMN_ID } from './sheet-columns.ts';
import type { ColumnSort, SheetLook } from './sheet-look.ts';

const NOTHING: FilteredCell = { text: '', plainText: '' };
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** What a cell shows of a row, whatever its column; a flag in words. */
export function shownCell(row: ScenarioRow, columnId: string): FilteredCell {
  if (columnId !== FLAG_COLUMN_ID) return row.entries[columnId] ?? row.outputs[columnId] ?? NOTHING;
  const words = row.flag ? `${row.flag.title}: ${row.flag.figure}` : '';
  return { text: words, plainText: words };
}

function passes(row: ScenarioRow, filters: SheetLook['filters']): boolean {
  return Object.entries(filters).every(([columnId, filter]) => passesFilter(shownCell(row, columnId), filter));
}

function compareTexts(a: string, b: string): number {
  const [left, right] = [Number(a), Number(b)];
  return Number.isNaN(left) || Number.isNaN(right) ? collator.compare(a, b) : left - right;
}

/** Empty cells come last whichever way the others go. */
function compareRows(a: ScenarioRow, b: ScenarioRow, { columnId, way }: ColumnSort): number {
  const [left, right] = [shownCell(a, columnId).plainText, shownCell(b, columnId).plainText];
  if (left === '' || right === '') return Number(left === '') - Number(right === '');
  return way === 'rising' ? compareTexts(left, right) : compareTexts(right, left);
}

/**
 * The rows to be seen, filtered and sorted. Today stays on top, as all others are judged against it; rows that compare alike
 * keep the order of the plan.
 */
export function shownRows(rows: readonly ScenarioRow[], { sort, filters }: SheetLook): readonly ScenarioRow[] {
  if (!sort && Object.keys(filters).length === 0) return rows;
  const [today, ...others] = rows;
  const passing = others.filter((row) => passes(row, filters));
  const sorted = sort ? passing.toSorted((a, b) => compareRows(a, b, sort)) : passing;
  return today ? [today, ...sorted] : [];
}
