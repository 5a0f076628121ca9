import { describe, expect, it } from 'vitest';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import { kneeCurve } from '../../lib/insight/knee-curve.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import { type WeekByWeek, weekByWeek } from '../../lib/risk/week-by-week.ts';

/** Goes on until the search is over; the weeks that each turn ran. */
function turns<Value>(memory: ReturnType<typeof plantMemory>, once: () => WeekByWeek<Value>) {
  const weeks: number[] = [];
  for (;;) {
    const before = memory.runs();
    const found = once();
    weeks.push(memory.runs() - before);
    if (found.isWhole) return { value: found.value, weeks };
    if (weeks.length > 100) throw new RangeError('no end after 100 turns');
  }
}

describe('a search week by week', () => {
  it('finds the bottleneck that is found in one go, and runs one week at a turn', () => {
    const memory = plantMemory();
    const search = () => weekByWeek(memory, (simulate) => findBottleneck(DEMO_PLAN, 'today', simulate));
    const { value, weeks } = turns(memory, search);
    expect(value).toEqual(findBottleneck(DEMO_PLAN, 'today', plantMemory(simulateShop).simulate));
    expect(weeks.length).toBeGreaterThan(4);
    expect(Math.max(...weeks)).toBe(1);
  });

  it('is over at once when all its weeks are known', () => {
    const memory = plantMemory();
    const search = () => weekByWeek(memory, (simulate) => kneeCurve(DEMO_PLAN, 'today', 2, simulate));
    const first = turns(memory, search);
    const again = turns(memory, search);
    expect(again.value).toEqual(first.value);
    expect(again.weeks).toEqual([0]);
  });
});
