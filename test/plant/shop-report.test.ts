import { describe, expect, it } from 'vitest';
import { onShiftTime, taskTime, WEEK } from '../../lib/plant/crew.ts';
import type { Phase, PlantReport } from '../../lib/plant/report-types.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';
import { reportOf } from './run-shop.ts';
import { CHAMBER, DAY_CREW, GOOD_PUMP, mixOf, ownPumpShop, SMALL_PUMP, SOUP, sharedShop } from './sample-shop.ts';

const FREEZER = { temperature: 243.15, coefficient: 20, capacity: 60, power: 400 };

function report(change: Partial<ShopSpec> = {}): PlantReport {
  return reportOf(
    sharedShop(3, GOOD_PUMP, { mix: mixOf(SOUP), crew: DAY_CREW, warmUpWeeks: 1, measuredWeeks: 2, ...change }),
  );
}

const COLD: readonly Phase[] = ['freezing', 'waitingForPump', 'pumpDown', 'primary', 'secondary', 'hold'];

describe('energy of the week', () => {
  const week = report({ freezer: FREEZER });
  const time = (phases: readonly Phase[]) => phases.reduce((sum, phase) => sum + week.phases[phase], 0);

  it('is power times the time each thing runs', () => {
    expect(week.energy.pumps / ((week.groups[0]?.pumpTime as number) * GOOD_PUMP.power)).toBeCloseTo(1, 6);
    expect(week.energy.freezer).toBeCloseTo(FREEZER.power * WEEK, 0);
    expect(week.energy.defrost / (CHAMBER.power.defrost * time(['defrost']))).toBeCloseTo(1, 6);
    expect(week.energy.refrigeration / (CHAMBER.power.compressor * time(COLD))).toBeCloseTo(1, 6);
    const busy = 3 * WEEK - time(['waitingToLoad', 'idleNoDemand', 'waitingForFreezer']);
    expect(week.energy.controls / (CHAMBER.power.controls * busy)).toBeCloseTo(1, 6);
  });

  it('all ends up in the room, and its peak is no less than its mean', () => {
    const joules = Object.values(week.energy).reduce((sum, part) => sum + part, 0);
    expect(week.roomHeat / (joules / WEEK)).toBeCloseTo(1, 9);
    expect(week.peakPower).toBeGreaterThan(week.roomHeat);
    const most = 3 * (CHAMBER.heaterPower + CHAMBER.power.compressor + CHAMBER.power.controls + CHAMBER.power.defrost);
    expect(week.peakPower).toBeLessThan(most + GOOD_PUMP.power + FREEZER.power);
  });

  it('counts the small pump too where one starts the chambers', () => {
    const roughed = report({ startPractice: 'roughing', roughingPump: SMALL_PUMP });
    const own = (roughed.groups[0]?.pumpTime as number) * GOOD_PUMP.power;
    expect((roughed.energy.pumps - own) / (SMALL_PUMP.power * roughed.phases.pumpDown)).toBeCloseTo(1, 6);
  });

  it('heats at least what the sublimation takes, and little more', () => {
    const latent = week.waterRemoved * 2.835e6;
    expect(week.energy.heaters / latent).toBeGreaterThan(0.95);
    expect(week.energy.heaters / latent).toBeLessThan(1.1);
  });
});

describe('people of the week', () => {
  it('work what the batches take', () => {
    const week = report();
    const wet = 9 * CHAMBER.shelfArea;
    for (const task of ['load', 'unload', 'clean'] as const) {
      // Batches are counted in parts, tasks as they fall into the weeks.
      expect(week.crew[task] / (week.batches * taskTime(DAY_CREW, task, wet))).toBeCloseTo(1, 1);
    }
    expect(week.crew.onShift).toBe(onShiftTime(DAY_CREW));
    const worked = week.crew.load + week.crew.unload + week.crew.clean;
    expect(week.utilisation.crew).toBeCloseTo(worked / week.crew.onShift, 9);
  });
});

describe('goods of the week', () => {
  it('weigh as much as went in', () => {
    const week = report();
    expect(week.wetIn).toBeCloseTo(week.dryOut + week.waterRemoved, 9);
    expect(week.wetIn / week.batches).toBeCloseTo(13.5, 9);
    const [soup] = week.products;
    expect(soup).toMatchObject({ productId: 'soup', batches: week.batches });
    expect(soup?.cycleTime).toBeCloseTo(week.cycleTime, 6);
  });
});

describe('the pump of the week', () => {
  const groups = reportOf(ownPumpShop(2, SMALL_PUMP, { mix: mixOf(SOUP), warmUpWeeks: 1, measuredWeeks: 1 })).groups;

  it('is reported for every group', () => {
    expect(groups).toHaveLength(2);
    for (const group of groups) {
      expect(group).toMatchObject({ pumpTypeId: 'small', chambers: 1, vapourTolerance: SMALL_PUMP.vapourTolerance });
    }
  });

  it('has a mean below its high and that below its peak, of pressure and of vapour', () => {
    for (const group of groups) {
      expect(group.manifoldPressureMean).toBeLessThan(group.manifoldPressure95);
      expect(group.manifoldPressure95).toBeLessThanOrEqual(group.manifoldPressurePeak);
      expect(group.vapourLoadMean).toBeLessThan(group.vapourLoadPeak);
      expect(group.ceilingShare).toBeGreaterThanOrEqual(0);
      expect(group.ceilingShare).toBeLessThan(1);
    }
  });

  it('swallows what its batches sent it', () => {
    const week = reportOf(sharedShop(2, SMALL_PUMP, { mix: mixOf(SOUP), warmUpWeeks: 0, measuredWeeks: 2 }));
    const swallowed = week.batchRecords.reduce((sum, batch) => sum + batch.waterThroughPump, 0) / 2;
    // Batches under way at the end are in one figure and not in the other; pump-downs are not counted; rates are taken at the
    // start of a step.
    expect((week.groups[0]?.waterSwallowed as number) / swallowed).toBeGreaterThan(0.95);
    expect((week.groups[0]?.waterSwallowed as number) / swallowed).toBeLessThan(1.1);
  });
});

describe('utilisation', () => {
  it('of everything lies between nothing and all', () => {
    const { utilisation } = report({ freezer: FREEZER });
    for (const share of Object.values(utilisation)) {
      if (share === null) continue;
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(utilisation.demand).toBeNull();
  });

  it('of the shared pump and of hoses rises with the chambers on it', () => {
    const of = (count: number) =>
      reportOf(sharedShop(count, SMALL_PUMP, { warmUpWeeks: 1, measuredWeeks: 1 })).utilisation;
    const [one, four] = [of(1), of(4)];
    expect(four.pump).toBeGreaterThan(1.5 * one.pump);
    expect(four.trap / one.trap).toBeCloseTo(1, 0);
  });
});
