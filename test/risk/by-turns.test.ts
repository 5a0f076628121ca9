import { describe, expect, it } from 'vitest';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import { kneeCurve } from '../../lib/insight/knee-curve.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import { byTurns, type Turn } from '../../lib/risk/by-turns.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';

/** Takes turns until the search is over. */
function takeTurns<Value>(turn: () => Turn<Value>) {
  for (let turns = 1; turns < 200; turns += 1) {
    const found = turn();
    if (found.isWhole) return { value: found.value, turns };
  }
  throw new RangeError('no end after 200 turns');
}

describe('a search by turns', () => {
  it('finds the bottleneck that is found in one go, with one run for each shop', () => {
    const whole = plantMemory(simulateShop);
    const memory = plantMemory();
    const takeTurn = byTurns(memory);
    const found = takeTurns(() => takeTurn((simulate) => findBottleneck(DEMO_PLAN, 'today', simulate)));
    expect(found.value).toEqual(findBottleneck(DEMO_PLAN, 'today', whole.simulate));
    expect(memory.runs()).toBe(whole.runs());
    expect(found.turns).toBeGreaterThan(2 * memory.runs());
  });

  it('is over at once when all its shops are known', () => {
    const takeTurn = byTurns(plantMemory());
    const turn = () => takeTurn((simulate) => kneeCurve(DEMO_PLAN, 'today', 2, simulate));
    const first = takeTurns(turn);
    const again = takeTurns(turn);
    expect(first.turns).toBeGreaterThan(2);
    expect(again).toEqual({ value: first.value, turns: 1 });
  });

  it('goes on with either of two searches that take turns', () => {
    const takeTurn = byTurns(plantMemory());
    const knee = () => takeTurn((simulate) => kneeCurve(DEMO_PLAN, 'today', 2, simulate));
    const bottleneck = () => takeTurn((simulate) => findBottleneck(DEMO_PLAN, 'today', simulate));
    const both = takeTurns(() => {
      const [a, b] = [knee(), bottleneck()];
      return a.isWhole && b.isWhole ? { isWhole: true, value: [a.value, b.value] } : { isWhole: false };
    });
    const { simulate } = plantMemory();
    expect(both.value).toEqual([
      kneeCurve(DEMO_PLAN, 'today', 2, simulate),
      findBottleneck(DEMO_PLAN, 'today', simulate),
    ]);
  });

  it('says of a shop that cannot run what is said in one go', () => {
    const pumpless = {
      ...DEMO_PLAN,
      pumps: DEMO_PLAN.pumps.map((pump) => ({ ...pump, ultimate: { ...pump.ultimate, value: 5000 } })),
    };
    const takeTurn = byTurns(plantMemory());
    const found = takeTurns(() => takeTurn((simulate) => findBottleneck(pumpless, 'today', simulate)));
    expect(found.value).toBeNull();
    expect(findBottleneck(pumpless, 'today')).toBeNull();
  });
});
