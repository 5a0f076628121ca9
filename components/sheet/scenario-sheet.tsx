'use client';

import type { GetRowIdParams, GridApi, GridReadyEvent } from 'ag-grid-community';
import { AgGridReact } from 'ag-grid-react';
import { memo, useCallback, useMemo, useRef } from 'react';
import type { CellRange } from '../../lib/views/cell-range.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { scenariosAcross } from '../../lib/views/sheet-gestures.ts';
import { getPlanner } from '../state/planner.ts';
import { useElementWidth } from '../ui/use-element-width.ts';
import { registerGrid } from './grid-modules.ts';
import { GRID_THEME } from './grid-theme.ts';
import type { NamedCell } from './named-cell.ts';
import styles from './sheet.module.css';
import type { SheetContext, TypedCell } from './sheet-context.ts';
import { useCellGestures } from './use-cell-gestures.ts';
import { useGridUpkeep } from './use-grid-upkeep.ts';
import { useLatest } from './use-latest.ts';
import { useSheetActions } from './use-sheet-actions.ts';
import { useSheetClipboard } from './use-sheet-clipboard.ts';
import { useSheetColumns } from './use-sheet-columns.ts';
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
  readonly onFocus: (cell: NamedCell) => void;
  /** Told what is being typed; null when typing ends. */
  readonly onTyping: (cell: TypedCell | null) => void;
  /** Asked how the figure of a cell was worked out. */
  readonly onExplain: (cell: NamedCell) => void;
}

function rowId({ data }: GetRowIdParams<ScenarioRow>): string {
  return data.id;
}

function lookAcross(range: CellRange, rows: readonly ScenarioRow[]): void {
  const current = rows[range.anchor.row];
  if (current) getPlanner().lookAt(current.id, scenariosAcross(range, rows));
}

/** The sheet: one row for each scenario. It only draws and reports gestures; the plan changes elsewhere. */
export const ScenarioSheet = memo(function ScenarioSheet({
  rows,
  columns,
  entries,
  currentId,
  isWhole,
  onFocus,
  onTyping,
  onExplain,
}: Props) {
  const [box, width] = useElementWidth<HTMLDivElement>();
  const grid = useRef<GridApi<ScenarioRow> | null>(null);
  const latestRows = useLatest(rows);
  const latestEntries = useLatest(entries);
  const latestCurrent = useLatest(currentId);
  const onRange = useCallback((range: CellRange) => lookAcross(range, latestRows.current), [latestRows]);
  const range = useSheetRange(grid, onRange);
  const actions = useSheetActions({ grid, rows: latestRows, columns: latestEntries, range, onExplain });
  const gestures = useCellGestures({ grid, rows: latestRows, range, enter: actions.enter, onFocus });
  const clipboard = useSheetClipboard(grid, actions);
  const { defs, common } = useSheetColumns(columns, width, actions.act);
  useGridUpkeep({ grid, rows, currentId, defs, isWhole });
  const context = useMemo<SheetContext>(
    () => ({ range: range.ref, currentId: latestCurrent, onTyping }),
    [range.ref, latestCurrent, onTyping],
  );
  const isTall = rows.length > ROWS_SHOWN;
  return (
    <div ref={box} className={isTall ? styles.tallSheet : styles.sheet} {...clipboard} {...gestures.ofMouse}>
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
          domLayout={isTall ? 'normal' : 'autoHeight'}
          onGridReady={(event: GridReadyEvent<ScenarioRow>) => {
            grid.current = event.api;
          }}
          {...gestures.ofGrid}
        />
      )}
    </div>
  );
});
