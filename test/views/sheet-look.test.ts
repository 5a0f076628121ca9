import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import {
  arrangedColumns,
  draggedColumns,
  isAlwaysShown,
  isHidden,
  isVisible,
  movedColumn,
  withColumn,
} from '../../lib/views/arrange-columns.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { sheetColumns } from '../../lib/views/sheet-columns.ts';
import {
  readLook,
  type SheetLook,
  USUAL_LOOK,
  withAllRows,
  withFilter,
  writeLook,
} from '../../lib/views/sheet-look.ts';
import { DEMO_COLUMNS } from './sheet-of-demo.ts';

const COLUMNS = sheetColumns(DEMO_COLUMNS, OUTPUTS, { system: 'us', currency: 'USD' });
const IDS = COLUMNS.map((column) => column.id);

function column(id: string): SheetColumn {
  const found = COLUMNS.find((candidate) => candidate.id === id);
  if (!found) throw new RangeError(`no column "${id}"`);
  return found;
}

function idsIn(look: SheetLook): string[] {
  return arrangedColumns(COLUMNS, look).map(({ id }) => id);
}

describe('a look at the sheet', () => {
  const look: SheetLook = {
    isWhole: true,
    isSideways: true,
    order: ['name', 'mix'],
    shown: { hose: true, capital: false },
    sort: { columnId: 'payback', way: 'falling' },
    filters: { batches: '>5' },
  };

  it('comes back as it was kept', () => {
    expect(readLook(writeLook(look))).toEqual(look);
  });

  it.each(['', 'scribble', '[]', 'null', '{"order":{"length":9e9},"shown":[1],"sort":"up","filters":{"a":1}}'])(
    'is the usual one when %s was kept',
    (text) => {
      expect(readLook(text)).toEqual(USUAL_LOOK);
    },
  );

  it('takes no names that every object carries', () => {
    expect(readLook('{"shown":{"__proto__":true,"constructor":true,"hose":true}}').shown).toEqual({ hose: true });
  });

  it('gains and loses filters and the sorting', () => {
    expect(withFilter(look, 'hose', ' wide ').filters).toEqual({ batches: '>5', hose: 'wide' });
    expect(withFilter(look, 'batches', ' ').filters).toEqual({});
    expect(withAllRows(look)).toMatchObject({ sort: null, filters: {} });
  });
});

describe('columns', () => {
  it('are as usual until somebody wishes otherwise', () => {
    expect(arrangedColumns(COLUMNS, USUAL_LOOK)).toBe(COLUMNS);
    expect(isVisible(column('hose'), USUAL_LOOK)).toBe(column('hose').isHeadline);
    expect(isVisible(column('hose'), { ...USUAL_LOOK, isWhole: true })).toBe(true);
  });

  it('are shown and hidden one by one, and what is usual is not written down', () => {
    const hidden = withColumn(USUAL_LOOK, column('payback'), false);
    expect(isHidden(column('payback'), hidden)).toBe(true);
    expect(withColumn(hidden, column('payback'), true)).toEqual(USUAL_LOOK);
    const shown = withColumn(USUAL_LOOK, column('hose'), true);
    expect(isAlwaysShown(column('hose'), shown)).toBe(true);
    expect(isVisible(column('name'), { ...USUAL_LOOK, shown: { name: false } })).toBe(true);
  });

  it('move past their visible neighbour, inside their group', () => {
    const look = { ...USUAL_LOOK, isWhole: true };
    const moved = movedColumn(COLUMNS, look, 'pump', 1);
    const ids = moved ? idsIn(moved) : [];
    expect(ids.indexOf('pump')).toBe(IDS.indexOf('pump') + 1);
    expect([...ids].sort()).toEqual([...IDS].sort());
    const back = moved && movedColumn(COLUMNS, moved, 'pump', -1);
    expect(back && idsIn(back)).toEqual(IDS);
  });

  it('do not leave their group, nor pass the name', () => {
    const look = { ...USUAL_LOOK, isWhole: true };
    expect(movedColumn(COLUMNS, look, 'extraCapital', 1)).toBeNull();
    expect(movedColumn(COLUMNS, look, 'chambers:mid', -1)).toBeNull();
    expect(movedColumn(COLUMNS, look, 'name', 1)).toBeNull();
    expect(movedColumn(COLUMNS, look, 'gone', 1)).toBeNull();
  });

  it('jump over neighbours that are out of sight', () => {
    const moved = movedColumn(COLUMNS, USUAL_LOOK, 'pumpArrangement', 1);
    const seen = COLUMNS.filter((one) => one.group === 'setUp' && one.isHeadline).map(({ id }) => id);
    const after = (moved ? arrangedColumns(COLUMNS, moved) : [])
      .filter((one) => one.group === 'setUp' && one.isHeadline)
      .map(({ id }) => id);
    const at = seen.indexOf('pumpArrangement');
    expect(after.indexOf('pumpArrangement')).toBe(at + 1);
  });

  it('follow a drag, and those out of sight keep their places', () => {
    const seen = ['name', 'mix', 'chambers:mid', 'pumpArrangement'];
    const look = draggedColumns(COLUMNS, USUAL_LOOK, seen);
    const after = idsIn(look);
    expect(after.filter((id) => seen.includes(id))).toEqual(seen);
    expect(after.indexOf('hose')).toBe(IDS.indexOf('hose'));
    expect(draggedColumns(COLUMNS, look, seen)).toBe(look);
  });

  it('that are new since the order was kept stand where they usually do', () => {
    const order = [...IDS].reverse().filter((id) => id !== 'hose');
    const after = idsIn({ ...USUAL_LOOK, order });
    expect(after[0]).toBe('name');
    expect(after).toHaveLength(IDS.length);
    const before = IDS[IDS.indexOf('hose') - 1] ?? '';
    expect(after.indexOf('hose')).toBe(after.indexOf(before) + 1);
  });

  it('stay together by group whatever order was kept', () => {
    const order = COLUMNS.filter((_, at) => at % 2 === 0).map(({ id }) => id);
    const groups = arrangedColumns(COLUMNS, { ...USUAL_LOOK, order }).map(({ group }) => group);
    const runs = groups.filter((group, at) => group !== groups[at - 1]);
    expect(runs).toHaveLength(new Set(groups).size);
  });
});
