import {
  boundsOf,
  type CellPlace,
  type CellRange,
  isSamePlace,
  placesIn,
  rangeSize,
  type SheetSize,
} from './cell-range.ts';
import type { FillTarget } from './fill-drag.ts';

/** A text meant for a cell. */
export interface CellText extends CellPlace {
  readonly text: string;
}

export interface SpreadBlock {
  readonly cells: readonly CellText[];
  /** Cells of the block that would have fallen off the sheet. */
  readonly clipped: number;
}

/** The block repeats over a range only when the range is a whole number of blocks; otherwise it is laid down once. */
function repeats(blockLength: number, rangeLength: number): number {
  return rangeLength % blockLength === 0 ? rangeLength / blockLength : 1;
}

/**
 * Where the cells of a pasted block go: from the top left of the range, repeated when the range is a whole number of
 * blocks (so a single value fills the range), cut off at the edge of the sheet.
 */
export function spreadBlock(block: readonly (readonly string[])[], range: CellRange, size: SheetSize): SpreadBlock {
  const { top, left } = boundsOf(range);
  const spanned = rangeSize(range);
  const width = Math.max(1, ...block.map((row) => row.length));
  const rows = block.length * repeats(block.length, spanned.rows);
  const columns = width * repeats(width, spanned.columns);
  const all: CellText[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const text = block[row % block.length]?.[column % width];
      if (text !== undefined) all.push({ row: top + row, column: left + column, text });
    }
  }
  const cells = all.filter((cell) => cell.row < size.rows && cell.column < size.columns);
  return { cells, clipped: all.length - cells.length };
}

/**
 * Cells to fill from the first row of a range downward, or from its first column to the right. A range of a single row (or
 * column) is filled from the one before it.
 */
export function fillTargets(range: CellRange, way: 'down' | 'right'): readonly FillTarget[] {
  const { top, left, bottom, right } = boundsOf(range);
  const from = {
    row: way === 'down' && top === bottom ? top - 1 : top,
    column: way === 'right' && left === right ? left - 1 : left,
  };
  if (from.row < 0 || from.column < 0) return [];
  return placesIn({ anchor: from, head: { row: bottom, column: right } })
    .map((to) => ({
      to,
      from: way === 'down' ? { row: from.row, column: to.column } : { row: to.row, column: from.column },
    }))
    .filter((target) => !isSamePlace(target.from, target.to));
}
