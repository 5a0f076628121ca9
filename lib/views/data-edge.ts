import type { CellPlace, SheetSize } from './cell-range.ts';

function isOn(place: CellPlace, { rows, columns }: SheetSize): boolean {
  return place.row >= 0 && place.column >= 0 && place.row < rows && place.column < columns;
}

/**
 * Where Ctrl and an arrow lead: to the last filled cell of the stretch one stands in, or over empty cells to the next filled
 * one, or to the edge of the sheet. @param step one row or one column
 */
export function dataEdge(
  from: CellPlace,
  step: CellPlace,
  size: SheetSize,
  isFilled: (place: CellPlace) => boolean,
): CellPlace {
  const after = (place: CellPlace) => ({ row: place.row + step.row, column: place.column + step.column });
  let at = after(from);
  if (!isOn(at, size)) return from;
  const isInside = isFilled(from) && isFilled(at);
  while (isOn(after(at), size) && (isInside ? isFilled(after(at)) : !isFilled(at))) at = after(at);
  return at;
}
