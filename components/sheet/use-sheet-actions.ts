import type { GridApi } from 'ag-grid-community';
import { type RefObject, useMemo } from 'react';
import { applyEntries, emptyCells } from '../../lib/views/apply-entries.ts';
import type { CellRange } from '../../lib/views/cell-range.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import { rangeText } from '../../lib/views/range-text.ts';
import { deleteScenarios, duplicateScenario, moveScenariosBy } from '../../lib/views/row-gestures.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import {
  entryCellsIn,
  fillEntries,
  pasteEntries,
  type ShownSheet,
  scenariosAcross,
} from '../../lib/views/sheet-gestures.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import type { SheetAction } from '../../lib/views/sheet-keys.ts';
import { getPlanner } from '../state/planner.ts';
import type { NamedCell } from './named-cell.ts';
import type { SheetRange } from './use-sheet-range.ts';

/** What the sheet's gestures work on, read afresh at each gesture. */
export interface SheetTools {
  readonly grid: RefObject<GridApi<ScenarioRow> | null>;
  readonly rows: RefObject<readonly ScenarioRow[]>;
  readonly columns: RefObject<readonly EntryColumn[]>;
  readonly range: SheetRange;
  readonly onExplain: (cell: NamedCell) => void;
}

export interface SheetActions {
  readonly act: (action: SheetAction) => void;
  readonly enter: (scenarioId: string, columnId: string, text: string) => void;
  readonly paste: (text: string) => void;
  /** Text of the selected range; null when nothing is selected. */
  readonly copy: () => string | null;
  readonly cut: () => string | null;
}

function shownSheet({ grid, rows, columns }: SheetTools): ShownSheet {
  return {
    rows: rows.current,
    columnIds: grid.current?.getAllDisplayedColumns().map((column) => column.getColId()) ?? [],
    entryIds: new Set(columns.current.map((column) => column.id)),
  };
}

function goTo({ grid, range }: SheetTools, place: 'rowStart' | 'rowEnd' | 'sheetStart' | 'sheetEnd'): void {
  const columns = grid.current?.getAllDisplayedColumns() ?? [];
  const row = range.ref.current?.anchor.row ?? 0;
  const column = place === 'rowStart' || place === 'sheetStart' ? columns[0] : columns.at(-1);
  const rowIndex = place === 'sheetStart' ? 0 : place === 'sheetEnd' ? range.size().rows - 1 : row;
  if (!column) return;
  grid.current?.ensureColumnVisible(column);
  grid.current?.setFocusedCell(rowIndex, column);
}

function state() {
  return presentState(getPlanner().getState().sheet);
}

function emptyRange(tools: SheetTools, range: CellRange): void {
  const cells = entryCellsIn(range, shownSheet(tools));
  if (cells.length === 0) getPlanner().say('Computed cells cannot be emptied.', 'bad');
  else getPlanner().enter(emptyCells(state(), cells, tools.columns.current));
}

/** Drops what was not understood in the range; the cells show the plan's values again. */
function discardIn(tools: SheetTools, range: CellRange): void {
  const faulty = entryCellsIn(range, shownSheet(tools)).filter(
    (cell) => tools.rows.current.find((row) => row.id === cell.scenarioId)?.entries[cell.columnId]?.fault,
  );
  if (faulty.length > 0) getPlanner().enter(emptyCells(state(), faulty, tools.columns.current));
}

function selectAll({ range }: SheetTools): void {
  const { rows, columns } = range.size();
  range.select({ anchor: { row: 0, column: 0 }, head: { row: rows, column: columns } });
}

function fill(tools: SheetTools, range: CellRange, way: 'down' | 'right'): void {
  const entries = fillEntries(range, way, shownSheet(tools));
  if (entries.length > 0) getPlanner().enter(applyEntries(state(), entries, tools.columns.current));
}

function actOnRows(tools: SheetTools, range: CellRange, action: SheetAction): void {
  const planner = getPlanner();
  const ids = scenariosAcross(range, tools.rows.current);
  const [first] = ids;
  const { plan } = state();
  if (first === undefined) return;
  if (action.kind === 'duplicateRow') planner.rowGesture(duplicateScenario(plan, first));
  if (action.kind === 'deleteRows') planner.rowGesture(deleteScenarios(plan, ids));
  const moved = action.kind === 'moveRow' ? moveScenariosBy(plan, ids, action.by) : null;
  if (moved) planner.rowGesture(moved);
}

function explain({ grid, rows, onExplain }: SheetTools, { anchor }: CellRange): void {
  const row = rows.current[anchor.row];
  const column = grid.current?.getAllDisplayedColumns()[anchor.column];
  if (row && column) onExplain({ scenarioId: row.id, columnId: column.getColId() });
}

function actOnRange(tools: SheetTools, range: CellRange, action: SheetAction): void {
  if (action.kind === 'fill') fill(tools, range, action.way);
  else if (action.kind === 'empty') emptyRange(tools, range);
  else if (action.kind === 'discard') discardIn(tools, range);
  else if (action.kind === 'explain') explain(tools, range);
  else actOnRows(tools, range, action);
}

function act(tools: SheetTools, action: SheetAction): void {
  const range = tools.range.ref.current;
  if (action.kind === 'stretch') tools.range.stretchBy(action);
  else if (action.kind === 'goTo') goTo(tools, action.place);
  else if (action.kind === 'selectAll') selectAll(tools);
  else if (range) actOnRange(tools, range, action);
}

function paste(tools: SheetTools, text: string): void {
  const range = tools.range.ref.current;
  if (!range || text === '') return;
  const { entries, leftOut } = pasteEntries(text, range, shownSheet(tools));
  if (entries.length === 0) {
    getPlanner().say(`Nothing was pasted.${leftOut}`, 'bad');
    return;
  }
  const applied = applyEntries(state(), entries, tools.columns.current);
  getPlanner().enter({ ...applied, said: `Pasted: ${applied.said}${leftOut}` });
}

function copy(tools: SheetTools): string | null {
  const range = tools.range.ref.current;
  const sheet = shownSheet(tools);
  return range ? rangeText(sheet.rows, sheet.columnIds, range) : null;
}

/** The gestures of the sheet, each of which becomes one step of the history. */
export function useSheetActions(tools: SheetTools): SheetActions {
  const { grid, rows, columns, range, onExplain } = tools;
  return useMemo(() => {
    const held = { grid, rows, columns, range, onExplain };
    return {
      act: (action) => act(held, action),
      enter: (scenarioId, columnId, text) =>
        getPlanner().enter(applyEntries(state(), [{ scenarioId, columnId, text }], columns.current)),
      paste: (text) => paste(held, text),
      copy: () => copy(held),
      cut: () => {
        const text = copy(held);
        if (range.ref.current) emptyRange(held, range.ref.current);
        return text;
      },
    };
  }, [grid, rows, columns, range, onExplain]);
}
