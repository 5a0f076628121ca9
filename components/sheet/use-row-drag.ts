import type { GridApi, RowDragEndEvent, RowDragMoveEvent } from 'ag-grid-community';
import { useMemo } from 'react';
import { moveScenariosTo } from '../../lib/views/row-gestures.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';
import type { SheetLine } from './sheet-line.ts';

export interface RowDrag {
  readonly onRowDragMove: (event: RowDragMoveEvent<SheetLine>) => void;
  readonly onRowDragLeave: (event: { readonly api: GridApi<SheetLine> }) => void;
  readonly onRowDragCancel: (event: { readonly api: GridApi<SheetLine> }) => void;
  readonly onRowDragEnd: (event: RowDragEndEvent<SheetLine>) => void;
}

/** True when the row would be dropped under the one the mouse is over, as it comes from above it. */
function goesBelow({ node, overNode }: RowDragMoveEvent<SheetLine>): boolean {
  return (overNode?.rowIndex ?? 0) > (node.rowIndex ?? 0);
}

function mark(event: RowDragMoveEvent<SheetLine>): void {
  const { api, node, overNode } = event;
  const dropIndicatorPosition = goesBelow(event) ? 'below' : 'above';
  api.setRowDropPositionIndicator(overNode && overNode !== node ? { row: overNode, dropIndicatorPosition } : null);
}

function drop(event: RowDragEndEvent<SheetLine>): void {
  const { api, node, overNode } = event;
  api.setRowDropPositionIndicator(null);
  const { plan } = presentState(getPlanner().getState().sheet);
  const position = plan.scenarios.findIndex((scenario) => scenario.id === overNode?.data?.id);
  const moved = node.data && position >= 0 ? moveScenariosTo(plan, [node.data.id], position) : null;
  if (moved) getPlanner().rowGesture(moved);
}

/** Moving rows by their handles: where a row would go is marked, and it goes there when it is let go. */
export function useRowDrag(): RowDrag {
  return useMemo(
    () => ({
      onRowDragMove: mark,
      onRowDragLeave: ({ api }) => api.setRowDropPositionIndicator(null),
      onRowDragCancel: ({ api }) => api.setRowDropPositionIndicator(null),
      onRowDragEnd: drop,
    }),
    [],
  );
}
