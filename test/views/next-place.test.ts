import { describe, expect, it } from 'vitest';
import { grownRange, placeAtEdge, placeAtEnd, stepPlace } from '../../lib/views/next-place.ts';
import type { ShownSheet } from '../../lib/views/shown-sheet.ts';
import { DEMO_ROWS } from './sheet-of-demo.ts';

const SHEET: ShownSheet = {
  rows: DEMO_ROWS,
  columnIds: ['name', 'chambers:mid', 'capital', 'hose'],
  entryIds: new Set(['name', 'chambers:mid', 'hose']),
  isSideways: false,
  labels: new Map(),
};
const FROM = { row: 2, column: 1 };

describe('placeAtEnd', () => {
  it.each([
    ['rowStart', 2, 0],
    ['rowEnd', 2, 3],
    ['sheetStart', 0, 0],
    ['sheetEnd', 5, 3],
  ] as const)('%s', (end, row, column) => {
    expect(placeAtEnd(end, FROM, { rows: 6, columns: 4 })).toEqual({ row, column });
  });
});

describe('placeAtEdge', () => {
  it('jumps over cells that are empty, such as figures not worked out', () => {
    expect(placeAtEdge({ row: 0, column: 1 }, FROM, SHEET)).toEqual({ row: 2, column: 3 });
    expect(placeAtEdge({ row: 1, column: 0 }, FROM, SHEET)).toEqual({ row: 5, column: 1 });
  });
});

describe('stepPlace', () => {
  const size = { rows: 3, columns: 4 };
  const to = (row: number, column: number, step: number) => stepPlace({ row, column }, { row: 0, column: step }, size);

  it('goes on in the next row past the end of one, and stays at the ends of the sheet', () => {
    expect(to(0, 1, 1)).toEqual({ row: 0, column: 2 });
    expect(to(0, 3, 1)).toEqual({ row: 1, column: 0 });
    expect(to(1, 0, -1)).toEqual({ row: 0, column: 3 });
    expect(to(2, 3, 1)).toEqual({ row: 2, column: 3 });
    expect(to(0, 0, -1)).toEqual({ row: 0, column: 0 });
  });
});

describe('grownRange', () => {
  const range = { anchor: { row: 2, column: 1 }, head: { row: 1, column: 2 } };
  const size = { rows: 6, columns: 4 };

  it('takes in whole rows, whole columns or all', () => {
    expect(grownRange(range, 'row', size)).toEqual({ anchor: { row: 2, column: 0 }, head: { row: 1, column: 3 } });
    expect(grownRange(range, 'column', size)).toEqual({ anchor: { row: 0, column: 1 }, head: { row: 5, column: 2 } });
    expect(grownRange(range, 'all', size)).toEqual({ anchor: { row: 0, column: 0 }, head: { row: 5, column: 3 } });
  });
});
