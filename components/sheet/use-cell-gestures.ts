import type { CellEditRequestEvent, CellFocusedEvent } from 'ag-grid-community';
import { type MouseEvent, type RefObject, useMemo, useRef } from 'react';
import { type CellPlace, isSamePlace, rangeHolds, singleCell } from '../../lib/views/cell-range.ts';
import { drawnOut } from '../../lib/views/fill-drag.ts';
import { cellAt, type ShownSheet } from '../../lib/views/shown-sheet.ts';
import type { NamedCell } from './named-cell.ts';
import { paintFill } from './paint-range.ts';
import type { SheetLine } from './sheet-line.ts';
import type { LeftCell } from './use-left-cell.ts';
import type { SheetActions } from './use-sheet-actions.ts';
import type { GridRef, SheetRange } from './use-sheet-range.ts';

interface Tools {
  readonly grid: GridRef;
  readonly root: RefObject<Element | null>;
  readonly shown: () => ShownSheet;
  readonly range: SheetRange;
  readonly actions: SheetActions;
  readonly leftCell: LeftCell;
  readonly onFocus: (cell: NamedCell | null) => void;
}

export interface CellGestures {
  /** Handlers of the grid's events. */
  readonly ofGrid: {
    readonly onCellFocused: (event: CellFocusedEvent<SheetLine>) => void;
    readonly onCellEditRequest: (event: CellEditRequestEvent<SheetLine, string>) => void;
    readonly onDisplayedColumnsChanged: () => void;
  };
  /** Handlers of the mouse on the element around the grid. */
  readonly ofMouse: {
    readonly onMouseDown: (event: MouseEvent) => void;
    readonly onMouseOver: (event: MouseEvent) => void;
    readonly onContextMenu: (event: MouseEvent) => void;
  };
}

/** Side of the square at the corner of the range by which it is drawn out [px]. */
const HANDLE = 10;

/** The cell's element under the mouse; null beside the cells, on a handle that moves a row, and in an open cell. */
function cellUnder({ target }: MouseEvent): Element | null {
  if (!(target instanceof Element) || target.closest('.ag-row-drag')) return null;
  return target.closest('.ag-cell:not(.ag-cell-inline-editing)');
}

function placeUnder(event: MouseEvent, range: SheetRange): CellPlace | null {
  const cell = cellUnder(event);
  const row = cell?.closest('.ag-row')?.getAttribute('row-index');
  return cell && row ? range.placeOf(Number(row), cell.getAttribute('col-id') ?? '') : null;
}

function isOnHandle(event: MouseEvent, place: CellPlace, { ref }: SheetRange): boolean {
  const box = cellUnder(event)?.getBoundingClientRect();
  if (!box || !ref.current) return false;
  const { row, column } = {
    row: Math.max(ref.current.anchor.row, ref.current.head.row),
    column: Math.max(ref.current.anchor.column, ref.current.head.column),
  };
  return (
    isSamePlace(place, { row, column }) && event.clientX > box.right - HANDLE && event.clientY > box.bottom - HANDLE
  );
}

/** What the mouse is about, from one of its events to the next. */
interface Mouse {
  /** The cell on which a press will bring the focus about. */
  expected: CellPlace | null;
  /** A range is being selected. */
  isSelecting: boolean;
  /** Where the range is being drawn out to; null while it is not. */
  drawnTo: CellPlace | null;
}

/** Draws the range out from its corner, until the button is let go wherever that is. */
function beginDrawing({ root, range, actions }: Tools, mouse: Mouse, from: CellPlace): void {
  mouse.drawnTo = from;
  const end = () => {
    const { drawnTo } = mouse;
    mouse.drawnTo = null;
    paintFill(root.current, null, range.placeOf);
    if (drawnTo) actions.drawOut(drawnTo);
  };
  document.addEventListener('mouseup', end, { once: true });
}

function onMouseOver({ grid, root, range }: Tools, mouse: Mouse, event: MouseEvent): void {
  const place = event.buttons === 1 ? placeUnder(event, range) : null;
  if (!place || (grid.current?.getEditingCells().length ?? 0) > 0) return;
  if (mouse.drawnTo && range.ref.current) {
    mouse.drawnTo = place;
    paintFill(root.current, drawnOut(range.ref.current, place), range.placeOf);
  } else if (mouse.isSelecting) range.stretchTo(place);
}

function onMouseDown(tools: Tools, mouse: Mouse, event: MouseEvent): void {
  const { range } = tools;
  const place = event.button === 0 ? placeUnder(event, range) : null;
  mouse.isSelecting = place !== null;
  if (!place) return;
  mouse.expected = place;
  if (isOnHandle(event, place, range)) beginDrawing(tools, mouse, place);
  else if (event.shiftKey) range.stretchTo(place);
  else range.select(singleCell(place));
}

function onContextMenu({ range, actions }: Tools, event: MouseEvent): void {
  const place = placeUnder(event, range);
  if (!place) return;
  event.preventDefault();
  if (!range.ref.current || !rangeHolds(range.ref.current, place)) range.focus(place);
  actions.menuAt(place, { x: event.clientX, y: event.clientY });
}

/**
 * The grid tells of a new focus some time after a key or the mouse has brought it about, perhaps when the range has already
 * been drawn further or the focus has gone on. So whoever moves the focus draws the range too, the focus counts that the grid
 * has when it tells, and a range that was drawn for it is left as it is.
 */
function gesturesOf(tools: Tools, mouse: Mouse): CellGestures {
  const { grid, range, shown, leftCell, onFocus } = tools;
  return {
    ofGrid: {
      onCellFocused: () => {
        const focused = grid.current?.getFocusedCell();
        const place = focused && range.placeOf(focused.rowIndex, focused.column.getColId());
        if (!place) return;
        const cell = cellAt(shown(), place);
        onFocus(cell && { scenarioId: cell.row.id, columnId: cell.columnId });
        const isDrawn = [mouse.expected, range.ref.current?.anchor].some((known) => known && isSamePlace(known, place));
        if (!isDrawn) range.select(singleCell(place));
        mouse.expected = null;
      },
      onCellEditRequest: ({ rowIndex, column, newValue }) => {
        const place = range.placeOf(rowIndex ?? -1, column.getColId());
        const cell = place && cellAt(shown(), place);
        if (cell) leftCell.told({ scenarioId: cell.row.id, columnId: cell.columnId, text: String(newValue ?? '') });
      },
      onDisplayedColumnsChanged: range.forgetColumns,
    },
    ofMouse: {
      onMouseDown: (event) => onMouseDown(tools, mouse, event),
      onMouseOver: (event) => onMouseOver(tools, mouse, event),
      onContextMenu: (event) => onContextMenu(tools, event),
    },
  };
}

/** What focus, mouse and editing mean on the sheet; the handlers stay the same from one drawing to the next. */
export function useCellGestures({ grid, root, shown, range, actions, leftCell, onFocus }: Tools): CellGestures {
  const mouse = useRef<Mouse>({ expected: null, isSelecting: false, drawnTo: null });
  return useMemo(
    () => gesturesOf({ grid, root, shown, range, actions, leftCell, onFocus }, mouse.current),
    [grid, root, shown, range, actions, leftCell, onFocus],
  );
}
