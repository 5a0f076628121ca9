import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { gridAction, moveAfterEntry } from '../../../lib/views/fields/grid-keys.ts';
import { filledFields, gridText, pastedFields, rangeAfter } from '../../../lib/views/fields/grid-range.ts';
import { blockOf, stateOf } from './demo-blocks.ts';

const { grid } = blockOf(stateOf(DEMO_PLAN), 'pumps');
const PRICE = grid.rows.findIndex((row) => row.key === 'price');
const PRICES = { anchor: { row: PRICE, column: 0 }, head: { row: PRICE + 1, column: 1 } };
const FIRST = { anchor: PRICES.anchor, head: PRICES.anchor };

describe('ranges of a grid', () => {
  it('are copied as plain figures', () => {
    expect(gridText(grid, PRICES)).toBe('900\t3400\n4\t8');
  });

  it('take a block from their top left on', () => {
    const pasted = pastedFields(grid, FIRST, '1,000\t"3,600"\n5\t9');
    expect(pasted.entries.map(({ place, text }) => [place, text])).toEqual([
      ['pumps.@small.price', '1,000'],
      ['pumps.@good.price', '3,600'],
      ['pumps.@small.usefulLife', '5'],
      ['pumps.@good.usefulLife', '9'],
    ]);
    expect(pastedFields(grid, FIRST, '1\t2\t3').leftOut).toBe(' 1 cell fell off the sheet.');
  });

  it('are filled from their first column', () => {
    expect(filledFields(grid, PRICES, 'right').map(({ place, text }) => [place, text])).toEqual([
      ['pumps.@good.price', '900'],
      ['pumps.@good.usefulLife', '4'],
    ]);
  });

  it('are gone about by keys, and never left', () => {
    const last = { row: grid.rows.length - 1, column: 1 };
    expect(rangeAfter(grid, FIRST, { kind: 'goTo', end: 'gridEnd' }).head).toEqual(last);
    expect(rangeAfter(grid, FIRST, { kind: 'goTo', end: 'rowEnd' }).head).toEqual({ row: PRICE, column: 1 });
    expect(rangeAfter(grid, FIRST, { kind: 'move', row: -10_000, column: 0 }).head).toEqual({ row: 0, column: 0 });
    expect(rangeAfter(grid, FIRST, { kind: 'selectAll' }).head).toEqual(last);
  });
});

describe('keys of a grid', () => {
  const plain = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

  it.each([
    [{ key: 'ArrowDown' }, { kind: 'move', row: 1, column: 0 }],
    [
      { key: 'ArrowUp', ctrlKey: true },
      { kind: 'move', row: -10_000, column: -0 },
    ],
    [
      { key: 'ArrowDown', shiftKey: true },
      { kind: 'stretch', row: 1, column: 0 },
    ],
    [{ key: 'Enter' }, { kind: 'open', text: null }],
    [{ key: 'F2' }, { kind: 'open', text: null }],
    [{ key: '7' }, { kind: 'open', text: '7' }],
    [
      { key: 'd', ctrlKey: true },
      { kind: 'fill', way: 'down' },
    ],
    [{ key: 'Delete' }, { kind: 'empty' }],
    [{ key: 'Tab' }, null],
    [{ key: 'c', ctrlKey: true }, null],
    [{ key: 'z', ctrlKey: true }, null],
    [{ key: 'Delete', altKey: true }, null],
  ])('%j asks for %j', (stroke, action) => {
    const found = gridAction({ ...plain, ...stroke });
    expect(found && { ...found, ...('column' in found ? { column: found.column + 0 } : {}) }).toEqual(
      action && { ...action, ...('column' in action ? { column: (action.column ?? 0) + 0 } : {}) },
    );
  });

  it('an open cell is taken up by Enter and Tab', () => {
    expect(moveAfterEntry('Enter', false)).toEqual({ row: 1, column: 0 });
    expect(moveAfterEntry('Tab', true)).toEqual({ row: 0, column: -1 });
    expect(moveAfterEntry('a', false)).toBeNull();
    expect(moveAfterEntry('ArrowRight', false)).toBeNull();
    expect(moveAfterEntry('ArrowRight', false, true)).toEqual({ row: 0, column: 1 });
    expect(moveAfterEntry('ArrowRight', true, true)).toBeNull();
  });
});
