import { describe, expect, it } from 'vitest';
import { type KeyStroke, sheetAction } from '../../lib/views/sheet-keys.ts';

const PLAIN: KeyStroke = { key: '', ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

function action(key: string, held: Partial<KeyStroke> = {}) {
  return sheetAction({ ...PLAIN, ...held, key });
}

describe('sheetAction', () => {
  it('goes to the ends of the row, not of the sheet', () => {
    expect(action('Home')).toEqual({ kind: 'goTo', place: 'rowStart' });
    expect(action('End')).toEqual({ kind: 'goTo', place: 'rowEnd' });
    expect(action('End', { ctrlKey: true })).toEqual({ kind: 'goTo', place: 'sheetEnd' });
  });

  it('stretches the range with Shift', () => {
    expect(action('ArrowDown', { shiftKey: true })).toEqual({ kind: 'stretch', row: 1, column: 0 });
    expect(action('ArrowLeft', { shiftKey: true })).toEqual({ kind: 'stretch', row: 0, column: -1 });
  });

  it('knows Ctrl and the command key alike, capital letters too', () => {
    expect(action('d', { ctrlKey: true })).toEqual({ kind: 'fill', way: 'down' });
    expect(action('D', { metaKey: true })).toEqual({ kind: 'fill', way: 'down' });
  });

  it('moves, copies and deletes rows with Alt', () => {
    expect(action('ArrowUp', { altKey: true })).toEqual({ kind: 'moveRow', by: -1 });
    expect(action('Enter', { altKey: true })).toEqual({ kind: 'duplicateRow' });
    expect(action('Delete', { altKey: true })).toEqual({ kind: 'deleteRows' });
  });

  it('leaves everything else to the grid', () => {
    expect(action('ArrowDown')).toBeNull();
    expect(action('Enter')).toBeNull();
    expect(action('a')).toBeNull();
    expect(action('Tab', { shiftKey: true })).toBeNull();
    expect(action('c', { ctrlKey: true })).toBeNull();
    expect(action('Enter', { altKey: true, shiftKey: true })).toBeNull();
  });
});
