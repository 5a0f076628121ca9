import type { CellPlace, CellRange, SheetSize } from './cell-range.ts';
import { dataEdge } from './data-edge.ts';
import type { SheetEnd } from './sheet-keys.ts';
import { plainTextAt, type ShownSheet, sheetSize } from './shown-sheet.ts';

/** The place at an end of the row or the sheet. */
export function placeAtEnd(end: SheetEnd, from: CellPlace, { rows, columns }: SheetSize): CellPlace {
  const last = { row: rows - 1, column: columns - 1 };
  if (end === 'rowStart') return { row: from.row, column: 0 };
  if (end === 'rowEnd') return { row: from.row, column: last.column };
  return end === 'sheetStart' ? { row: 0, column: 0 } : last;
}

/** The place at the edge of the filled cells. @param step one row or one column */
export function placeAtEdge(step: CellPlace, from: CellPlace, sheet: ShownSheet): CellPlace {
  return dataEdge(from, step, sheetSize(sheet), (place) => plainTextAt(sheet, place) !== '');
}

/** One step on; past the end of a row comes the next one, and past the last cell nothing. */
export function stepPlace(from: CellPlace, step: CellPlace, { rows, columns }: SheetSize): CellPlace {
  const at = { row: from.row + step.row, column: from.column + step.column };
  const wrapped =
    at.column >= columns
      ? { row: at.row + 1, column: 0 }
      : at.column < 0
        ? { row: at.row - 1, column: columns - 1 }
        : at;
  return wrapped.row < 0 || wrapped.row >= rows ? from : wrapped;
}

/** Whole rows, whole columns or the whole sheet, grown from a range. */
export function grownRange(range: CellRange, what: 'all' | 'row' | 'column', { rows, columns }: SheetSize): CellRange {
  const last = { row: rows - 1, column: columns - 1 };
  if (what === 'all') return { anchor: { row: 0, column: 0 }, head: last };
  return what === 'row'
    ? { anchor: { row: range.anchor.row, column: 0 }, head: { row: range.head.row, column: last.column } }
    : { anchor: { row: 0, column: range.anchor.column }, head: { row: last.row, column: range.head.column } };
}
