/** One line of the list of keys. */
export interface KeyHelp {
  readonly keys: string;
  readonly does: string;
}

/** What the keys do on the sheet, for the list that shows them. */
export const KEY_HELP: readonly KeyHelp[] = [
  { keys: 'Arrows, Tab', does: 'go from cell to cell' },
  { keys: 'Enter, F2 or typing', does: 'change the cell; Enter or Tab takes the entry up, Esc leaves it' },
  { keys: 'Home, End', does: 'go to the first or last column' },
  { keys: 'Ctrl + arrows', does: 'go to the end of the filled cells' },
  { keys: 'Ctrl + Home, Ctrl + End', does: 'go to the first or last cell' },
  { keys: 'Shift + any of these, or drag', does: 'select several cells' },
  { keys: 'Shift + Space, Ctrl + Space, Ctrl + A', does: 'select the row, the column, everything' },
  { keys: 'Ctrl + C, X, V', does: 'copy, cut and paste, also from and to other spreadsheets' },
  {
    keys: 'Ctrl + D, Ctrl + R',
    does: 'fill the selected cells from the top or left, or a single one from its neighbour',
  },
  { keys: 'Delete', does: 'set the cell back to its usual value; drops an entry that was not understood' },
  { keys: 'Esc', does: 'drop an entry that was not understood' },
  { keys: 'Shift + F2', does: 'write a note on the cell' },
  { keys: 'Shift + F10, or the menu key', does: 'open the menu of the cell: sort, filter, hide, notes, rows' },
  { keys: 'Ctrl + Enter', does: 'show how a computed figure was worked out' },
  { keys: 'Ctrl + Z, Ctrl + Y', does: 'undo, redo' },
  { keys: 'Alt + ↑, Alt + ↓', does: 'move the scenario' },
  { keys: 'Alt + Shift + ←, →', does: 'move the column' },
  { keys: 'Alt + Insert, Alt + Enter, Alt + Delete', does: 'insert a scenario below, duplicate it, delete it' },
];
