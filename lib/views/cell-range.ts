/** A cell of the sheet by position among the shown rows and columns, from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells from where it was begun (the anchor) to where it was drawn (the head). */
export interface CellRange {
  readonly anchor: CellPlace;
  readonly head: CellPlace;
}

export interface SheetSize {
  readonly rows: number;
  readonly columns: number;
}

/** First and last row and column of a range, both included. */
export interface RangeBounds {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export function isSamePlace(a: CellPlace, b: CellPlace): boolean {
  return a.row === b.row && a.column === b.column;
}

/** A range of a single cell. */
export function singleCell(place: CellPlace): CellRange {
  return { anchor: place, head: place };
}

export function boundsOf({ anchor, head }: CellRange): RangeBounds {
  return {
    top: Math.min(anchor.row, head.row),
    left: Math.min(anchor.column, head.column),
    bottom: Math.max(anchor.row, head.row),
    right: Math.max(anchor.column, head.column),
  };
}

/** True when the place lies inside the range. */
export function rangeHolds(range: CellRange, { row, column }: CellPlace): boolean {
  const { top, left, bottom, right } = boundsOf(range);
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** Rows and columns a range spans. */
export function rangeSize(range: CellRange): SheetSize {
  const { top, left, bottom, right } = boundsOf(range);
  return { rows: bottom - top + 1, columns: right - left + 1 };
}

function within(value: number, count: number): number {
  return Math.max(0, Math.min(count - 1, value));
}

/** The range with its head moved by some rows and columns, kept on the sheet. */
export function stretchRange(range: CellRange, by: CellPlace, size: SheetSize): CellRange {
  const row = within(range.head.row + by.row, size.rows);
  const column = within(range.head.column + by.column, size.columns);
  return { anchor: range.anchor, head: { row, column } };
}

/** The range kept on a sheet that has shrunk; null when the sheet has no cell left. */
export function clampRange(range: CellRange, size: SheetSize): CellRange | null {
  if (size.rows < 1 || size.columns < 1) return null;
  const clamp = (place: CellPlace) => ({
    row: within(place.row, size.rows),
    column: within(place.column, size.columns),
  });
  return { anchor: clamp(range.anchor), head: clamp(range.head) };
}

/** The rows that any of two ranges runs across, from top to bottom. */
export function rowsTouched(a: CellRange | null, b: CellRange): readonly number[] {
  const ranges = a ? [boundsOf(a), boundsOf(b)] : [boundsOf(b)];
  const rows = ranges.flatMap(({ top, bottom }) => Array.from({ length: bottom - top + 1 }, (_, at) => top + at));
  return [...new Set(rows)].sort((first, second) => first - second);
}

/** All places of a range, row by row. */
export function placesIn(range: CellRange): CellPlace[] {
  const { top, left } = boundsOf(range);
  const { rows, columns } = rangeSize(range);
  return Array.from({ length: rows * columns }, (_, index) => ({
    row: top + Math.floor(index / columns),
    column: left + (index % columns),
  }));
}
