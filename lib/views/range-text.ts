import { boundsOf, type CellRange } from './cell-range.ts';
import { plainTextAt, type ShownSheet } from './shown-sheet.ts';
import { writeTabSeparated } from './tab-separated.ts';

/** The cells of a range as clipboard text that other spreadsheets read. */
export function rangeText(sheet: ShownSheet, range: CellRange): string {
  const { top, left, bottom, right } = boundsOf(range);
  const rows = Array.from({ length: bottom - top + 1 }, (_, at) => top + at);
  const columns = Array.from({ length: right - left + 1 }, (_, at) => left + at);
  return writeTabSeparated(rows.map((row) => columns.map((column) => plainTextAt(sheet, { row, column }))));
}
