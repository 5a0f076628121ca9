import {
  boundsOf,
  type CellPlace,
  type CellRange,
  placesIn,
  type SheetSize,
  singleCell,
  stretchRange,
} from '../cell-range.ts';
import { countOf } from '../format-number.ts';
import { fillTargets, spreadBlock } from '../spread-block.ts';
import { parseTabSeparated, writeTabSeparated } from '../tab-separated.ts';
import type { FieldEntry } from './apply-fields.ts';
import type { FieldCell, FieldGrid } from './field-grid.ts';
import type { GoingAction, GridEnd } from './grid-keys.ts';

export function gridSize(grid: FieldGrid): SheetSize {
  return { rows: grid.rows.length, columns: grid.columns.length };
}

export function cellAt(grid: FieldGrid, place: CellPlace): FieldCell | undefined {
  return grid.cells[place.row]?.[place.column];
}

/** The cells of a range, row by row. */
export function cellsIn(grid: FieldGrid, range: CellRange): readonly FieldCell[] {
  return placesIn(range).flatMap((place) => cellAt(grid, place) ?? []);
}

/** All cells of a grid. */
function wholeGrid(grid: FieldGrid): CellRange {
  const { rows, columns } = gridSize(grid);
  return { anchor: { row: 0, column: 0 }, head: { row: rows - 1, column: columns - 1 } };
}

function placeAtEnd(grid: FieldGrid, end: GridEnd, row: number): CellPlace {
  const { anchor: first, head: last } = wholeGrid(grid);
  if (end === 'gridStart') return first;
  if (end === 'gridEnd') return last;
  return { row, column: end === 'rowStart' ? first.column : last.column };
}

/** What is selected after an action that only goes about the grid. */
export function rangeAfter(grid: FieldGrid, range: CellRange, action: GoingAction): CellRange {
  switch (action.kind) {
    case 'move':
      return stretchRange(singleCell(range.head), action, gridSize(grid));
    case 'stretch':
      return stretchRange(range, action, gridSize(grid));
    case 'goTo':
      return singleCell(placeAtEnd(grid, action.end, range.head.row));
    case 'selectAll':
      return wholeGrid(grid);
  }
}

/** A range of a grid as clipboard text: plain figures in the units shown. */
export function gridText(grid: FieldGrid, range: CellRange): string {
  const { top, left, bottom, right } = boundsOf(range);
  const rows = grid.cells.slice(top, bottom + 1).map((row) => row.slice(left, right + 1));
  return writeTabSeparated(rows.map((row) => row.map((cell) => cell.plainText)));
}

function entryFor(cell: FieldCell, text: string): FieldEntry {
  return { place: cell.place, look: cell.look, owner: cell.owner, text };
}

export interface PastedFields {
  readonly entries: readonly FieldEntry[];
  /** What of the block found no place; empty when all of it did. */
  readonly leftOut: string;
}

/** The entries that a pasted block means, from the top left of the range on. */
export function pastedFields(grid: FieldGrid, range: CellRange, text: string): PastedFields {
  const { cells, clipped } = spreadBlock(parseTabSeparated(text), range, gridSize(grid));
  const entries = cells.flatMap((cell) => {
    const target = cellAt(grid, cell);
    return target ? [entryFor(target, cell.text)] : [];
  });
  return { entries, leftOut: clipped > 0 ? ` ${countOf(clipped, 'cell')} fell off the sheet.` : '' };
}

/** The entries that repeat the first row (or column) of a range over the rest of it. */
export function filledFields(grid: FieldGrid, range: CellRange, way: 'down' | 'right'): readonly FieldEntry[] {
  return fillTargets(range, way).flatMap(({ from, to }) => {
    const [source, target] = [cellAt(grid, from), cellAt(grid, to)];
    return source && target ? [entryFor(target, source.plainText)] : [];
  });
}
