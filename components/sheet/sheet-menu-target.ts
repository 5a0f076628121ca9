import type { NamedCell } from './named-cell.ts';

/** What the menu of the sheet is opened for, and where on screen. */
export interface SheetMenuTarget {
  /** The column it speaks of. */
  readonly columnId: string;
  /** The cell it speaks of as well; null when it was opened on the head of a column. */
  readonly cell: NamedCell | null;
  readonly x: number;
  readonly y: number;
}
