import { type RefObject, useMemo } from 'react';
import { applyEntries, type CellEntry, emptyCells } from '../../lib/views/apply-entries.ts';
import { movedColumn } from '../../lib/views/arrange-columns.ts';
import { type CellPlace, type CellRange, singleCell, stretchRange } from '../../lib/views/cell-range.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import { drawnOut } from '../../lib/views/fill-drag.ts';
import { grownRange, placeAtEdge, placeAtEnd, stepPlace } from '../../lib/views/next-place.ts';
import { rangeText } from '../../lib/views/range-text.ts';
import {
  deleteScenarios,
  duplicateScenario,
  insertScenarioBelow,
  moveScenariosBy,
} from '../../lib/views/row-gestures.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import {
  drawnEntries,
  entryCellsIn,
  fillEntries,
  pasteEntries,
  scenariosAcross,
} from '../../lib/views/sheet-gestures.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import type { SheetAction } from '../../lib/views/sheet-keys.ts';
import { cellAt, type ShownSheet } from '../../lib/views/shown-sheet.ts';
import { getPlanner } from '../state/planner.ts';
import type { NamedCell } from './named-cell.ts';
import type { SheetMenuTarget } from './sheet-menu-target.ts';
import type { SheetRange } from './use-sheet-range.ts';

/** What the sheet's gestures work on, read afresh at each gesture. */
export interface SheetTools {
  readonly root: RefObject<Element | null>;
  readonly shown: () => ShownSheet;
  readonly entries: RefObject<readonly EntryColumn[]>;
  readonly columns: RefObject<readonly SheetColumn[]>;
  readonly range: SheetRange;
  readonly onExplain: (cell: NamedCell) => void;
  readonly onNote: (cell: NamedCell) => void;
  readonly onMenu: (target: SheetMenuTarget) => void;
}

export interface SheetActions {
  readonly act: (action: SheetAction) => void;
  readonly enter: (scenarioId: string, columnId: string, text: string) => void;
  readonly paste: (text: string) => void;
  /** Text of the selected range; null when nothing is selected. */
  readonly copy: () => string | null;
  readonly cut: () => string | null;
  /** Fills the cells that the range has been drawn out to. */
  readonly drawOut: (to: CellPlace) => void;
  /** Goes a step on from the cell in focus, in the next row past the end of one. */
  readonly step: (step: CellPlace) => void;
  readonly menuAt: (place: CellPlace, at: { readonly x: number; readonly y: number }) => void;
}

const SORTED = 'The scenarios are sorted. Take the sorting off to put them in an order of your own.';

function state() {
  return presentState(getPlanner().getState().sheet);
}

function enter(tools: SheetTools, entries: readonly CellEntry[]): void {
  if (entries.length > 0) getPlanner().enter(applyEntries(state(), entries, tools.entries.current));
}

function namedAt({ shown }: SheetTools, place: CellPlace): NamedCell | null {
  const cell = cellAt(shown(), place);
  return cell && { scenarioId: cell.row.id, columnId: cell.columnId };
}

function emptyRange(tools: SheetTools, range: CellRange): void {
  const cells = entryCellsIn(range, tools.shown());
  if (cells.length === 0) getPlanner().say('Computed cells cannot be emptied.', 'bad');
  else getPlanner().enter(emptyCells(state(), cells, tools.entries.current));
}

/** Drops what was not understood in the range; the cells show the plan's values again. */
function discardIn(tools: SheetTools, range: CellRange): void {
  const sheet = tools.shown();
  const faulty = entryCellsIn(range, sheet).filter(
    (cell) => sheet.rows.find((row) => row.id === cell.scenarioId)?.entries[cell.columnId]?.fault,
  );
  if (faulty.length > 0) getPlanner().enter(emptyCells(state(), faulty, tools.entries.current));
}

function moveRows(tools: SheetTools, ids: readonly string[], by: 1 | -1): void {
  const planner = getPlanner();
  if (planner.getState().look.sort) {
    planner.say(SORTED, 'bad');
    return;
  }
  const shownIds = tools.shown().rows.map((row) => row.id);
  const moved = moveScenariosBy(state().plan, ids, by, shownIds);
  if (moved) planner.rowGesture(moved);
}

function actOnRows(tools: SheetTools, range: CellRange, action: SheetAction): void {
  const planner = getPlanner();
  const ids = scenariosAcross(range, tools.shown());
  const [first] = ids;
  const last = ids.at(-1);
  const { plan } = state();
  if (first === undefined || last === undefined) return;
  if (action.kind === 'duplicateRow') planner.rowGesture(duplicateScenario(plan, first));
  if (action.kind === 'insertRow') planner.rowGesture(insertScenarioBelow(plan, last));
  if (action.kind === 'deleteRows') planner.rowGesture(deleteScenarios(plan, ids));
  if (action.kind === 'moveRow') moveRows(tools, ids, action.by);
}

function moveColumn(tools: SheetTools, { anchor }: CellRange, by: 1 | -1): void {
  const planner = getPlanner();
  const cell = namedAt(tools, anchor);
  const moved = cell && movedColumn(tools.columns.current, planner.getState().look, cell.columnId, by);
  if (moved) planner.setLook(moved);
}

/** Under the cell, for a menu that keys have asked for. */
function openMenu({ root, range }: SheetTools, place: CellPlace, menuAt: SheetActions['menuAt']): void {
  const id = CSS.escape(range.columnIds()[place.column] ?? '');
  const box = root.current?.querySelector(`.ag-row[row-index="${place.row}"] .ag-cell[col-id="${id}"]`);
  const at = box?.getBoundingClientRect();
  menuAt(place, { x: at?.left ?? 0, y: at?.bottom ?? 0 });
}

function menuAt(tools: SheetTools, place: CellPlace, { x, y }: { readonly x: number; readonly y: number }): void {
  const cell = namedAt(tools, place);
  if (cell) tools.onMenu({ columnId: cell.columnId, cell, x, y });
}

function actOnCell(tools: SheetTools, { anchor }: CellRange, action: SheetAction): void {
  const cell = namedAt(tools, anchor);
  if (action.kind === 'menu') openMenu(tools, anchor, (place, at) => menuAt(tools, place, at));
  if (cell && action.kind === 'explain') tools.onExplain(cell);
  if (cell && action.kind === 'note') tools.onNote(cell);
}

function actOnRange(tools: SheetTools, range: CellRange, action: SheetAction): void {
  const { kind } = action;
  if (kind === 'fill') enter(tools, fillEntries(range, action.way, tools.shown()));
  else if (kind === 'empty') emptyRange(tools, range);
  else if (kind === 'discard') discardIn(tools, range);
  else if (kind === 'moveColumn') moveColumn(tools, range, action.by);
  else if (kind === 'menu' || kind === 'explain' || kind === 'note') actOnCell(tools, range, action);
  else actOnRows(tools, range, action);
}

/** Moves the focus or stretches the range; false when the action is about something else. */
function goAbout({ range, shown }: SheetTools, action: SheetAction): boolean {
  const from = range.ref.current ?? singleCell({ row: 0, column: 0 });
  if (action.kind === 'goTo') range.focus(placeAtEnd(action.place, from.anchor, range.size()));
  else if (action.kind === 'goToEdge') range.focus(placeAtEdge(action, from.anchor, shown()));
  else if (action.kind === 'stretch') range.stretchTo(stretchRange(from, action, range.size()).head);
  else if (action.kind === 'stretchTo') range.stretchTo(placeAtEnd(action.place, from.head, range.size()));
  else if (action.kind === 'stretchToEdge') range.stretchTo(placeAtEdge(action, from.head, shown()));
  else if (action.kind === 'selectAll') range.select(grownRange(from, 'all', range.size()));
  else if (action.kind === 'selectLine') range.select(grownRange(from, action.along, range.size()));
  else return false;
  return true;
}

function act(tools: SheetTools, action: SheetAction): void {
  const range = tools.range.ref.current;
  if (!goAbout(tools, action) && range) actOnRange(tools, range, action);
}

function paste(tools: SheetTools, text: string): void {
  const range = tools.range.ref.current;
  if (!range || text === '') return;
  const { entries, leftOut } = pasteEntries(text, range, tools.shown());
  if (entries.length === 0) {
    getPlanner().say(`Nothing was pasted.${leftOut}`, 'bad');
    return;
  }
  const applied = applyEntries(state(), entries, tools.entries.current);
  getPlanner().enter({ ...applied, said: `Pasted: ${applied.said}${leftOut}` });
}

function copy({ range, shown }: SheetTools): string | null {
  return range.ref.current ? rangeText(shown(), range.ref.current) : null;
}

function cut(tools: SheetTools): string | null {
  const text = copy(tools);
  if (tools.range.ref.current) emptyRange(tools, tools.range.ref.current);
  return text;
}

function drawOut(tools: SheetTools, to: CellPlace): void {
  const range = tools.range.ref.current;
  if (!range) return;
  enter(tools, drawnEntries(range, to, tools.shown()));
  tools.range.select(drawnOut(range, to));
}

/** The gestures of the sheet, each of which becomes one step of the history. The tools must stay the same object. */
export function useSheetActions(tools: SheetTools): SheetActions {
  return useMemo(
    () => ({
      act: (action) => act(tools, action),
      enter: (scenarioId, columnId, text) => enter(tools, [{ scenarioId, columnId, text }]),
      paste: (text) => paste(tools, text),
      copy: () => copy(tools),
      cut: () => cut(tools),
      drawOut: (to) => drawOut(tools, to),
      step: (step) => {
        const { ref, focus, size } = tools.range;
        if (ref.current) focus(stepPlace(ref.current.anchor, step, size()));
      },
      menuAt: (place, at) => menuAt(tools, place, at),
    }),
    [tools],
  );
}
