'use client';

import type { ColumnMovedEvent, GetRowIdParams, GridApi, GridReadyEvent } from 'ag-grid-community';
import { AgGridReact } from 'ag-grid-react';
import { memo, useMemo, useRef } from 'react';
import { draggedColumns } from '../../lib/views/arrange-columns.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';
import type { SideLine } from '../../lib/views/side-lines.ts';
import { getPlanner } from '../state/planner.ts';
import { useElementWidth } from '../ui/use-element-width.ts';
import { registerGrid } from './grid-modules.ts';
import { GRID_THEME } from './grid-theme.ts';
import styles from './sheet.module.css';
import type { SheetLine } from './sheet-line.ts';
import { useGridLines } from './use-grid-lines.ts';
import { useGridUpkeep } from './use-grid-upkeep.ts';
import { useRowDrag } from './use-row-drag.ts';
import { type SheetHearers, useSheet } from './use-sheet.ts';
import { useSheetColumns } from './use-sheet-columns.ts';

registerGrid();

/** Lines beyond this many scroll inside the sheet. */
const LINES_SHOWN = 16;

export interface SheetContent {
  /** The scenarios on screen, in the order they are shown. */
  readonly rows: readonly ScenarioRow[];
  /** The lines of the sheet sideways; null upright. */
  readonly lines: readonly SideLine[] | null;
  readonly columns: readonly SheetColumn[];
  readonly entries: readonly EntryColumn[];
  readonly currentId: string;
  readonly look: SheetLook;
}

interface Props extends SheetContent {
  readonly hearers: SheetHearers;
}

function rowId({ data }: GetRowIdParams<SheetLine>): string {
  return data.id;
}

/** The sheet: one row for each scenario, or one column. It only draws and reports gestures; the plan changes elsewhere. */
export const ScenarioSheet = memo(function ScenarioSheet({ hearers, ...content }: Props) {
  const { rows, lines, columns, currentId, look } = content;
  const [box, width] = useElementWidth<HTMLDivElement>();
  const grid = useRef<GridApi<SheetLine> | null>(null);
  const { range, actions, handlers, ofGrid, context } = useSheet(grid, box, content, hearers);
  const { defs, common } = useSheetColumns({ columns, rows, look, width, actions });
  const rowDrag = useRowDrag();
  useGridUpkeep({ grid, range, rows, currentId, defs, look });
  const onMoved = useMemo(
    () =>
      ({ finished, api }: ColumnMovedEvent<SheetLine>) => {
        if (!finished || look.isSideways) return;
        const ids = api.getAllDisplayedColumns().map((column) => column.getColId());
        getPlanner().setLook(draggedColumns(columns, look, ids));
      },
    [columns, look],
  );
  const shown: readonly SheetLine[] = lines ?? rows;
  const isTall = shown.length > LINES_SHOWN;
  const { given, onStanding } = useGridLines(grid, shown);
  return (
    <div ref={box} className={isTall ? styles.tallSheet : styles.sheet} {...handlers}>
      {width === 0 ? null : (
        <AgGridReact<SheetLine>
          key={String(look.isSideways)}
          theme={GRID_THEME}
          rowData={given}
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
          headerHeight={look.isSideways ? 56 : undefined}
          rowHeight={look.isSideways ? 34 : undefined}
          domLayout={isTall ? 'normal' : 'autoHeight'}
          onGridReady={(event: GridReadyEvent<SheetLine>) => {
            grid.current = event.api;
            onStanding();
          }}
          onGridPreDestroyed={() => {
            grid.current = null;
          }}
          onColumnMoved={onMoved}
          {...rowDrag}
          {...ofGrid}
        />
      )}
    </div>
  );
});
