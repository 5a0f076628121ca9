import { type RefObject, useCallback, useMemo, useRef } from 'react';
import type { CellRange } from '../../lib/views/cell-range.ts';
import { scenariosAcross } from '../../lib/views/sheet-gestures.ts';
import { cellAt, type ShownSheet } from '../../lib/views/shown-sheet.ts';
import { getPlanner } from '../state/planner.ts';
import type { NamedCell } from './named-cell.ts';
import { openHeadMenu } from './open-head-menu.ts';
import type { SheetContent } from './scenario-sheet.tsx';
import type { SheetContext, TypedCell } from './sheet-context.ts';
import type { SheetMenuTarget } from './sheet-menu-target.ts';
import { type CellGestures, useCellGestures } from './use-cell-gestures.ts';
import { useLatest } from './use-latest.ts';
import { useLeftCell } from './use-left-cell.ts';
import { type SheetActions, useSheetActions } from './use-sheet-actions.ts';
import { type ClipboardHandlers, useSheetClipboard } from './use-sheet-clipboard.ts';
import { type GridRef, type SheetRange, useSheetRange } from './use-sheet-range.ts';
import { useShownSheet } from './use-shown-sheet.ts';

/** Who is told of what goes on in the sheet. They must stay the same functions. */
export interface SheetHearers {
  readonly onFocus: (cell: NamedCell | null) => void;
  /** Told what is being typed; null when typing ends. */
  readonly onTyping: (cell: TypedCell | null) => void;
  /** Told of what may soon be entered; of nothing when that has passed. */
  readonly onExpected: (cells: readonly TypedCell[]) => void;
  /** Asked how the figure of a cell was worked out. */
  readonly onExplain: (cell: NamedCell) => void;
  /** Asked to write a note on a cell. */
  readonly onNote: (cell: NamedCell) => void;
  readonly onMenu: (target: SheetMenuTarget) => void;
}

interface SheetHandles {
  readonly range: SheetRange;
  readonly actions: SheetActions;
  readonly context: SheetContext;
  readonly ofGrid: CellGestures['ofGrid'];
  /** Handlers of the element around the grid. */
  readonly handlers: CellGestures['ofMouse'] & ClipboardHandlers & { readonly onKeyDown: typeof openHeadMenu };
}

function lookAcross(range: CellRange, sheet: ShownSheet): void {
  const ids = scenariosAcross(range, sheet);
  const current = cellAt(sheet, range.anchor)?.row.id ?? ids[0];
  if (current !== undefined) getPlanner().lookAt(current, ids);
}

/** All that the sheet does when it is worked at, whichever way round it stands. */
export function useSheet(
  grid: GridRef,
  root: RefObject<HTMLDivElement | null>,
  content: SheetContent,
  { onFocus, onTyping, onExpected, onExplain, onNote, onMenu }: SheetHearers,
): SheetHandles {
  const rows = useLatest(content.rows);
  const lines = useLatest(content.lines);
  const entries = useLatest(content.entries);
  const columns = useLatest(content.columns);
  const currentId = useLatest(content.currentId);
  const isTypedOver = useRef(false);
  const shown = useShownSheet({ grid, rows, entries, lines });
  const onRange = useCallback((range: CellRange) => lookAcross(range, shown()), [shown]);
  const range = useSheetRange(grid, root, onRange);
  const tools = useMemo(
    () => ({ root, shown, entries, columns, range, onExplain, onNote, onMenu }),
    [root, shown, entries, columns, range, onExplain, onNote, onMenu],
  );
  const actions = useSheetActions(tools);
  const leftCell = useLeftCell({ root, grid, shown, enter: actions.enter });
  const { ofGrid, ofMouse } = useCellGestures({ grid, root, shown, range, actions, leftCell, onFocus });
  const clipboard = useSheetClipboard(grid, actions);
  const context = useMemo<SheetContext>(() => {
    const onColumnMenu = (columnId: string, head: HTMLElement) => {
      const { left, bottom } = head.getBoundingClientRect();
      onMenu({ columnId, cell: null, x: left, y: bottom });
    };
    const { opened: onOpened, leaving: onLeaving, chosen: onChosen } = leftCell;
    const told = { onTyping, onExpected, onOpened, onLeaving, onChosen, onColumnMenu };
    return { range: range.ref, placeOf: range.placeOf, currentId, isTypedOver, ...told };
  }, [range, leftCell, currentId, onTyping, onExpected, onMenu]);
  return { range, actions, context, ofGrid, handlers: { ...clipboard, ...ofMouse, onKeyDown: openHeadMenu } };
}
