import type { GridApi } from 'ag-grid-community';
import { type RefObject, useMemo, useRef } from 'react';
import { type CellPlace, type CellRange, clampRange, type SheetSize, singleCell } from '../../lib/views/cell-range.ts';
import { paintRange } from './paint-range.ts';
import type { SheetLine } from './sheet-line.ts';

export type GridRef = RefObject<GridApi<SheetLine> | null>;

export interface SheetRange {
  readonly ref: RefObject<CellRange | null>;
  readonly select: (range: CellRange) => void;
  readonly stretchTo: (head: CellPlace) => void;
  /** Brings a place into view and puts the focus on it, which selects it. */
  readonly focus: (place: CellPlace) => void;
  readonly size: () => SheetSize;
  readonly columnIds: () => readonly string[];
  readonly placeOf: (row: number, columnId: string) => CellPlace | null;
  /** To be called when other columns are on screen, or the same ones in another order. */
  readonly forgetColumns: () => void;
}

interface Seen {
  readonly ids: readonly string[];
  readonly places: ReadonlyMap<string, number>;
}

function seenIn(api: GridApi<SheetLine> | null): Seen {
  const ids = api?.getAllDisplayedColumns().map((column) => column.getColId()) ?? [];
  return { ids, places: new Map(ids.map((id, at) => [id, at])) };
}

function show(api: GridApi<SheetLine> | null, { row, column }: CellPlace): void {
  const shown = api?.getAllDisplayedColumns()[column];
  if (shown) api?.ensureColumnVisible(shown);
  api?.ensureIndexVisible(row);
}

function rangeOf(grid: GridRef, root: RefObject<Element | null>, ref: SheetRange['ref'], seen: RefObject<Seen | null>) {
  const columns = (): Seen => {
    seen.current ??= seenIn(grid.current);
    return seen.current;
  };
  const size = () => ({ rows: grid.current?.getDisplayedRowCount() ?? 0, columns: columns().ids.length });
  const placeOf = (row: number, columnId: string) => {
    const column = columns().places.get(columnId);
    return column === undefined || row < 0 ? null : { row, column };
  };
  return {
    columns,
    size,
    placeOf,
    paint: (before: CellRange | null, after: CellRange) => paintRange(root.current, before, after, placeOf),
    ref,
  };
}

/** The selected rectangle: kept outside the grid, drawn on its cells. `onChange` is told of every new one. */
export function useSheetRange(
  grid: GridRef,
  root: RefObject<Element | null>,
  onChange: (range: CellRange) => void,
): SheetRange {
  const ref = useRef<CellRange | null>(null);
  const seen = useRef<Seen | null>(null);
  return useMemo(() => {
    const { columns, size, placeOf, paint } = rangeOf(grid, root, ref, seen);
    const select = (wanted: CellRange) => {
      const range = clampRange(wanted, size());
      if (!range) return;
      paint(ref.current, range);
      ref.current = range;
      onChange(range);
    };
    return {
      ref,
      select,
      size,
      placeOf,
      columnIds: () => columns().ids,
      forgetColumns: () => {
        seen.current = null;
      },
      stretchTo: (head) => {
        select({ anchor: ref.current?.anchor ?? head, head });
        show(grid.current, ref.current?.head ?? head);
      },
      focus: (place) => {
        show(grid.current, place);
        grid.current?.setFocusedCell(place.row, columns().ids[place.column] ?? '');
        // The grid tells of the new focus some time later, perhaps after the next key.
        select(singleCell(place));
      },
    };
  }, [grid, root, onChange]);
}
