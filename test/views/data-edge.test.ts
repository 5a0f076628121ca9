import { describe, expect, it } from 'vitest';
import { dataEdge } from '../../lib/views/data-edge.ts';
import { drawnFill, drawnOut } from '../../lib/views/fill-drag.ts';

describe('dataEdge', () => {
  const cells = ['xxx..xx'];
  const filled = ({ row, column }: { row: number; column: number }) => cells[row]?.[column] === 'x';
  const size = { rows: 1, columns: 7 };
  const right = (column: number) => dataEdge({ row: 0, column }, { row: 0, column: 1 }, size, filled).column;
  const left = (column: number) => dataEdge({ row: 0, column }, { row: 0, column: -1 }, size, filled).column;

  it('goes to the end of the filled stretch, then over the gap, then to the edge', () => {
    expect([right(0), right(2), right(5), right(6)]).toEqual([2, 5, 6, 6]);
    expect([left(6), left(5), left(1), left(0)]).toEqual([5, 2, 0, 0]);
  });

  it('goes from an empty cell to the next filled one', () => {
    expect([right(3), left(4)]).toEqual([5, 2]);
  });

  it('goes to the edge where nothing is filled', () => {
    const nothing = () => false;
    expect(dataEdge({ row: 0, column: 2 }, { row: 0, column: 1 }, size, nothing).column).toBe(6);
    expect(dataEdge({ row: 0, column: 2 }, { row: 1, column: 0 }, size, nothing)).toEqual({ row: 0, column: 2 });
  });
});

describe('drawing a range out', () => {
  const range = { anchor: { row: 2, column: 3 }, head: { row: 1, column: 2 } };

  it('goes the way the mouse went further', () => {
    expect(drawnOut(range, { row: 5, column: 4 })).toEqual({
      anchor: { row: 1, column: 2 },
      head: { row: 5, column: 3 },
    });
    expect(drawnOut(range, { row: 3, column: 0 })).toEqual({
      anchor: { row: 1, column: 0 },
      head: { row: 2, column: 3 },
    });
  });

  it('stays the range while the mouse is on it', () => {
    expect(drawnOut(range, { row: 1, column: 3 })).toEqual({
      anchor: { row: 1, column: 2 },
      head: { row: 2, column: 3 },
    });
    expect(drawnFill(range, { row: 1, column: 3 })).toEqual([]);
  });

  it('repeats the range over what was drawn, also upward', () => {
    const rows = (targets: ReturnType<typeof drawnFill>) => targets.map(({ from, to }) => `${from.row}>${to.row}`);
    const single = { anchor: { row: 1, column: 0 }, head: { row: 2, column: 0 } };
    expect(rows(drawnFill(single, { row: 5, column: 0 }))).toEqual(['1>3', '2>4', '1>5']);
    expect(rows(drawnFill(single, { row: 0, column: 0 }))).toEqual(['2>0']);
  });
});
