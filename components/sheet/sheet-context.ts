import type { RefObject } from 'react';
import type { CellPlace, CellRange } from '../../lib/views/cell-range.ts';

/** What cells and editors need of the sheet around them; the grid hands it to each as its context. */
export interface SheetContext {
  /** The rectangle that is selected; null before anything is. */
  readonly range: RefObject<CellRange | null>;
  /** The place of a cell on screen; null for columns out of sight. */
  readonly placeOf: (row: number, columnId: string) => CellPlace | null;
  /** The scenario that the evidence speaks of. */
  readonly currentId: RefObject<string>;
  /** True while the open cell was typed over, so that arrows leave it. */
  readonly isTypedOver: RefObject<boolean>;
  /** Told what is being typed into a cell; null when typing ends. */
  readonly onTyping: (cell: TypedCell | null) => void;
  /** Told of a cell that is opened for typing. */
  readonly onOpened: () => void;
  /** Told of a cell that Enter or Tab is about to leave, before the grid hears of the key. */
  readonly onLeaving: (cell: TypedCell) => void;
  /** Told of what was chosen, when its cell has been closed. */
  readonly onChosen: (cell: TypedCell) => void;
  /** Told of what may soon be entered, such as the choices of a list that is open; of nothing when that has passed. */
  readonly onExpected: (cells: readonly TypedCell[]) => void;
  /** Asked for the menu of a column. */
  readonly onColumnMenu: (columnId: string, head: HTMLElement) => void;
}

export interface TypedCell {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly text: string;
}
