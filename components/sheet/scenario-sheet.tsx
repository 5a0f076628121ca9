'use client';

import type {
  CellEditRequestEvent,
  CellFocusedEvent,
  CellMouseDownEvent,
  CellMouseOverEvent,
  GetRowIdParams,
  GridApi,
  GridReadyEvent,
} from 'ag-grid-community';
import { AgGridReact } from 'ag-grid-react';
import { type ClipboardEvent, useCallback, useEffect, useMemo, useRef } from 'react';
import { type CellRange, singleCell } from '../../lib/views/cell-range.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { sheetAction } from '../../lib/views/sheet-keys.ts';
import { getPlanner } from '../state/planner.ts';
import { useElementWidth } from '../ui/use-element-width.ts';
import { columnDefs, defaultDef, type KeyTaker, layoutFor } from './column-defs.ts';
import { registerGrid } from './grid-modules.ts';
import { GRID_THEME } from './grid-theme.ts';
import styles from './sheet.module.css';
import type { SheetContext, TypedCell } from './sheet-context.ts';
import { useLatest } from './use-latest.ts';
import { useSheetActions } from './use-sheet-actions.ts';
import { useSheetRange } from './use-sheet-range.ts';

registerGrid();

/** Rows beyond this many scroll inside the sheet. */
const ROWS_SHOWN = 16;

interface Props {
  readonly rows: readonly ScenarioRow[];
  readonly columns: readonly SheetColumn[];
  readonly entries: readonly EntryColumn[];
  readonly currentId: string;
  /** Show every column, or only the main ones of each group. */
  readonly isWhole: boolean;
  /** Told which cell is focused, and what is being typed. */
  readonly onFocus: (cell: { readonly scenarioId: string; readonly columnId: string }) => void;
  readonly onTyping: (cell: TypedCell | null) => void;
}

function rowId({ data }: GetRowIdParams<ScenarioRow>): string {
  return data.id;
}

/** Definitions that stay the same objects until what they say changes, so that the grid keeps its columns. */
function useStableColumns(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  const text = JSON.stringify(columns);
  return useMemo(() => JSON.parse(text) as SheetColumn[], [text]);
}

/** The sheet: one row for each scenario. It only draws and reports gestures; the plan changes elsewhere. */
export function ScenarioSheet({ rows, columns, entries, currentId, isWhole, onFocus, onTyping }: Props) {
  const [box, width] = useElementWidth<HTMLDivElement>();
  const grid = useRef<GridApi<ScenarioRow> | null>(null);
  const isStretching = useRef(false);
  const latestRows = useLatest(rows);
  const latestEntries = useLatest(entries);
  const latestCurrent = useLatest(currentId);
  const stable = useStableColumns(columns);
  const { isNarrow } = layoutFor(width);
  const defs = useMemo(() => columnDefs(stable, { isNarrow }), [stable, isNarrow]);

  const lookAtRange = useCallback(
    (range: CellRange) => {
      const [low, high] = [range.anchor.row, range.head.row].sort((a, b) => a - b);
      const ids = latestRows.current.filter((row) => row.place >= (low ?? 0) && row.place <= (high ?? 0));
      const current = latestRows.current[range.anchor.row];
      if (current)
        getPlanner().lookAt(
          current.id,
          ids.map((row) => row.id),
        );
    },
    [latestRows],
  );
  const range = useSheetRange(grid, lookAtRange);
  const { act, enter, paste, copy, cut } = useSheetActions({ grid, rows: latestRows, columns: latestEntries, range });
  const context = useMemo<SheetContext>(
    () => ({ range: range.ref, currentId: latestCurrent, onTyping }),
    [range.ref, latestCurrent, onTyping],
  );

  const takeKey = useCallback<KeyTaker>(
    ({ event, editing }) => {
      const action = editing || event.type !== 'keydown' ? null : sheetAction(event);
      if (!action) return false;
      event.preventDefault();
      act(action);
      return true;
    },
    [act],
  );
  const common = useMemo(() => defaultDef(takeKey), [takeKey]);

  const placeOf = useCallback((rowIndex: number | null, column: CellFocusedEvent['column']) => {
    if (rowIndex === null || !column || typeof column === 'string') return null;
    const shown = grid.current?.getAllDisplayedColumns() ?? [];
    const at = shown.findIndex((candidate) => candidate.getColId() === column.getId());
    return at < 0 ? null : { row: rowIndex, column: at };
  }, []);

  const onCellFocused = useCallback(
    ({ rowIndex, column }: CellFocusedEvent<ScenarioRow>) => {
      const place = placeOf(rowIndex, column);
      const row = place ? latestRows.current[place.row] : undefined;
      if (!place || !row || !column || typeof column === 'string') return;
      onFocus({ scenarioId: row.id, columnId: column.getId() });
      if (!isStretching.current) range.select(singleCell(place));
    },
    [placeOf, latestRows, onFocus, range.select],
  );

  const onCellMouseDown = useCallback(
    ({ event, rowIndex, column }: CellMouseDownEvent<ScenarioRow>) => {
      const place = placeOf(rowIndex, column);
      isStretching.current = event instanceof MouseEvent && event.shiftKey;
      if (place && isStretching.current) range.stretchTo(place);
    },
    [placeOf, range.stretchTo],
  );

  const onCellMouseOver = useCallback(
    ({ event, rowIndex, column }: CellMouseOverEvent<ScenarioRow>) => {
      const place = placeOf(rowIndex, column);
      const isDragging = event instanceof MouseEvent && event.buttons === 1;
      if (place && isDragging && (grid.current?.getEditingCells().length ?? 0) === 0) range.stretchTo(place);
    },
    [placeOf, range.stretchTo],
  );

  const onCellEditRequest = useCallback(
    ({ data, column, newValue, oldValue }: CellEditRequestEvent<ScenarioRow, string>) => {
      const text = String(newValue ?? '');
      const isFaulty = Boolean(data.entries[column.getColId()]?.fault);
      if (text !== oldValue || isFaulty) enter(data.id, column.getColId(), text);
    },
    [enter],
  );

  useEffect(() => {
    const release = () => {
      isStretching.current = false;
    };
    window.addEventListener('mouseup', release);
    return () => window.removeEventListener('mouseup', release);
  }, []);

  // The current row is drawn by the cells, which do not change of themselves when another row becomes current.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the current scenario
  useEffect(() => {
    grid.current?.refreshCells({ suppressFlash: true });
  }, [currentId]);

  useEffect(() => {
    grid.current?.setColumnGroupState(defs.map(({ groupId = '' }) => ({ groupId, open: isWhole })));
  }, [isWhole, defs]);

  const order = rows.map((row) => row.id).join();
  // Rows that were added, moved or brought back take the focus with them.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the order of the rows
  useEffect(() => {
    const focused = grid.current?.getFocusedCell();
    const at = latestRows.current.findIndex((row) => row.id === latestCurrent.current);
    if (focused && at >= 0) grid.current?.setFocusedCell(at, focused.column);
  }, [order]);

  const isEditing = () => (grid.current?.getEditingCells().length ?? 0) > 0;
  const take = (event: ClipboardEvent, text: string | null) => {
    if (text === null) return;
    event.clipboardData.setData('text/plain', text);
    event.preventDefault();
  };

  return (
    <div
      ref={box}
      className={rows.length > ROWS_SHOWN ? styles.tallSheet : styles.sheet}
      onCopy={(event) => (isEditing() ? undefined : take(event, copy()))}
      onCut={(event) => (isEditing() ? undefined : take(event, cut()))}
      onPaste={(event) => {
        if (isEditing()) return;
        paste(event.clipboardData.getData('text/plain'));
        event.preventDefault();
      }}
    >
      {width === 0 ? null : (
        <AgGridReact<ScenarioRow>
          theme={GRID_THEME}
          rowData={rows as ScenarioRow[]}
          columnDefs={defs}
          defaultColDef={common}
          context={context}
          getRowId={rowId}
          readOnlyEdit
          stopEditingWhenCellsLoseFocus
          enterNavigatesVerticallyAfterEdit
          suppressColumnVirtualisation
          ensureDomOrder
          suppressDragLeaveHidesColumns
          scrollbarWidth={10}
          alwaysShowHorizontalScroll
          groupHeaderHeight={34}
          domLayout={rows.length > ROWS_SHOWN ? 'normal' : 'autoHeight'}
          onGridReady={(event: GridReadyEvent<ScenarioRow>) => {
            grid.current = event.api;
          }}
          onCellFocused={onCellFocused}
          onCellMouseDown={onCellMouseDown}
          onCellMouseOver={onCellMouseOver}
          onCellEditRequest={onCellEditRequest}
        />
      )}
    </div>
  );
}
