import type { CellEditRequestEvent, CellFocusedEvent, GridApi } from 'ag-grid-community';
import { type MouseEvent, type RefObject, useMemo, useRef } from 'react';
import { type CellPlace, isSamePlace, singleCell } from '../../lib/views/cell-range.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { NamedCell } from './named-cell.ts';
import type { SheetActions } from './use-sheet-actions.ts';
import type { SheetRange } from './use-sheet-range.ts';

interface Tools {
  readonly grid: RefObject<GridApi<ScenarioRow> | null>;
  readonly rows: RefObject<readonly ScenarioRow[]>;
  readonly range: SheetRange;
  readonly enter: SheetActions['enter'];
  readonly onFocus: (cell: NamedCell) => void;
}

export interface CellGestures {
  /** Handlers of the grid's events. */
  readonly ofGrid: {
    readonly onCellFocused: (event: CellFocusedEvent<ScenarioRow>) => void;
    readonly onCellEditRequest: (event: CellEditRequestEvent<ScenarioRow, string>) => void;
  };
  /** Handlers of the mouse on the element around the grid. */
  readonly ofMouse: {
    readonly onMouseDown: (event: MouseEvent) => void;
    readonly onMouseOver: (event: MouseEvent) => void;
  };
}

function placeAt(row: number, columnId: string, grid: GridApi<ScenarioRow> | null): CellPlace | null {
  const columns = grid?.getAllDisplayedColumns() ?? [];
  const column = columns.findIndex((candidate) => candidate.getColId() === columnId);
  return column < 0 || row < 0 ? null : { row, column };
}

/** The cell under the mouse; null beside the cells and in an open one. */
function placeUnder(event: MouseEvent, grid: GridApi<ScenarioRow> | null): CellPlace | null {
  const cell = event.target instanceof Element ? event.target.closest('.ag-cell:not(.ag-cell-inline-editing)') : null;
  const row = cell?.closest('.ag-row')?.getAttribute('row-index');
  const columnId = cell?.getAttribute('col-id');
  return row && columnId ? placeAt(Number(row), columnId, grid) : null;
}

/**
 * The grid tells of a new focus some time after the mouse has brought it about, perhaps when the range has already been drawn
 * further. So the mouse draws the range itself, and the focus it will bring is not taken as a new beginning.
 */
function gesturesOf(tools: Tools, expected: RefObject<CellPlace | null>): CellGestures {
  const { grid, rows, range, enter, onFocus } = tools;
  return {
    ofGrid: {
      onCellFocused: ({ rowIndex, column }) => {
        const columnId = column && typeof column !== 'string' ? column.getId() : '';
        const place = placeAt(rowIndex ?? -1, columnId, grid.current);
        const row = place ? rows.current[place.row] : undefined;
        if (!place || !row) return;
        onFocus({ scenarioId: row.id, columnId });
        if (!expected.current || !isSamePlace(expected.current, place)) range.select(singleCell(place));
        expected.current = null;
      },
      onCellEditRequest: ({ data, column, newValue, oldValue }) => {
        const text = String(newValue ?? '');
        const isFaulty = Boolean(data.entries[column.getColId()]?.fault);
        if (text !== oldValue || isFaulty) enter(data.id, column.getColId(), text);
      },
    },
    ofMouse: {
      onMouseDown: (event) => {
        const place = event.button === 0 ? placeUnder(event, grid.current) : null;
        if (!place) return;
        expected.current = place;
        if (event.shiftKey) range.stretchTo(place);
        else range.select(singleCell(place));
      },
      onMouseOver: (event) => {
        const place = event.buttons === 1 ? placeUnder(event, grid.current) : null;
        if (place && (grid.current?.getEditingCells().length ?? 0) === 0) range.stretchTo(place);
      },
    },
  };
}

/** What focus, mouse and editing mean on the sheet; the handlers stay the same from one drawing to the next. */
export function useCellGestures({ grid, rows, range, enter, onFocus }: Tools): CellGestures {
  const expected = useRef<CellPlace | null>(null);
  return useMemo(
    () => gesturesOf({ grid, rows, range, enter, onFocus }, expected),
    [grid, rows, range, enter, onFocus],
  );
}
