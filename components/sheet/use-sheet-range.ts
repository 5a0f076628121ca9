import type { GridApi } from 'ag-grid-community';
import { type RefObject, useCallback, useMemo, useRef } from 'react';
import {
  type CellPlace,
  type CellRange,
  clampRange,
  rowsTouched,
  type SheetSize,
  singleCell,
  stretchRange,
} from '../../lib/views/cell-range.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';

export interface SheetRange {
  readonly ref: RefObject<CellRange | null>;
  readonly select: (range: CellRange) => void;
  readonly stretchTo: (head: CellPlace) => void;
  readonly stretchBy: (by: CellPlace) => void;
  readonly size: () => SheetSize;
}

function sizeOf(api: GridApi<ScenarioRow> | null): SheetSize {
  if (!api) return { rows: 0, columns: 0 };
  return { rows: api.getDisplayedRowCount(), columns: api.getAllDisplayedColumns().length };
}

/** Only the rows that a range leaves or enters are drawn again. */
function redraw(api: GridApi<ScenarioRow> | null, rows: readonly number[]): void {
  const rowNodes = rows.flatMap((row) => api?.getDisplayedRowAtIndex(row) ?? []);
  api?.refreshCells({ suppressFlash: true, rowNodes });
}

/** The selected rectangle: kept outside the grid, drawn by it. `onChange` is told of every new one. */
export function useSheetRange(
  grid: RefObject<GridApi<ScenarioRow> | null>,
  onChange: (range: CellRange) => void,
): SheetRange {
  const ref = useRef<CellRange | null>(null);
  const size = useCallback(() => sizeOf(grid.current), [grid]);

  const select = useCallback(
    (wanted: CellRange) => {
      const range = clampRange(wanted, size());
      if (!range) return;
      const touched = rowsTouched(ref.current, range);
      ref.current = range;
      redraw(grid.current, touched);
      onChange(range);
    },
    [grid, size, onChange],
  );

  const stretchTo = useCallback((head: CellPlace) => select({ anchor: ref.current?.anchor ?? head, head }), [select]);

  const stretchBy = useCallback(
    (by: CellPlace) => {
      const range = stretchRange(ref.current ?? singleCell({ row: 0, column: 0 }), by, size());
      select(range);
      const column = grid.current?.getAllDisplayedColumns()[range.head.column];
      if (column) grid.current?.ensureColumnVisible(column);
      grid.current?.ensureIndexVisible(range.head.row);
    },
    [grid, select, size],
  );

  return useMemo(() => ({ ref, select, stretchTo, stretchBy, size }), [select, stretchTo, stretchBy, size]);
}
