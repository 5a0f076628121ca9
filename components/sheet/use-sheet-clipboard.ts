import type { ClipboardEvent } from 'react';

import type { SheetActions } from './use-sheet-actions.ts';
import type { GridRef } from './use-sheet-range.ts';

export interface ClipboardHandlers {
  readonly onCopy: (event: ClipboardEvent) => void;
  readonly onCut: (event: ClipboardEvent) => void;
  readonly onPaste: (event: ClipboardEvent) => void;
}

function hand(event: ClipboardEvent, text: string | null): void {
  if (text === null) return;
  event.clipboardData.setData('text/plain', text);
  event.preventDefault();
}

/** Copy, cut and paste of ranges. While a cell is open they are the browser's own affair. */
export function useSheetClipboard(grid: GridRef, { copy, cut, paste }: SheetActions): ClipboardHandlers {
  const isEditing = () => (grid.current?.getEditingCells().length ?? 0) > 0;
  return {
    onCopy: (event) => {
      if (!isEditing()) hand(event, copy());
    },
    onCut: (event) => {
      if (!isEditing()) hand(event, cut());
    },
    onPaste: (event) => {
      if (isEditing()) return;
      paste(event.clipboardData.getData('text/plain'));
      event.preventDefault();
    },
  };
}
