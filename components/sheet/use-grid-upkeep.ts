import type { ColGroupDef, GridApi } from 'ag-grid-community';
import { type RefObject, useEffect } from 'react';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';

interface Shown {
  readonly grid: RefObject<GridApi<ScenarioRow> | null>;
  readonly rows: readonly ScenarioRow[];
  readonly currentId: string;
  readonly defs: readonly ColGroupDef<ScenarioRow>[];
  readonly isWhole: boolean;
}

/** Keeps what the grid does not follow of itself in step with the page: the current row, folded groups, and the focus. */
export function useGridUpkeep({ grid, rows, currentId, defs, isWhole }: Shown): void {
  // The current row is drawn by its name cell, which does not change of themselves when another row becomes current.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the current scenario
  useEffect(() => {
    grid.current?.refreshCells({ suppressFlash: true, columns: ['name'] });
  }, [grid, currentId]);

  useEffect(() => {
    grid.current?.setColumnGroupState(defs.map(({ groupId = '' }) => ({ groupId, open: isWhole })));
  }, [grid, isWhole, defs]);

  const order = rows.map((row) => row.id).join();
  // Rows that were added, moved or brought back take the focus with them.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rule is about the order of the rows
  useEffect(() => {
    const focused = grid.current?.getFocusedCell();
    const at = rows.findIndex((row) => row.id === currentId);
    if (focused && at >= 0) grid.current?.setFocusedCell(at, focused.column);
  }, [grid, order]);
}
