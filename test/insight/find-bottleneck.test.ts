import { describe, expect, it } from 'vitest';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import type { Bottleneck, Resource } from '../../lib/insight/insight-types.ts';
import { KNEE_THRESHOLD } from '../../lib/insight/knee-threshold.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import { computed } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';
import type { Loose } from '../plan/edited-demo.ts';

function found(plan: Plan, scenarioId = 'two'): Bottleneck {
  const bottleneck = findBottleneck(plan, scenarioId);
  if (!bottleneck) throw new Error(`${scenarioId} should run`);
  return bottleneck;
}

function reliefOf(bottleneck: Bottleneck, resource: Resource) {
  return bottleneck.reliefs.find((relief) => relief.resource === resource);
}

/** Six tight chambers on small pumps, people always there. */
function sixSmall(arrangement: string): Plan {
  return smallPlan((document) => {
    const [scenario] = document.scenarios.splice(1, 1);
    const chambers = [{ chamber: 'mid', count: 6 }];
    document.scenarios.push({ ...scenario, chambers, pump: 'small', pumpArrangement: arrangement, pattern: 'always' });
    document.crew.patterns.push(ALWAYS);
    document.chambers[0].leak = { value: 0.014, unit: 'Pa·m³/s', origin: 'guess' };
  });
}

const ALWAYS: Loose = {
  id: 'always',
  name: 'Day and night',
  shifts: [{ weekdays: [0, 1, 2, 3, 4, 5, 6], start: 0, end: 24, people: 6 }],
};

const SHARED = found(sixSmall('shared'));
const OWN = found(sixSmall('own'));
const TWO = found(smallPlan());

describe('six chambers on one small pump', () => {
  it('jam on it', () => {
    expect(SHARED.sharedPumpJams).toBe(true);
    expect(SHARED.resource).toBe('pump');
    expect(reliefOf(SHARED, 'pump')?.gain).toBeGreaterThan(0);
  });

  it('give less each than a chamber alone, and the last one hardly adds', () => {
    expect(SHARED.outputPerChamber).toBeLessThan(0.9);
    expect(SHARED.lastChamberAdds).toBeLessThan(KNEE_THRESHOLD);
    expect(SHARED.lastChamberAdds).toBeLessThan(SHARED.outputPerChamber ?? 0);
  });
});

describe('chambers with pumps of their own', () => {
  it('are never said to jam on a shared one', () => {
    for (const bottleneck of [OWN, found(smallPlan(), 'today')]) {
      expect(bottleneck).toMatchObject({ sharedPumpJams: false, outputPerChamber: null, lastChamberAdds: null });
    }
  });

  it('gain less from a larger pump than those that share one', () => {
    expect(reliefOf(OWN, 'pump')?.gainShare).toBeLessThan(reliefOf(SHARED, 'pump')?.gainShare ?? 0);
  });
});

describe('two on one good pump', () => {
  it('do not jam: the second adds nearly what it would with its own', () => {
    expect(TWO.sharedPumpJams).toBe(false);
    expect(TWO.lastChamberAdds).toBeGreaterThan(KNEE_THRESHOLD);
    expect(TWO.outputPerChamber).toBeLessThanOrEqual(1);
  });
});

describe('findBottleneck', () => {
  it('looks at every resource, and names the one whose relief brings most', () => {
    for (const bottleneck of [SHARED, OWN, TWO]) {
      expect(bottleneck.reliefs.map((relief) => relief.resource)).toEqual([
        'chambers',
        'pump',
        'hose',
        'trap',
        'heater',
        'freezer',
        'crew',
        'power',
        'demand',
      ]);
      const best = Math.max(...bottleneck.reliefs.map((relief) => relief.gainShare ?? 0));
      expect(bottleneck.gainShare).toBeCloseTo(best, 12);
      expect(reliefOf(bottleneck, bottleneck.resource as Resource)?.gainShare).toBe(best);
    }
  });

  it('gives each gain as a share of what is left over now', () => {
    const { contributionPerWeek } = computed(smallPlan(), 'two').cost;
    for (const { gain, gainShare } of TWO.reliefs) {
      if (gain !== null) expect(gainShare).toBeCloseTo(gain / contributionPerWeek, 12);
    }
  });

  it('has no gain for what the week knows no limit of, and the use of the supply beside it', () => {
    expect(reliefOf(TWO, 'power')).toMatchObject({ gain: null, gainShare: null });
    expect(reliefOf(TWO, 'power')?.utilisation).toBeCloseTo((1.25 * (2 * 16 + 550 / (240 * 0.8))) / 125, 9);
    expect(reliefOf(TWO, 'demand')).toEqual({ resource: 'demand', utilisation: null, gain: null, gainShare: null });
    expect(reliefOf(TWO, 'freezer')).toEqual({ resource: 'freezer', utilisation: null, gain: null, gainShare: null });
  });

  it('is the same every time', () => {
    expect(found(smallPlan())).toEqual(TWO);
  });

  it('names the market where nothing more is sold', () => {
    const few = found(
      smallPlan((document) => {
        document.products[0].weeklyDemand = { value: 6, unit: 'kg/week', origin: 'guess' };
      }),
    );
    expect(few.resource).toBe('demand');
    expect(few.gainShare).toBeGreaterThan(0.1);
  });

  it('finds the jam of a shop that earns less than it spends too, and measures it by the sales', () => {
    const poor = smallPlan((document) => {
      document.products[0].price = { value: 60, unit: 'money/kg', origin: 'guess' };
      document.crew.guaranteed = true;
    });
    const { contributionPerWeek, salesPerWeek } = computed(poor, 'today').cost;
    expect(contributionPerWeek).toBeLessThan(0);
    const jam = found(poor, 'today');
    const relief = reliefOf(jam, jam.resource as Resource);
    expect(relief?.gainShare).toBeNull();
    expect(jam.gainShare).toBeCloseTo((relief?.gain ?? 0) / salesPerWeek, 12);
    expect(jam.gainShare).toBeGreaterThan(0.005);
  });

  it('is null when the scenario cannot run', () => {
    const overfull = smallPlan((document) => {
      document.chambers[0].trapCapacity.value = 4;
    });
    expect(findBottleneck(overfull, 'two')).toBeNull();
    expect(() => findBottleneck(overfull, 'gone')).toThrow(RangeError);
  });

  it('runs no week again for an edit that is about money alone', () => {
    const memory = plantMemory();
    const first = findBottleneck(smallPlan(), 'two', memory.simulate);
    const runs = memory.runs();
    const dearer = smallPlan((document) => {
      document.crew.wage.value *= 2;
    });
    expect(runs).toBeGreaterThan(5);
    expect(findBottleneck(dearer, 'two', memory.simulate)).toEqual(findBottleneck(dearer, 'two'));
    expect(memory.runs()).toBe(runs);
    expect(first).toEqual(TWO);
  });
});
