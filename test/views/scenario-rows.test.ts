import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { Finding } from '../../lib/result.ts';
import { applyEntries } from '../../lib/views/apply-entries.ts';
import { cellNote } from '../../lib/views/cell-note.ts';
import { previewEntry } from '../../lib/views/preview-entry.ts';
import { type ComputedScenario, NOTHING_COMPUTED, scenarioRows } from '../../lib/views/scenario-rows.ts';
import { sheetColumns } from '../../lib/views/sheet-columns.ts';
import type { SheetState } from '../../lib/views/sheet-state.ts';
import { SAMPLE_BOTTLENECK, sampleResult } from './sample-result.ts';
import { DEMO_COLUMNS, DEMO_STATE } from './sheet-of-demo.ts';

const US = { system: 'us', currency: 'USD' } as const;
const RESULT = sampleResult();
const DONE: ComputedScenario = {
  outcome: { kind: 'computed', result: RESULT },
  lastResult: RESULT,
  bottleneck: SAMPLE_BOTTLENECK,
  lastBottleneck: SAMPLE_BOTTLENECK,
};
const FINDING: Finding = { severity: 'error', field: 'x', value: '', problem: 'It cannot run.', remedy: 'Change it.' };

function rowsWith(computed: ComputedScenario, state: SheetState = DEMO_STATE) {
  return scenarioRows({ state, columns: DEMO_COLUMNS, outputs: OUTPUTS, shown: US, computed: () => computed });
}

function secondRow(computed: ComputedScenario, state?: SheetState) {
  const row = rowsWith(computed, state)[1];
  if (!row) throw new Error('the demo has one row only');
  return row;
}

describe('scenarioRows', () => {
  it('have today first', () => {
    expect(rowsWith(DONE).map((row) => row.isToday)).toEqual([true, false, false, false, false, false]);
  });

  it('show every output of the register, in the user’s units', () => {
    const { outputs } = secondRow(DONE);
    expect(Object.keys(outputs)).toEqual(OUTPUTS.map((output) => output.id));
    expect(outputs.dryOut).toEqual({ text: '44.1', plainText: '44.09245244' });
    expect(outputs['cost.total']?.text).toBe('100');
    expect(outputs.payback?.text).toBe('1.7');
  });

  it('are fresh when the figures are of the row as it stands', () => {
    expect(secondRow(DONE)).toMatchObject({ state: 'fresh', isFlagFresh: true, flag: { title: 'People' } });
  });

  it('keep the last figures while new ones are worked out', () => {
    const row = secondRow({ ...DONE, outcome: null, bottleneck: undefined });
    expect(row).toMatchObject({ state: 'working', isFlagFresh: false, flag: { title: 'People' } });
    expect(row.outputs['cost.total']?.text).toBe('100');
  });

  it('are empty before anything was worked out', () => {
    const row = secondRow(NOTHING_COMPUTED);
    expect(row).toMatchObject({ state: 'working', flag: null });
    expect(row.outputs['cost.total']?.text).toBe('');
  });

  it('are held up by an entry that was not understood, and say so', () => {
    const entry = { scenarioId: 'three-shared', columnId: 'chambers:mid', text: 'lots' };
    const { state } = applyEntries(DEMO_STATE, [entry], DEMO_COLUMNS);
    const row = secondRow(DONE, state);
    expect(row.state).toBe('held');
    expect(row.entries['chambers:mid']).toMatchObject({ text: 'lots', plainText: 'lots' });
    expect(row.messages[0]?.problem).toBe('Mid-size chambers "lots": "lots" cannot be read.');
    expect(rowsWith(DONE, state)[2]?.state).toBe('fresh');
  });

  it('are held up by what the engine refuses, and keep the last figures', () => {
    const refused = { kind: 'refused', scenarioId: 'x', name: 'x', findings: [FINDING] } as const;
    const row = secondRow({ ...DONE, outcome: refused, bottleneck: null });
    expect(row.state).toBe('held');
    expect(row.messages).toEqual([{ severity: 'error', problem: 'It cannot run.', remedy: 'Change it.' }]);
    expect(row.outputs['cost.total']?.text).toBe('100');
  });

  it('pass on warnings without being held up', () => {
    const warned = sampleResult({ warnings: [{ ...FINDING, severity: 'warning' }] });
    const row = secondRow({ ...DONE, outcome: { kind: 'computed', result: warned }, lastResult: warned });
    expect(row).toMatchObject({ state: 'fresh', messages: [{ severity: 'warning', problem: 'It cannot run.' }] });
  });
});

describe('sheetColumns', () => {
  const columns = sheetColumns(DEMO_COLUMNS, OUTPUTS, US);

  it('stand in the order of the groups', () => {
    const groups = columns.map((column) => column.group).filter((group, at, all) => group !== all[at - 1]);
    expect(groups).toEqual([
      'setUp',
      'throughput',
      'vacuum',
      'cost',
      'capital',
      'return',
      'lender',
      'risk',
      'bottleneck',
    ]);
  });

  it('have ids of their own, and something in view in every group', () => {
    expect(new Set(columns.map((column) => column.id)).size).toBe(columns.length);
    for (const group of new Set(columns.map((column) => column.group))) {
      expect(
        columns.some((column) => column.group === group && column.isHeadline),
        group,
      ).toBe(true);
    }
  });
});

describe('cellNote', () => {
  const columns = sheetColumns(DEMO_COLUMNS, OUTPUTS, US);
  const note = (columnId: string, state?: SheetState) =>
    cellNote(rowsWith(DONE, state), columns, { scenarioId: 'three-shared', columnId });

  it('says what an entry means and all that stands in the cell', () => {
    expect(note('pumpArrangement')).toMatchObject({ label: 'Pumps', value: 'one shared', fault: '' });
    expect(note('mix')?.value).toContain('Sweetcorn');
  });

  it('says how an output is worked out', () => {
    expect(note('cost.total')).toMatchObject({ value: '$100' });
    expect(note('cost.total')?.words).toContain('Worked out as: ingredients + packaging');
    expect(note('bottleneck')?.value).toBe('People: +13 % with a quarter more');
  });

  it('says what is wrong and what mends it', () => {
    const entry = { scenarioId: 'three-shared', columnId: 'chambers:mid', text: 'lots' };
    const { state } = applyEntries(DEMO_STATE, [entry], DEMO_COLUMNS);
    expect(note('chambers:mid', state)?.fault).toMatch(/cannot be read\. Write a number/);
  });

  it('has nothing to say of no cell', () => {
    expect(cellNote(rowsWith(DONE), columns, null)).toBeNull();
    expect(note('no such column')).toBeNull();
  });
});

describe('previewEntry', () => {
  const preview = (columnId: string, text: string) =>
    previewEntry(DEMO_STATE, DEMO_COLUMNS, { scenarioId: 'three-shared', columnId, text });

  it('says what is understood while it is typed', () => {
    expect(preview('purchaseMonth', '1 year')).toEqual({ isGood: true, words: '= 12 months' });
    expect(preview('extraCapital', '3*4500+200')).toEqual({ isGood: true, words: '= $13,700' });
  });

  it('says what is wrong while it is typed', () => {
    expect(preview('chambers:mid', '99')).toMatchObject({ isGood: false });
  });

  it('adds nothing to what is plain, or not yet there', () => {
    expect(preview('purchaseMonth', '4')).toBeNull();
    expect(preview('purchaseMonth', ' ')).toBeNull();
  });
});
