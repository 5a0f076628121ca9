import { boundsOf, type CellPlace, type CellRange, rangeHolds } from './cell-range.ts';

/** Cells to be filled, each from a cell of the range that was drawn out. */
export interface FillTarget {
  readonly from: CellPlace;
  readonly to: CellPlace;
}

/** How far the mouse is beyond the range: rows above (−) or below (+), columns to the left (−) or right (+). */
function beyond(range: CellRange, { row, column }: CellPlace): CellPlace {
  const { top, left, bottom, right } = boundsOf(range);
  return {
    row: row < top ? row - top : Math.max(0, row - bottom),
    column: column < left ? column - left : Math.max(0, column - right),
  };
}

/** The range drawn out to the mouse, along the way it went further; the range itself while the mouse is on it. */
export function drawnOut(range: CellRange, mouse: CellPlace): CellRange {
  const { top, left, bottom, right } = boundsOf(range);
  const far = beyond(range, mouse);
  const isDown = Math.abs(far.row) >= Math.abs(far.column);
  const [rows, columns] = isDown ? [far.row, 0] : [0, far.column];
  return {
    anchor: { row: top + Math.min(0, rows), column: left + Math.min(0, columns) },
    head: { row: bottom + Math.max(0, rows), column: right + Math.max(0, columns) },
  };
}

/** A place of the range that repeats over whatever was drawn out of it. */
function sourceOf(range: CellRange, { row, column }: CellPlace): CellPlace {
  const { top, left, bottom, right } = boundsOf(range);
  const [height, width] = [bottom - top + 1, right - left + 1];
  const wrapped = (value: number, count: number) => ((value % count) + count) % count;
  return { row: top + wrapped(row - top, height), column: left + wrapped(column - left, width) };
}

/** The cells that a range fills when it is drawn out to the mouse: its cells repeat over them. */
export function drawnFill(range: CellRange, mouse: CellPlace): readonly FillTarget[] {
  const { top, left, bottom, right } = boundsOf(drawnOut(range, mouse));
  const targets: FillTarget[] = [];
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      const to = { row, column };
      if (!rangeHolds(range, to)) targets.push({ from: sourceOf(range, to), to });
    }
  }
  return targets;
}
