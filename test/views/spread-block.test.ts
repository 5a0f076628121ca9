import { describe, expect, it } from 'vitest';
import { singleCell } from '../../lib/views/cell-range.ts';
import { fillTargets, spreadBlock } from '../../lib/views/spread-block.ts';

const SIZE = { rows: 4, columns: 4 };

function texts(spread: ReturnType<typeof spreadBlock>): string[] {
  return spread.cells.map((cell) => `${cell.row},${cell.column}:${cell.text}`);
}

describe('spreadBlock', () => {
  it('lays a block down from the top left of the range', () => {
    const block = [
      ['a', 'b'],
      ['c', 'd'],
    ];
    expect(texts(spreadBlock(block, singleCell({ row: 1, column: 2 }), SIZE))).toEqual([
      '1,2:a',
      '1,3:b',
      '2,2:c',
      '2,3:d',
    ]);
  });

  it('fills a range with a single value', () => {
    const range = { anchor: { row: 0, column: 0 }, head: { row: 1, column: 1 } };
    expect(texts(spreadBlock([['x']], range, SIZE))).toEqual(['0,0:x', '0,1:x', '1,0:x', '1,1:x']);
  });

  it('repeats a row over a range of whole rows, but not over a fraction of it', () => {
    const tall = { anchor: { row: 0, column: 0 }, head: { row: 2, column: 1 } };
    expect(spreadBlock([['a', 'b']], tall, SIZE).cells).toHaveLength(6);
    const odd = { anchor: { row: 0, column: 0 }, head: { row: 0, column: 2 } };
    expect(texts(spreadBlock([['a', 'b']], odd, SIZE))).toEqual(['0,0:a', '0,1:b']);
  });

  it('counts what falls off the sheet', () => {
    const spread = spreadBlock([['a', 'b', 'c']], singleCell({ row: 3, column: 2 }), SIZE);
    expect(texts(spread)).toEqual(['3,2:a', '3,3:b']);
    expect(spread.clipped).toBe(1);
  });

  it('leaves cells alone where a ragged row ends early', () => {
    const spread = spreadBlock([['a', 'b'], ['c']], singleCell({ row: 0, column: 0 }), SIZE);
    expect(texts(spread)).toEqual(['0,0:a', '0,1:b', '1,0:c']);
    expect(spread.clipped).toBe(0);
  });
});

describe('fillTargets', () => {
  const range = { anchor: { row: 0, column: 1 }, head: { row: 2, column: 2 } };

  it('copies the first row down', () => {
    expect(fillTargets(range, 'down').map(({ from, to }) => [from.row, from.column, to.row, to.column])).toEqual([
      [0, 1, 1, 1],
      [0, 2, 1, 2],
      [0, 1, 2, 1],
      [0, 2, 2, 2],
    ]);
  });

  it('copies the first column to the right', () => {
    expect(fillTargets(range, 'right').map(({ from, to }) => [from.column, to.row, to.column])).toEqual([
      [1, 0, 2],
      [1, 1, 2],
      [1, 2, 2],
    ]);
  });

  it('fills a single row or column from the one before it, where there is one', () => {
    const single = singleCell({ row: 3, column: 2 });
    expect(fillTargets(single, 'down')).toEqual([{ from: { row: 2, column: 2 }, to: { row: 3, column: 2 } }]);
    expect(fillTargets(single, 'right')).toEqual([{ from: { row: 3, column: 1 }, to: { row: 3, column: 2 } }]);
    expect(fillTargets(singleCell({ row: 0, column: 0 }), 'down')).toEqual([]);
    expect(fillTargets(singleCell({ row: 0, column: 0 }), 'right')).toEqual([]);
  });
});
