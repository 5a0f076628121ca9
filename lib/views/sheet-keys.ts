/** A key stroke as browsers tell it. */
export interface KeyStroke {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** What a key stroke asks of the sheet. */
export type SheetAction =
  | { readonly kind: 'stretch'; readonly row: number; readonly column: number }
  | { readonly kind: 'goTo'; readonly place: 'rowStart' | 'rowEnd' | 'sheetStart' | 'sheetEnd' }
  | { readonly kind: 'fill'; readonly way: 'down' | 'right' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'discard' }
  | { readonly kind: 'selectAll' }
  | { readonly kind: 'duplicateRow' }
  | { readonly kind: 'deleteRows' }
  | { readonly kind: 'moveRow'; readonly by: 1 | -1 }
  | { readonly kind: 'explain' };

const ARROWS: Readonly<Record<string, { readonly row: number; readonly column: number }>> = {
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
};

const PLAIN: Readonly<Record<string, SheetAction>> = {
  Home: { kind: 'goTo', place: 'rowStart' },
  End: { kind: 'goTo', place: 'rowEnd' },
  Delete: { kind: 'empty' },
  Backspace: { kind: 'empty' },
  Escape: { kind: 'discard' },
};

const WITH_CTRL: Readonly<Record<string, SheetAction>> = {
  Home: { kind: 'goTo', place: 'sheetStart' },
  End: { kind: 'goTo', place: 'sheetEnd' },
  d: { kind: 'fill', way: 'down' },
  r: { kind: 'fill', way: 'right' },
  a: { kind: 'selectAll' },
  Enter: { kind: 'explain' },
};

const WITH_ALT: Readonly<Record<string, SheetAction>> = {
  ArrowUp: { kind: 'moveRow', by: -1 },
  ArrowDown: { kind: 'moveRow', by: 1 },
  Enter: { kind: 'duplicateRow' },
  Delete: { kind: 'deleteRows' },
};

/** What a key stroke means while no cell is being edited; null when the grid's own meaning holds. */
export function sheetAction(stroke: KeyStroke): SheetAction | null {
  const { key, shiftKey, altKey } = stroke;
  const ctrl = stroke.ctrlKey || stroke.metaKey;
  if (altKey) return ctrl || shiftKey ? null : (WITH_ALT[key] ?? null);
  if (shiftKey) {
    const arrow = ctrl ? undefined : ARROWS[key];
    return arrow ? { kind: 'stretch', ...arrow } : null;
  }
  return (ctrl ? WITH_CTRL[key.length === 1 ? key.toLowerCase() : key] : PLAIN[key]) ?? null;
}
