import type { KeyStroke } from '../sheet-keys.ts';

/** An end of the grid, or of the row a cell is in. */
export type GridEnd = 'rowStart' | 'rowEnd' | 'gridStart' | 'gridEnd';

/** An action that only goes about the grid. */
export type GoingAction =
  | { readonly kind: 'move' | 'stretch'; readonly row: number; readonly column: number }
  | { readonly kind: 'goTo'; readonly end: GridEnd }
  | { readonly kind: 'selectAll' };

/** What a key stroke asks of a grid of fields while no cell is open. */
export type GridAction =
  | GoingAction
  /** Opens the cell; with a text, that text replaces what is in it. */
  | { readonly kind: 'open'; readonly text: string | null }
  | { readonly kind: 'fill'; readonly way: 'down' | 'right' }
  | { readonly kind: 'empty' | 'discard' };

/** Further than any grid is long. */
const FAR = 10_000;
const PAGE = 12;

const MOVES: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-PAGE, 0],
  PageDown: [PAGE, 0],
};

const PLAIN: Readonly<Record<string, GridAction>> = {
  Home: { kind: 'goTo', end: 'rowStart' },
  End: { kind: 'goTo', end: 'rowEnd' },
  Delete: { kind: 'empty' },
  Backspace: { kind: 'empty' },
  Escape: { kind: 'discard' },
  Enter: { kind: 'open', text: null },
  F2: { kind: 'open', text: null },
};

const WITH_CTRL: Readonly<Record<string, GridAction>> = {
  Home: { kind: 'goTo', end: 'gridStart' },
  End: { kind: 'goTo', end: 'gridEnd' },
  d: { kind: 'fill', way: 'down' },
  r: { kind: 'fill', way: 'right' },
  a: { kind: 'selectAll' },
};

function goingFor(key: string, isFar: boolean, isStretch: boolean): GridAction | null {
  const move = MOVES[key];
  if (!move) return null;
  const [row, column] = isFar ? [move[0] * FAR, move[1] * FAR] : move;
  return { kind: isStretch ? 'stretch' : 'move', row, column };
}

function commandFor(key: string): GridAction | null {
  return WITH_CTRL[key.length === 1 ? key.toLowerCase() : key] ?? null;
}

/** What a key stroke means while no cell is open; null when the page's own meaning holds. */
export function gridAction({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyStroke): GridAction | null {
  const isCtrl = ctrlKey || metaKey;
  if (altKey) return null;
  const going = goingFor(key, isCtrl, shiftKey);
  if (going) return going;
  if (isCtrl) return shiftKey ? null : commandFor(key);
  const plain = shiftKey ? null : (PLAIN[key] ?? null);
  return plain ?? (key.length === 1 ? { kind: 'open', text: key } : null);
}

/**
 * Where to go when an open cell is taken up, by the key that did it; null when the key is for the text.
 * @param isTypedOver the text was begun over what stood there: arrows then leave it, as in the sheet of scenarios
 */
export function moveAfterEntry(
  key: string,
  shiftKey: boolean,
  isTypedOver = false,
): { readonly row: number; readonly column: number } | null {
  const step = shiftKey ? -1 : 1;
  if (key === 'Enter') return { row: step, column: 0 };
  if (key === 'Tab') return { row: 0, column: step };
  const arrow = isTypedOver && !shiftKey && key.startsWith('Arrow') ? MOVES[key] : undefined;
  return arrow ? { row: arrow[0], column: arrow[1] } : null;
}
