import type { ColDef, ColGroupDef } from 'ag-grid-community';
import { useEffect } from 'react';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';
import type { SheetLine } from './sheet-line.ts';
import type { GridRef, SheetRange } from './use-sheet-range.ts';

interface Shown {
  readonly grid: GridRef;
  readonly range: SheetRange;
  readonly rows: readonly ScenarioRow[];
  readonly currentId: string;
  readonly defs: readonly (ColDef<SheetLine> | ColGroupDef<SheetLine>)[];
  readonly look: SheetLook;
}

/** Rows that were added, moved or brought back take the focus with them. */
function followCurrent({ grid, range, rows, currentId, look }: Shown): void {
  const focused = grid.current?.getFocusedCell();
  const at = rows.findIndex((row) => row.id === currentId);
  if (!focused || at < 0) return;
  range.forgetColumns();
  const { rowIndex, column } = focused;
  const place = look.isSideways ? range.placeOf(rowIndex, currentId) : range.placeOf(at, column.getColId());
  if (place) range.focus(place);
}

/** Keeps what the grid does not follow of itself in step with the page: the current row, folded groups, and the focus. */
export function useGridUpkeep(shown: Shown): void {
  const { grid, rows, currentId, defs, look } = shown;
  // The current row is drawn by its name cell, which does not change of itself when another row becomes current.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the current scenario
  useEffect(() => {
    const at = grid.current?.getAllDisplayedColumns().some((column) => column.getColId() === 'name');
    if (at) grid.current?.refreshCells({ suppressFlash: true, columns: ['name'] });
  }, [grid, currentId]);

  const { isWhole } = look;
  useEffect(() => {
    const groups = defs.flatMap((def) => ('groupId' in def && def.groupId !== undefined ? [def.groupId] : []));
    grid.current?.setColumnGroupState(groups.map((groupId) => ({ groupId, open: isWhole })));
  }, [grid, isWhole, defs]);

  const order = rows.map((row) => row.id).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the order of the rows
  useEffect(() => followCurrent(shown), [grid, order]);
}
