/** A key stroke as browsers tell it. */
export interface KeyStroke {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** An end of the row or of the sheet. */
export type SheetEnd = 'rowStart' | 'rowEnd' | 'sheetStart' | 'sheetEnd';

/** What a key stroke asks of the sheet. */
export type SheetAction =
  | { readonly kind: 'stretch'; readonly row: number; readonly column: number }
  | { readonly kind: 'goTo'; readonly place: SheetEnd }
  | { readonly kind: 'stretchTo'; readonly place: SheetEnd }
  /** To the edge of what is filled, that way. */
  | { readonly kind: 'goToEdge'; readonly row: number; readonly column: number }
  | { readonly kind: 'stretchToEdge'; readonly row: number; readonly column: number }
  | { readonly kind: 'fill'; readonly way: 'down' | 'right' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'discard' }
  | { readonly kind: 'selectAll' }
  | { readonly kind: 'selectLine'; readonly along: 'row' | 'column' }
  | { readonly kind: 'duplicateRow' }
  | { readonly kind: 'insertRow' }
  | { readonly kind: 'deleteRows' }
  | { readonly kind: 'moveRow'; readonly by: 1 | -1 }
  | { readonly kind: 'moveColumn'; readonly by: 1 | -1 }
  | { readonly kind: 'note' }
  | { readonly kind: 'menu' }
  | { readonly kind: 'explain' };

type Meanings = Readonly<Record<string, SheetAction>>;

const ARROWS: Readonly<Record<string, { readonly row: number; readonly column: number }>> = {
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
};

const ENDS: Readonly<Record<string, { readonly plain: SheetEnd; readonly ctrl: SheetEnd }>> = {
  Home: { plain: 'rowStart', ctrl: 'sheetStart' },
  End: { plain: 'rowEnd', ctrl: 'sheetEnd' },
};

const PLAIN: Meanings = {
  Delete: { kind: 'empty' },
  Backspace: { kind: 'empty' },
  Escape: { kind: 'discard' },
  ContextMenu: { kind: 'menu' },
};

const WITH_SHIFT: Meanings = {
  ' ': { kind: 'selectLine', along: 'row' },
  F2: { kind: 'note' },
  F10: { kind: 'menu' },
};

const WITH_CTRL: Meanings = {
  d: { kind: 'fill', way: 'down' },
  r: { kind: 'fill', way: 'right' },
  a: { kind: 'selectAll' },
  ' ': { kind: 'selectLine', along: 'column' },
  Enter: { kind: 'explain' },
};

const WITH_ALT: Meanings = {
  ArrowUp: { kind: 'moveRow', by: -1 },
  ArrowDown: { kind: 'moveRow', by: 1 },
  Enter: { kind: 'duplicateRow' },
  Insert: { kind: 'insertRow' },
  Delete: { kind: 'deleteRows' },
};

const WITH_ALT_SHIFT: Meanings = {
  ArrowLeft: { kind: 'moveColumn', by: -1 },
  ArrowRight: { kind: 'moveColumn', by: 1 },
};

/** Where Home, End and arrows lead, or how far they stretch the range; null for other keys. */
function goingFor({ key, shiftKey }: KeyStroke, ctrl: boolean): SheetAction | null {
  const end = ENDS[key];
  if (end) return { kind: shiftKey ? 'stretchTo' : 'goTo', place: ctrl ? end.ctrl : end.plain };
  const arrow = ARROWS[key];
  if (!arrow || !(ctrl || shiftKey)) return null;
  if (ctrl) return { kind: shiftKey ? 'stretchToEdge' : 'goToEdge', ...arrow };
  return { kind: 'stretch', ...arrow };
}

function meaningsOf(ctrl: boolean, shift: boolean, alt: boolean): Meanings {
  if (alt) return shift ? WITH_ALT_SHIFT : WITH_ALT;
  if (ctrl) return shift ? {} : WITH_CTRL;
  return shift ? WITH_SHIFT : PLAIN;
}

/** What a key stroke means while no cell is being edited; null when the grid's own meaning holds. */
export function sheetAction(stroke: KeyStroke): SheetAction | null {
  const { key, shiftKey, altKey } = stroke;
  const ctrl = stroke.ctrlKey || stroke.metaKey;
  const going = altKey ? null : goingFor(stroke, ctrl);
  if (going) return going;
  if (altKey && ctrl) return null;
  return meaningsOf(ctrl, shiftKey, altKey)[key.length === 1 ? key.toLowerCase() : key] ?? null;
}

/** Where a key takes the editor of an open cell once its text is taken up; null while it stays open. */
export function leavingStep(stroke: KeyStroke, isTypedOver: boolean): { row: number; column: number } | null {
  if (stroke.ctrlKey || stroke.metaKey || stroke.altKey) return null;
  if (stroke.key === 'Tab') return { row: 0, column: stroke.shiftKey ? -1 : 1 };
  // Arrows move about in a text that was opened to be changed, and away from one that was typed over the cell.
  return isTypedOver && !stroke.shiftKey ? (ARROWS[stroke.key] ?? null) : null;
}
