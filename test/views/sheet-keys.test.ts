import { describe, expect, it } from 'vitest';
import { type KeyStroke, leavingStep, sheetAction } from '../../lib/views/sheet-keys.ts';

const PLAIN: KeyStroke = { key: '', ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

function action(key: string, held: Partial<KeyStroke> = {}) {
  return sheetAction({ ...PLAIN, ...held, key });
}

const CTRL_SHIFT = { ctrlKey: true, shiftKey: true };

describe('sheetAction', () => {
  it('goes to the ends of the row, not of the sheet', () => {
    expect(action('Home')).toEqual({ kind: 'goTo', place: 'rowStart' });
    expect(action('End')).toEqual({ kind: 'goTo', place: 'rowEnd' });
    expect(action('End', { ctrlKey: true })).toEqual({ kind: 'goTo', place: 'sheetEnd' });
  });

  it('goes to the edge of what is filled with Ctrl and an arrow', () => {
    expect(action('ArrowUp', { ctrlKey: true })).toEqual({ kind: 'goToEdge', row: -1, column: 0 });
  });

  it('stretches the range with Shift, by steps and to ends', () => {
    expect(action('ArrowDown', { shiftKey: true })).toEqual({ kind: 'stretch', row: 1, column: 0 });
    expect(action('ArrowLeft', { shiftKey: true })).toEqual({ kind: 'stretch', row: 0, column: -1 });
    expect(action('End', { shiftKey: true })).toEqual({ kind: 'stretchTo', place: 'rowEnd' });
    expect(action('Home', CTRL_SHIFT)).toEqual({ kind: 'stretchTo', place: 'sheetStart' });
    expect(action('ArrowRight', CTRL_SHIFT)).toEqual({ kind: 'stretchToEdge', row: 0, column: 1 });
  });

  it('knows Ctrl and the command key alike, capital letters too', () => {
    expect(action('d', { ctrlKey: true })).toEqual({ kind: 'fill', way: 'down' });
    expect(action('D', { metaKey: true })).toEqual({ kind: 'fill', way: 'down' });
  });

  it('selects rows, columns and all', () => {
    expect(action(' ', { shiftKey: true })).toEqual({ kind: 'selectLine', along: 'row' });
    expect(action(' ', { ctrlKey: true })).toEqual({ kind: 'selectLine', along: 'column' });
    expect(action('a', { ctrlKey: true })).toEqual({ kind: 'selectAll' });
  });

  it('moves, copies, adds and deletes rows with Alt, and moves columns with Shift besides', () => {
    expect(action('ArrowUp', { altKey: true })).toEqual({ kind: 'moveRow', by: -1 });
    expect(action('Enter', { altKey: true })).toEqual({ kind: 'duplicateRow' });
    expect(action('Insert', { altKey: true })).toEqual({ kind: 'insertRow' });
    expect(action('Delete', { altKey: true })).toEqual({ kind: 'deleteRows' });
    expect(action('ArrowLeft', { altKey: true, shiftKey: true })).toEqual({ kind: 'moveColumn', by: -1 });
  });

  it('opens the note and the menu', () => {
    expect(action('F2', { shiftKey: true })).toEqual({ kind: 'note' });
    expect(action('F10', { shiftKey: true })).toEqual({ kind: 'menu' });
    expect(action('ContextMenu')).toEqual({ kind: 'menu' });
  });

  it('leaves everything else to the grid', () => {
    expect(action('ArrowDown')).toBeNull();
    expect(action('Enter')).toBeNull();
    expect(action('F2')).toBeNull();
    expect(action('a')).toBeNull();
    expect(action(' ')).toBeNull();
    expect(action('Tab', { shiftKey: true })).toBeNull();
    expect(action('c', { ctrlKey: true })).toBeNull();
    expect(action('z', CTRL_SHIFT)).toBeNull();
    expect(action('Enter', { altKey: true, shiftKey: true })).toBeNull();
    expect(action('ArrowUp', { altKey: true, ctrlKey: true })).toBeNull();
  });
});

describe('leavingStep', () => {
  const step = (key: string, isTypedOver: boolean, held: Partial<KeyStroke> = {}) =>
    leavingStep({ ...PLAIN, ...held, key }, isTypedOver);

  it('goes on with Tab from any open cell', () => {
    expect(step('Tab', false)).toEqual({ row: 0, column: 1 });
    expect(step('Tab', true, { shiftKey: true })).toEqual({ row: 0, column: -1 });
  });

  it('goes on with arrows only from a cell that was typed over', () => {
    expect(step('ArrowDown', true)).toEqual({ row: 1, column: 0 });
    expect(step('ArrowDown', false)).toBeNull();
    expect(step('ArrowLeft', true, { shiftKey: true })).toBeNull();
    expect(step('ArrowLeft', true, { ctrlKey: true })).toBeNull();
    expect(step('Enter', true)).toBeNull();
  });
});
