import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { rangeText } from '../../lib/views/range-text.ts';
import { scenarioRows } from '../../lib/views/scenario-rows.ts';
import {
  drawnEntries,
  entryCellsIn,
  fillEntries,
  pasteEntries,
  scenariosAcross,
} from '../../lib/views/sheet-gestures.ts';
import { cellAt, headingId, type ShownSheet, sheetSize } from '../../lib/views/shown-sheet.ts';
import { SAMPLE_BOTTLENECK, sampleResult } from './sample-result.ts';
import { DEMO_COLUMNS, DEMO_STATE } from './sheet-of-demo.ts';

const RESULT = sampleResult();
const ROWS = scenarioRows({
  state: DEMO_STATE,
  columns: DEMO_COLUMNS,
  outputs: OUTPUTS,
  shown: { system: 'us', currency: 'USD' },
  computed: () => ({
    outcome: { kind: 'computed', result: RESULT },
    lastResult: RESULT,
    bottleneck: SAMPLE_BOTTLENECK,
    lastBottleneck: SAMPLE_BOTTLENECK,
  }),
});
const SHEET: ShownSheet = {
  rows: ROWS,
  columnIds: ['name', 'chambers:mid', 'pumpArrangement', 'capital', 'bottleneck'],
  entryIds: new Set(DEMO_COLUMNS.map((column) => column.id)),
  isSideways: false,
  labels: new Map(),
};

function range(top: number, left: number, bottom: number, right: number) {
  return { anchor: { row: top, column: left }, head: { row: bottom, column: right } };
}

describe('pasteEntries', () => {
  it('lays a block over rows and columns', () => {
    const { entries, leftOut } = pasteEntries('4\town\r\n5\tone shared\r\n', range(1, 1, 1, 1), SHEET);
    expect(entries).toEqual([
      { scenarioId: 'three-shared', columnId: 'chambers:mid', text: '4' },
      { scenarioId: 'three-shared', columnId: 'pumpArrangement', text: 'own' },
      { scenarioId: 'four-shared', columnId: 'chambers:mid', text: '5' },
      { scenarioId: 'four-shared', columnId: 'pumpArrangement', text: 'one shared' },
    ]);
    expect(leftOut).toBe('');
  });

  it('says what fell on computed columns and off the sheet', () => {
    const { entries, leftOut } = pasteEntries('own\t1\t2\t3\n', range(5, 2, 5, 2), SHEET);
    expect(entries).toHaveLength(1);
    expect(leftOut).toBe(' 2 cells fell on computed columns, 1 cell fell off the sheet.');
  });
});

describe('fillEntries', () => {
  it('repeats the first row downward', () => {
    expect(fillEntries(range(1, 1, 3, 1), 'down', SHEET).map((entry) => [entry.scenarioId, entry.text])).toEqual([
      ['four-shared', '3'],
      ['six-shared', '3'],
    ]);
  });

  it('leaves computed columns alone', () => {
    expect(fillEntries(range(1, 3, 3, 4), 'down', SHEET)).toEqual([]);
  });
});

describe('ranges', () => {
  it('know their entry cells and their scenarios', () => {
    expect(entryCellsIn(range(1, 2, 1, 4), SHEET)).toMatchObject([{ columnId: 'pumpArrangement' }]);
    expect(scenariosAcross(range(3, 0, 2, 4), SHEET)).toEqual(['four-shared', 'six-shared']);
  });

  it('become text that other programs read: plain figures, words of the flag', () => {
    expect(rangeText(SHEET, range(1, 0, 1, 4))).toBe(
      'Three on one pump\t3\tone shared\t100\tPeople: +13 % with a quarter more',
    );
  });

  it('paste back what they copy', () => {
    const text = rangeText(SHEET, range(1, 0, 2, 2));
    expect(pasteEntries(text, range(1, 0, 1, 0), SHEET).entries.map((entry) => entry.text)).toEqual([
      'Three on one pump',
      '3',
      'one shared',
      'Four on one pump',
      '4',
      'one shared',
    ]);
  });
});

describe('the sheet sideways', () => {
  const sideways: ShownSheet = {
    ...SHEET,
    columnIds: ['name', headingId('setUp'), 'chambers:mid', 'pumpArrangement', 'capital'],
    isSideways: true,
    labels: new Map([
      ['name', 'Scenario'],
      [headingId('setUp'), 'Set-up'],
      ['chambers:mid', 'Chambers'],
    ]),
  };

  it('has a line for each column and a column for each scenario, beside the labels', () => {
    expect(sheetSize(sideways)).toEqual({ rows: 5, columns: 7 });
    expect(cellAt(sideways, { row: 2, column: 2 })).toEqual({ row: ROWS[1], columnId: 'chambers:mid' });
    expect(cellAt(sideways, { row: 2, column: 0 })).toBeNull();
    expect(cellAt(sideways, { row: 1, column: 2 })).toBeNull();
    expect(cellAt(sideways, { row: 5, column: 1 })).toBeNull();
  });

  it('copies labels with the figures', () => {
    expect(rangeText(sideways, range(0, 0, 2, 2))).toBe(
      'Scenario\tToday\tThree on one pump\nSet-up\t\t\nChambers\t2\t3',
    );
  });

  it('takes a pasted block as it stands on screen', () => {
    const { entries, leftOut } = pasteEntries('4\t5\nown\town\n1\t2', range(2, 2, 2, 2), sideways);
    expect(entries.map(({ scenarioId, columnId, text }) => `${scenarioId} ${columnId} ${text}`)).toEqual([
      'three-shared chambers:mid 4',
      'four-shared chambers:mid 5',
      'three-shared pumpArrangement own',
      'four-shared pumpArrangement own',
    ]);
    expect(leftOut).toBe(' 2 cells fell on computed columns.');
  });

  it('fills from scenario to scenario, but never from a label', () => {
    expect(fillEntries(range(2, 1, 2, 3), 'right', sideways).map((entry) => entry.text)).toEqual(['2', '2']);
    expect(fillEntries(range(2, 1, 2, 1), 'right', sideways)).toEqual([]);
    expect(scenariosAcross(range(0, 0, 3, 2), sideways)).toEqual(['today', 'three-shared']);
  });
});

describe('drawnEntries', () => {
  it('repeats the drawn cells over those they are drawn out to', () => {
    const entries = drawnEntries(range(1, 1, 2, 1), { row: 5, column: 1 }, SHEET);
    expect(entries.map(({ scenarioId, text }) => `${scenarioId} ${text}`)).toEqual([
      'six-shared 3',
      'six-groups 4',
      'four-candy 3',
    ]);
  });
});
