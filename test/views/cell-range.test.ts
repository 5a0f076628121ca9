import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  clampRange,
  placesIn,
  rangeHolds,
  rangeSize,
  rowsTouched,
  singleCell,
  stretchRange,
} from '../../lib/views/cell-range.ts';

const UPWARD = { anchor: { row: 3, column: 4 }, head: { row: 1, column: 2 } };
const SIZE = { rows: 5, columns: 6 };

describe('a range of cells', () => {
  it('has the same bounds whichever corner it was begun at', () => {
    const downward = { anchor: UPWARD.head, head: UPWARD.anchor };
    expect(boundsOf(UPWARD)).toEqual({ top: 1, left: 2, bottom: 3, right: 4 });
    expect(boundsOf(downward)).toEqual(boundsOf(UPWARD));
    expect(rangeSize(UPWARD)).toEqual({ rows: 3, columns: 3 });
  });

  it('holds its corners and nothing beyond them', () => {
    expect(rangeHolds(UPWARD, { row: 3, column: 2 })).toBe(true);
    expect(rangeHolds(UPWARD, { row: 4, column: 2 })).toBe(false);
    expect(rangeHolds(UPWARD, { row: 2, column: 5 })).toBe(false);
  });

  it('stretches from its head and stays on the sheet', () => {
    const start = singleCell({ row: 0, column: 5 });
    expect(stretchRange(start, { row: 1, column: 1 }, SIZE)).toEqual({
      anchor: { row: 0, column: 5 },
      head: { row: 1, column: 5 },
    });
    expect(stretchRange(start, { row: -1, column: 0 }, SIZE)).toEqual(start);
  });

  it('is cut to a sheet that has shrunk, and is none on an empty one', () => {
    expect(clampRange(UPWARD, { rows: 2, columns: 3 })).toEqual({
      anchor: { row: 1, column: 2 },
      head: { row: 1, column: 2 },
    });
    expect(clampRange(UPWARD, { rows: 0, columns: 3 })).toBeNull();
  });

  it('knows the rows it shares with another or leaves', () => {
    expect(rowsTouched(UPWARD, singleCell({ row: 5, column: 0 }))).toEqual([1, 2, 3, 5]);
    expect(rowsTouched(null, UPWARD)).toEqual([1, 2, 3]);
  });

  it('lists its places row by row', () => {
    expect(placesIn({ anchor: { row: 1, column: 1 }, head: { row: 0, column: 0 } })).toEqual([
      { row: 0, column: 0 },
      { row: 0, column: 1 },
      { row: 1, column: 0 },
      { row: 1, column: 1 },
    ]);
  });
});
