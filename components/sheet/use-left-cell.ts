import { type RefObject, useEffect, useMemo } from 'react';
import type { ShownSheet } from '../../lib/views/shown-sheet.ts';
import type { TypedCell } from './sheet-context.ts';
import type { GridRef } from './use-sheet-range.ts';

/** How a cell that is left by Enter or Tab has its text taken up. */
export interface LeftCell {
  /** To be called when a cell is opened for typing. */
  readonly opened: () => void;
  /** To be called with what stands in the open cell when a key is about to leave it. */
  readonly leaving: (cell: TypedCell) => void;
  /** To be called with what was chosen, when its cell has been closed. */
  readonly chosen: (cell: TypedCell) => void;
  /** To be called when the grid tells of an edit: takes it up, unless that was done when the key was pressed. */
  readonly told: (cell: TypedCell) => void;
}

interface Tools {
  readonly root: RefObject<HTMLElement | null>;
  readonly grid: GridRef;
  readonly shown: () => ShownSheet;
  readonly enter: (scenarioId: string, columnId: string, text: string) => void;
}

function isSameCell(a: TypedCell, b: TypedCell): boolean {
  return a.scenarioId === b.scenarioId && a.columnId === b.columnId && a.text === b.text;
}

/** True when the text says something else than the cell, or is to be tried again. */
function isWorthTaking(shown: ShownSheet, { scenarioId, columnId, text }: TypedCell): boolean {
  const entry = shown.rows.find((row) => row.id === scenarioId)?.entries[columnId];
  return entry !== undefined && (text !== entry.plainText || entry.fault !== null);
}

/** @returns besides, what is to be called when the grid has dealt with a key */
function leftCell({ grid, shown, enter }: Omit<Tools, 'root'>): LeftCell & { readonly left: () => void } {
  let onItsWay: TypedCell | null = null;
  let taken: TypedCell | null = null;
  const take = (cell: TypedCell) => {
    if (isWorthTaking(shown(), cell)) enter(cell.scenarioId, cell.columnId, cell.text);
  };
  const takeNow = (cell: TypedCell) => {
    taken = cell;
    take(cell);
  };
  return {
    opened: () => {
      onItsWay = null;
      taken = null;
    },
    leaving: (cell) => {
      onItsWay = cell;
    },
    left: () => {
      const cell = onItsWay;
      onItsWay = null;
      // A key may leave the cell open, such as one with another key held down.
      if (cell && (grid.current?.getEditingCells().length ?? 0) === 0) takeNow(cell);
    },
    chosen: takeNow,
    told: (cell) => {
      const isTaken = taken !== null && isSameCell(taken, cell);
      taken = null;
      if (!isTaken) take(cell);
    },
  };
}

/**
 * The grid tells of an edit only after it has drawn itself, and of one that left the text as it was not at all. So Enter and Tab are heard here as
 * well: the edit is taken up within the same key, and the row can be drawn with its new figures at once.
 */
export function useLeftCell({ root, grid, shown, enter }: Tools): LeftCell {
  const cell = useMemo(() => leftCell({ grid, shown, enter }), [grid, shown, enter]);
  useEffect(() => {
    // Straight on the element: the grid has taken the editor away by then, and with it the page's way of passing the key on.
    const element = root.current;
    element?.addEventListener('keydown', cell.left);
    return () => element?.removeEventListener('keydown', cell.left);
  }, [root, cell]);
  return cell;
}
