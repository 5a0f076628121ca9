import { boundsOf, type CellRange } from './cell-range.ts';
import type { ScenarioRow } from './scenario-rows.ts';
import { FLAG_COLUMN_ID } from './sheet-columns.ts';
import { writeTabSeparated } from './tab-separated.ts';

/** The text of one cell for other programs: plain figures without marks for thousands. */
export function plainCellText(row: ScenarioRow, columnId: string): string {
  if (columnId === FLAG_COLUMN_ID) return row.flag ? `${row.flag.title}: ${row.flag.figure}` : '';
  return (row.entries[columnId] ?? row.outputs[columnId])?.plainText ?? '';
}

/** A range of the sheet as clipboard text. @param columnIds columns from left to right as shown */
export function rangeText(rows: readonly ScenarioRow[], columnIds: readonly string[], range: CellRange): string {
  const { top, left, bottom, right } = boundsOf(range);
  const columns = columnIds.slice(left, right + 1);
  return writeTabSeparated(
    rows.slice(top, bottom + 1).map((row) => columns.map((columnId) => plainCellText(row, columnId))),
  );
}
