import { describe, expect, it } from 'vitest';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import { taskTime, WEEK } from '../../lib/plant/crew.ts';
import { chamberFreezingTime } from '../../lib/plant/freezing-stage.ts';
import { dryLoneLoad } from '../../lib/plant/lone-load.ts';
import type { LaneSpan, Phase } from '../../lib/plant/report-types.ts';
import type { ProductSpec, ShopSpec } from '../../lib/plant/types.ts';
import { reportOf } from './run-shop.ts';
import { CANDY, CHAMBER, DAY_CREW, FRUIT, GOOD_PUMP, mixOf, SOUP, sharedShop, UNIT } from './sample-shop.ts';

const ORDER: readonly Phase[] = [
  'waitingForFreezer',
  'idleNoDemand',
  'waitingToLoad',
  'loading',
  'freezing',
  'waitingForPump',
  'pumpDown',
  'primary',
  'secondary',
  'hold',
  'unloading',
  'defrost',
  'waitingToClean',
  'cleaning',
];

function lanesOf(change: Partial<ShopSpec>, count = 2): readonly LaneSpan[] {
  return reportOf(sharedShop(count, GOOD_PUMP, { warmUpWeeks: 1, measuredWeeks: 1, ...change })).week.lanes;
}

describe('the phases of a batch', () => {
  it.each([
    ['a day crew', { crew: DAY_CREW }],
    ['a freezer', { freezer: { temperature: 241.15, coefficient: 10, capacity: 14, power: 300 }, mix: mixOf(SOUP) }],
    ['candy', { mix: mixOf(CANDY) }],
    ['a small market', { mix: [{ product: FRUIT, share: 1, weeklyCap: 6 }] }],
  ] as const)('follow each other in one order, with %s', (_, change) => {
    for (const chamber of [0, 1]) {
      const lane = lanesOf(change).filter((span) => span.chamber === chamber);
      lane.forEach(({ phase }, i) => {
        const before = lane[i - 1];
        if (!before) return;
        const forward = ORDER.indexOf(phase) > ORDER.indexOf(before.phase);
        const again = before.phase === 'cleaning' || ORDER.indexOf(phase) < 3;
        expect(forward || again, `${before.phase} then ${phase}`).toBe(true);
      });
    }
  });

  it('last as long as their tasks, tables and laws say', () => {
    const load = chamberLoad(SOUP, CHAMBER);
    const expected: Partial<Record<Phase, number>> = {
      loading: taskTime(DAY_CREW, 'load', load.wet),
      freezing: chamberFreezingTime(SOUP, CHAMBER, null) as number,
      unloading: taskTime(DAY_CREW, 'unload', load.wet),
      defrost: CHAMBER.defrostTime,
      cleaning: taskTime(DAY_CREW, 'clean', load.wet),
    };
    const whole = lanesOf({ mix: mixOf(SOUP), crew: DAY_CREW }).filter((span) => span.start > 0 && span.end < WEEK);
    for (const [phase, seconds] of Object.entries(expected)) {
      const spans = whole.filter((span) => span.phase === phase);
      expect(spans.length).toBeGreaterThan(2);
      for (const span of spans) expect(span.end - span.start).toBeCloseTo(seconds, 3);
    }
  });

  it('are named with the product they belong to, from loading to cleaning', () => {
    const lanes = lanesOf({ mix: mixOf(FRUIT) });
    for (const { phase, productId } of lanes) {
      const empty = ['waitingToLoad', 'waitingForFreezer', 'idleNoDemand'].includes(phase);
      expect(productId).toBe(empty ? '' : 'fruit');
    }
  });

  it('skip sublimation when there is no ice, and desorption when the ice leaves little enough', () => {
    expect(lanesOf({ mix: mixOf(CANDY) }).some((span) => span.phase === 'primary')).toBe(false);
    const crisp: ProductSpec = { ...FRUIT, unfreezable: 0.02 };
    const lanes = lanesOf({ mix: mixOf(crisp) });
    expect(lanes.some((span) => span.phase === 'primary')).toBe(true);
    expect(lanes.some((span) => span.phase === 'secondary')).toBe(false);
  });
});

describe('a batch in a shop of one chamber', () => {
  it.each([FRUIT, SOUP, CANDY])('dries as the lone load of $id does', (product) => {
    const lone = dryLoneLoad(UNIT, GOOD_PUMP, chamberLoad(product, CHAMBER));
    if (lone.kind !== 'dried') throw new Error(lone.kind);
    const { batchRecords } = reportOf(
      sharedShop(1, GOOD_PUMP, { mix: mixOf(product), warmUpWeeks: 0, measuredWeeks: 1 }),
    );
    expect(batchRecords.length).toBeGreaterThan(4);
    for (const batch of batchRecords) {
      expect(batch.phases.pumpDown).toBeCloseTo(lone.load.pumpDown, 6);
      // The events of the week cut the steps in other places.
      expect((batch.phases.primary ?? 0) / (lone.load.primary || 1)).toBeCloseTo(lone.load.primary > 0 ? 1 : 0, 3);
      expect((batch.phases.secondary ?? 0) / lone.load.secondary).toBeCloseTo(1, 2);
      expect(batch.waterOnTrap / lone.load.waterOnTrap).toBeCloseTo(1, 3);
    }
  });

  it('is recorded with its kilograms, its pressures and its ice', () => {
    const report = reportOf(sharedShop(1, GOOD_PUMP, { warmUpWeeks: 0, measuredWeeks: 1 }));
    for (const batch of report.batchRecords) {
      expect(batch.wetIn).toBeCloseTo(12, 9);
      expect(batch.dryOut).toBeCloseTo(1.2 * 1.03, 9);
      expect(batch.waterIn).toBeCloseTo(10.8, 9);
      expect(batch.waterLeft).toBeLessThanOrEqual(1.2 * 0.03 + 1e-9);
      expect(batch.pressurePeak).toBeLessThanOrEqual(CHAMBER.pressureCeiling * (1 + 1e-6));
      expect(batch.pressureMean).toBeLessThan(batch.pressurePeak);
      expect(batch.pressureMean).toBeGreaterThan(10);
    }
    expect(report.trapFill).toBeCloseTo(Math.max(...report.batchRecords.map((batch) => batch.iceOnTrap)) / 16, 9);
  });
});
