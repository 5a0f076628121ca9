/** One line of the list of keys. */
export interface KeyHelp {
  readonly keys: string;
  readonly does: string;
}

/** What the keys do on the sheet, for the list that shows them. */
export const KEY_HELP: readonly KeyHelp[] = [
  { keys: 'Arrows, Tab', does: 'go from cell to cell' },
  { keys: 'Enter, F2 or typing', does: 'change the cell; Enter takes the entry up, Esc leaves it' },
  { keys: 'Home, End', does: 'go to the first or last column' },
  { keys: 'Ctrl + Home, Ctrl + End', does: 'go to the first or last cell' },
  { keys: 'Shift + arrows, or drag', does: 'select several cells' },
  { keys: 'Ctrl + C, X, V', does: 'copy, cut and paste, also from and to other spreadsheets' },
  { keys: 'Ctrl + D, Ctrl + R', does: 'fill the selected cells from the top or from the left' },
  { keys: 'Delete', does: 'set the cell back to its usual value; drops an entry that was not understood' },
  { keys: 'Esc', does: 'drop an entry that was not understood' },
  { keys: 'Ctrl + Enter', does: 'show how a computed figure was worked out' },
  { keys: 'Ctrl + Z, Ctrl + Y', does: 'undo, redo' },
  { keys: 'Alt + ↑, Alt + ↓', does: 'move the row' },
  { keys: 'Alt + Enter, Alt + Delete', does: 'duplicate the row, delete it' },
];
