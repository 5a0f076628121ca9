import { describe, expect, it } from 'vitest';
import { passesFilter } from '../../lib/views/row-filter.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { USUAL_LOOK } from '../../lib/views/sheet-look.ts';
import { shownRows } from '../../lib/views/shown-rows.ts';
import { DEMO_ROWS } from './sheet-of-demo.ts';

const PAYBACKS = ['', '24', '9', '', '100', '24'];
const ROWS: readonly ScenarioRow[] = DEMO_ROWS.map((row, at) => {
  const plainText = PAYBACKS[at] ?? '';
  return { ...row, outputs: { payback: { text: plainText === '' ? '—' : plainText, plainText } } };
});

function idsIn(change: Partial<typeof USUAL_LOOK>): string[] {
  return shownRows(ROWS, { ...USUAL_LOOK, ...change }).map((row) => row.id);
}

describe('shownRows', () => {
  it('are those of the plan until somebody sorts or filters', () => {
    expect(shownRows(ROWS, USUAL_LOOK)).toBe(ROWS);
  });

  it('are sorted by figures, today on top, ties in the order of the plan, empty cells last', () => {
    expect(idsIn({ sort: { columnId: 'payback', way: 'rising' } })).toEqual([
      'today',
      'four-shared',
      'three-shared',
      'four-candy',
      'six-groups',
      'six-shared',
    ]);
    expect(idsIn({ sort: { columnId: 'payback', way: 'falling' } })).toEqual([
      'today',
      'six-groups',
      'three-shared',
      'four-candy',
      'four-shared',
      'six-shared',
    ]);
  });

  it('are sorted by words', () => {
    expect(idsIn({ sort: { columnId: 'name', way: 'rising' } })).toEqual([
      'today',
      'four-shared',
      'four-candy',
      'six-shared',
      'six-groups',
      'three-shared',
    ]);
  });

  it('are filtered, and today always stays', () => {
    expect(idsIn({ filters: { payback: '<50' } })).toEqual(['today', 'three-shared', 'four-shared', 'four-candy']);
    expect(idsIn({ filters: { payback: '<50', name: 'candy' } })).toEqual(['today', 'four-candy']);
    expect(idsIn({ filters: { payback: '>1000' } })).toEqual(['today']);
  });

  it('are as they were when the column is gone', () => {
    expect(idsIn({ sort: { columnId: 'gone', way: 'rising' } })).toEqual(ROWS.map((row) => row.id));
  });
});

describe('passesFilter', () => {
  const cell = { text: '1,234', plainText: '1234.4' };
  it.each([
    ['>1,000', true],
    ['> $1234.4', false],
    ['>=1234.4', true],
    ['<= 1234', false],
    ['=1234.4', true],
    ['1000..2000', true],
    ['−5 .. 5', false],
    ['1,2', true],
    ['234.4', true],
    ['soup', false],
  ])('%s', (filter, passes) => {
    expect(passesFilter(cell, filter)).toBe(passes);
  });

  it('looks for words whatever their letters, and takes an odd comparison as words', () => {
    expect(passesFilter({ text: 'Good pump', plainText: 'Good pump' }, 'good')).toBe(true);
    expect(passesFilter({ text: '> old', plainText: '> old' }, '> old')).toBe(true);
    expect(passesFilter({ text: '', plainText: '' }, '<5')).toBe(false);
  });
});
