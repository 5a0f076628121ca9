import { describe, expect, it } from 'vitest';
import { applyEntries, emptyCells } from '../../lib/views/apply-entries.ts';
import { DEMO_COLUMNS, DEMO_STATE, scenarioOf } from './sheet-of-demo.ts';

const COUNT = { scenarioId: 'three-shared', columnId: 'chambers:mid' };

describe('applyEntries', () => {
  it('says how a text was understood', () => {
    const done = applyEntries(DEMO_STATE, [{ ...COUNT, text: '4+4' }], DEMO_COLUMNS);
    expect(done.said).toBe('Three on one pump, mid-size chambers: 8 (understood from "4+4").');
    expect(scenarioOf(done.state.plan, 'three-shared').chambers[0]?.count).toBe(8);
  });

  it('keeps a text that is not understood, with what mends it, and leaves the plan alone', () => {
    const done = applyEntries(DEMO_STATE, [{ ...COUNT, text: 'lots' }], DEMO_COLUMNS);
    expect(done.state.plan).toBe(DEMO_STATE.plan);
    expect(done.state.rejected).toMatchObject([{ ...COUNT, text: 'lots', problem: '"lots" cannot be read.' }]);
    expect(done.said).toContain('Write a number');
  });

  it('takes up the good cells of a block and marks the bad ones', () => {
    const done = applyEntries(
      DEMO_STATE,
      [
        { ...COUNT, text: '5' },
        { ...COUNT, columnId: 'pump', text: 'Gigantic' },
        { ...COUNT, columnId: 'pumpArrangement', text: 'own' },
      ],
      DEMO_COLUMNS,
    );
    expect([done.taken, done.rejected]).toEqual([2, 1]);
    expect(done.said).toBe('2 cells changed, 1 not understood: they are marked.');
    expect(scenarioOf(done.state.plan, 'three-shared')).toMatchObject({ pumpArrangement: 'own', pump: 'good' });
  });

  it('forgets a bad text once a good one takes its place', () => {
    const bad = applyEntries(DEMO_STATE, [{ ...COUNT, text: 'lots' }], DEMO_COLUMNS);
    const good = applyEntries(bad.state, [{ ...COUNT, text: '4' }], DEMO_COLUMNS);
    expect(good.state.rejected).toEqual([]);
  });

  it('does not touch other scenarios', () => {
    const done = applyEntries(DEMO_STATE, [{ ...COUNT, text: '5' }], DEMO_COLUMNS);
    expect(done.state.plan.scenarios[0]).toBe(DEMO_STATE.plan.scenarios[0]);
  });
});

describe('emptyCells', () => {
  it('drops a text that was not understood before it touches the value', () => {
    const bad = applyEntries(DEMO_STATE, [{ ...COUNT, text: 'lots' }], DEMO_COLUMNS);
    const done = emptyCells(bad.state, [COUNT], DEMO_COLUMNS);
    expect(done.state.rejected).toEqual([]);
    expect(done.state.plan).toBe(DEMO_STATE.plan);
  });

  it('sets a value back where it can, and says where it cannot', () => {
    const cells = [
      { scenarioId: 'three-shared', columnId: 'purchaseMonth' },
      { scenarioId: 'three-shared', columnId: 'name' },
    ];
    const done = emptyCells(DEMO_STATE, cells, DEMO_COLUMNS);
    expect(scenarioOf(done.state.plan, 'three-shared').purchaseMonth).toBe(0);
    expect(done.said).toBe('1 cell set back. 1 cell cannot be empty.');
  });
});
