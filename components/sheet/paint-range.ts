import {
  boundsOf,
  type CellPlace,
  type CellRange,
  isSamePlace,
  rangeHolds,
  rowsTouched,
} from '../../lib/views/cell-range.ts';
import styles from './sheet.module.css';

/** Says where on the sheet a cell of the grid is. */
export type PlaceOf = (row: number, columnId: string) => CellPlace | null;

/** The cells on screen of some rows, each with its place. */
function cellsIn(root: Element, rows: readonly number[], placeOf: PlaceOf): (readonly [Element, CellPlace])[] {
  return rows.flatMap((row) =>
    [...root.querySelectorAll(`.ag-row[row-index="${row}"] .ag-cell`)].flatMap((cell) => {
      const place = placeOf(row, cell.getAttribute('col-id') ?? '');
      return place ? [[cell, place] as const] : [];
    }),
  );
}

/**
 * Draws a new range over the one before, straight on the cells: the grid would draw whole rows again, cells, editors and all,
 * for every step of the mouse. The grid's own rules say the same whenever it does draw a cell.
 */
export function paintRange(root: Element | null, before: CellRange | null, after: CellRange, placeOf: PlaceOf): void {
  if (!root) return;
  const { bottom, right } = boundsOf(after);
  for (const [cell, place] of cellsIn(root, rowsTouched(before, after), placeOf)) {
    cell.classList.toggle(styles.inRange ?? '', rangeHolds(after, place));
    cell.classList.toggle(styles.corner ?? '', isSamePlace(place, { row: bottom, column: right }));
  }
}

/** Shows which cells would be filled; none when `target` is null. */
export function paintFill(root: Element | null, target: CellRange | null, placeOf: PlaceOf): void {
  const mark = styles.filled ?? '';
  for (const cell of root?.querySelectorAll(`.${CSS.escape(mark)}`) ?? []) cell.classList.remove(mark);
  if (!root || !target) return;
  for (const [cell, place] of cellsIn(root, rowsTouched(null, target), placeOf)) {
    cell.classList.toggle(mark, rangeHolds(target, place));
  }
}
