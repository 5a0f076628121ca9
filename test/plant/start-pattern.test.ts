import { describe, expect, it } from 'vitest';
import { loneCycleTime } from '../../lib/plant/lone-cycle.ts';
import type { PlantReport } from '../../lib/plant/report-types.ts';
import type { CrewSpec, ShopSpec } from '../../lib/plant/types.ts';
import { meanPhase, reportOf } from './run-shop.ts';
import { CANDY, DAY_CREW, FULL_CREW, GOOD_PUMP, mixOf, SMALL_PUMP, SOUP, sharedShop } from './sample-shop.ts';

/** The first week from its first Monday. */
const FIRST_WEEK = { warmUpWeeks: 0, measuredWeeks: 1 };

function loadingStarts(report: PlantReport, chamber: number): readonly number[] {
  return report.week.lanes
    .filter((span) => span.chamber === chamber && span.phase === 'loading')
    .map((span) => span.start);
}

function shop(count: number, change: Partial<ShopSpec>): ShopSpec {
  return sharedShop(count, GOOD_PUMP, { ...FIRST_WEEK, mix: mixOf(SOUP), ...change });
}

/** One person day and night. */
const ONE: CrewSpec = { ...FULL_CREW, shifts: FULL_CREW.shifts.map((shift) => ({ ...shift, people: 1 })) };

describe('start pattern', () => {
  it('together: every load of every chamber begins at the same moment', () => {
    const report = reportOf(shop(3, { startPattern: 'together' }));
    const [first, ...others] = [0, 1, 2].map((chamber) => loadingStarts(report, chamber));
    expect(first?.length).toBeGreaterThan(5);
    for (const other of others) expect(other).toEqual(first);
  });

  it('together: with one person the loads follow each other, and nobody starts a second before all have had their first', () => {
    const report = reportOf(shop(3, { startPattern: 'together', crew: ONE }));
    const starts = [0, 1, 2].map((chamber) => loadingStarts(report, chamber));
    for (let batch = 0; batch < 4; batch += 1) {
      const here = starts.map((list) => list[batch] as number);
      const next = starts.map((list) => list[batch + 1] as number);
      expect(new Set(here).size).toBe(3);
      expect(Math.max(...here)).toBeLessThan(Math.min(...next));
    }
  });

  it('staggered: the first loads are spread evenly over the cycle of a lone chamber', () => {
    const spec = shop(4, { startPattern: 'staggered' });
    const report = reportOf(spec);
    const spacing = loneCycleTime(spec) / 4;
    expect(spacing / 3600).toBeGreaterThan(2);
    [0, 1, 2, 3].forEach((chamber) => {
      expect(loadingStarts(report, chamber)[0]).toBeCloseTo(chamber * spacing, 6);
    });
  });

  it('as ready: each is loaded when it is clean, whatever the others do', () => {
    const report = reportOf(shop(3, { startPattern: 'asReady' }));
    expect(report.phases.waitingToLoad).toBeCloseTo(0, 6);
    expect([0, 1, 2].map((chamber) => loadingStarts(report, chamber)[0])).toEqual([0, 0, 0]);
  });
});

describe('the cycle of a lone chamber', () => {
  it('is what a lone chamber takes with nobody to wait for', () => {
    const spec = shop(1, { warmUpWeeks: 1, measuredWeeks: 2 });
    // The vacuum clock of the lone load counts from the valve, the shop's from the start of the pump-down: the same.
    expect(reportOf(spec).cycleTime / loneCycleTime(spec)).toBeCloseTo(1, 3);
  });

  it('is the mean over the mix', () => {
    const of = (products: ShopSpec['mix']) => loneCycleTime(shop(1, { mix: products }));
    const mixed = of([
      { product: SOUP, share: 0.25, weeklyCap: null },
      { product: CANDY, share: 0.75, weeklyCap: null },
    ]);
    expect(mixed).toBeCloseTo(0.25 * of(mixOf(SOUP)) + 0.75 * of(mixOf(CANDY)), 6);
    expect(() => loneCycleTime({ ...shop(1, {}), groups: [] })).toThrow(RangeError);
  });
});

describe('nobody there', () => {
  const report = reportOf(
    sharedShop(2, SMALL_PUMP, { crew: DAY_CREW, mix: mixOf(SOUP), warmUpWeeks: 1, measuredWeeks: 1 }),
  );
  const DAY = 86_400;

  function onShift(time: number): boolean {
    return DAY_CREW.shifts.some(
      ({ weekday, start, end }) => weekday * DAY + start <= time && time <= weekday * DAY + end,
    );
  }

  it('a finished batch is held under vacuum until somebody can empty it', () => {
    const holds = report.week.lanes.filter((span) => span.phase === 'hold');
    expect(holds.length).toBeGreaterThan(3);
    expect(meanPhase(report, 'hold')).toBeGreaterThan(600);
    // Some begin when nobody is there; all end when somebody is.
    expect(holds.some((span) => !onShift(span.start))).toBe(true);
    for (const span of holds) if (span.end < 7 * DAY) expect(onShift(span.end)).toBe(true);
  });

  it('the pump runs on while a batch is held', () => {
    for (const span of report.week.lanes.filter((lane) => lane.phase === 'hold')) {
      const during = (report.week.samples[0] ?? []).filter(
        (sample) => sample.time >= span.start && sample.time < span.end,
      );
      expect(during.every((sample) => sample.pumpOn)).toBe(true);
    }
  });

  it('every task lies within one shift, and never more people work than are there', () => {
    for (const { phase, start, end } of report.week.lanes) {
      if (!['loading', 'unloading', 'cleaning'].includes(phase)) continue;
      expect(onShift(start)).toBe(true);
      expect(Math.floor(start / DAY)).toBe(Math.floor(end / DAY));
      expect(onShift(end)).toBe(true);
    }
    expect(Math.max(...report.week.crew.map(([, people]) => people))).toBeLessThanOrEqual(2);
    expect(report.utilisation.crew).toBeGreaterThan(0);
    expect(report.utilisation.crew).toBeLessThan(1);
  });

  it('costs output against a crew that is always there', () => {
    const always = reportOf(sharedShop(2, SMALL_PUMP, { mix: mixOf(SOUP), warmUpWeeks: 1, measuredWeeks: 1 }));
    expect(report.batches).toBeLessThan(always.batches);
  });
});
