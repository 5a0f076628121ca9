import { type KeyStroke, type SheetAction, sheetAction } from '../sheet-keys.ts';

/** What a key stroke asks of a grid of fields while no cell is open. */
export type GridAction =
  | { readonly kind: 'move'; readonly row: number; readonly column: number }
  /** Opens the cell; with a text, that text replaces what is in it. */
  | { readonly kind: 'open'; readonly text: string | null }
  | Extract<SheetAction, { kind: 'stretch' | 'goTo' | 'fill' | 'empty' | 'discard' | 'selectAll' }>;

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

const OURS: ReadonlySet<SheetAction['kind']> = new Set(['stretch', 'goTo', 'fill', 'empty', 'discard', 'selectAll']);

function moveFor(key: string, far: boolean): GridAction | null {
  const move = MOVES[key];
  if (!move) return null;
  const [row, column] = far ? [move[0] * FAR, move[1] * FAR] : move;
  return { kind: 'move', row, column };
}

function openingFor({ key, ctrlKey, metaKey, altKey }: KeyStroke): GridAction | null {
  if (ctrlKey || metaKey || altKey) return null;
  if (key === 'Enter' || key === 'F2') return { kind: 'open', text: null };
  return key.length === 1 ? { kind: 'open', text: key } : null;
}

/** What a key stroke means while no cell is open; null when the page's own meaning holds. */
export function gridAction(stroke: KeyStroke): GridAction | null {
  const { key, shiftKey, altKey } = stroke;
  const ctrl = stroke.ctrlKey || stroke.metaKey;
  const move = shiftKey || altKey ? null : moveFor(key, ctrl);
  if (move) return move;
  const action = sheetAction(stroke);
  if (action && OURS.has(action.kind)) return action as GridAction;
  return openingFor(stroke);
}

/** Where to go when an open cell is taken up, by the key that did it; null when the key is for the text. */
export function moveAfterEntry(
  key: string,
  shiftKey: boolean,
): { readonly row: number; readonly column: number } | null {
  const step = shiftKey ? -1 : 1;
  if (key === 'Enter') return { row: step, column: 0 };
  if (key === 'Tab') return { row: 0, column: step };
  return null;
}
