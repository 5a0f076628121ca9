import { describe, expect, it } from 'vitest';
import { scenarioEquipment, toBuy, todayOf } from '../../lib/model/scenario-equipment.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';

const TODAY = DEMO_PLAN.scenarios[0] as Scenario;

function equipment(change: Partial<Scenario>) {
  return scenarioEquipment({ ...TODAY, ...change });
}

function five(pumpArrangement: Scenario['pumpArrangement'], groupSize = 2) {
  return equipment({ chambers: [{ chamber: 'mid', count: 5 }], pumpArrangement, groupSize });
}

describe('scenarioEquipment', () => {
  it.each([
    ['own', 2, 5, 0],
    ['shared', 2, 1, 5],
    ['groups', 2, 3, 4],
    ['groups', 3, 2, 5],
    ['groups', 4, 2, 4],
    ['groups', 5, 1, 5],
    ['groups', 9, 1, 5],
    ['groups', 1, 5, 0],
  ] as const)(
    'five chambers, %s of %d: %d pumps, %d chambers on a manifold',
    (arrangement, size, pumps, onManifold) => {
      const found = five(arrangement, size);
      expect(found.pumpCount).toBe(pumps);
      expect(found.pumps.get(TODAY.pump)).toBe(pumps);
      expect(found.onManifold).toBe(onManifold);
      expect(found.chamberCount).toBe(5);
      expect(found.hoses.get(TODAY.hose)).toBe(5);
    },
  );

  it('puts a single chamber on no manifold', () => {
    expect(equipment({ chambers: [{ chamber: 'mid', count: 1 }], pumpArrangement: 'shared' }).onManifold).toBe(0);
  });

  it('counts a roughing pump as one pump more, of its own type or of the same', () => {
    const rough = { startPractice: 'roughing', pumpArrangement: 'shared' } as const;
    expect([...equipment({ ...rough, pump: 'good', roughingPump: 'small' }).pumps]).toEqual([
      ['good', 1],
      ['small', 1],
    ]);
    expect([...equipment({ ...rough, pump: 'small', roughingPump: 'small' }).pumps]).toEqual([['small', 2]]);
    expect([...equipment({ startPractice: 'isolate', roughingPump: 'small', pump: 'good' }).pumps]).toEqual([
      ['good', 2],
    ]);
  });

  it('keeps chamber types apart and leaves out those with none', () => {
    const chambers = [
      { chamber: 'mid', count: 2 },
      { chamber: 'large', count: 0 },
    ];
    expect([...equipment({ chambers }).chambers]).toEqual([['mid', 2]]);
  });
});

describe('toBuy', () => {
  it('is what is needed beyond what is there, and never less than nothing', () => {
    const now = new Map([
      ['mid', 2],
      ['old', 3],
    ]);
    const then = new Map([
      ['mid', 5],
      ['old', 1],
      ['large', 1],
    ]);
    expect([...toBuy(now, then)]).toEqual([
      ['mid', 3],
      ['large', 1],
    ]);
  });
});

describe('todayOf', () => {
  it('is the first scenario; a plan without any is an error', () => {
    expect(todayOf(DEMO_PLAN).id).toBe('today');
    expect(() => todayOf({ ...DEMO_PLAN, scenarios: [] })).toThrow(RangeError);
  });
});
