import type { RefObject } from 'react';
import type { CellRange } from '../../lib/views/cell-range.ts';

/** What cells and editors need of the sheet around them; the grid hands it to each as its context. */
export interface SheetContext {
  /** The rectangle that is selected; null before anything is. */
  readonly range: RefObject<CellRange | null>;
  /** The scenario that the evidence speaks of. */
  readonly currentId: RefObject<string>;
  /** Told what is being typed into a cell; null when typing ends. */
  readonly onTyping: (cell: TypedCell | null) => void;
}

export interface TypedCell {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly text: string;
}
