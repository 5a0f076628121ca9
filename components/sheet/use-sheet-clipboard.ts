import type { GridApi } from 'ag-grid-community';
import type { ClipboardEvent, RefObject } from 'react';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetActions } from './use-sheet-actions.ts';

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
export function useSheetClipboard(
  grid: RefObject<GridApi<ScenarioRow> | null>,
  { copy, cut, paste }: SheetActions,
): ClipboardHandlers {
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
