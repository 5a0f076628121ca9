import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate } from '../../lib/cost/allocate.ts';
import { electricityCost } from '../../lib/cost/electricity.ts';
import { type LabourTerms, labourCost } from '../../lib/cost/labour.ts';
import { WEEKS_PER_MONTH } from '../../lib/cost/month-length.ts';
import { pumpUpkeepCost } from '../../lib/cost/pump-upkeep.ts';
import { type ProductTerms, type WeeklyCostTerms, weeklyCost } from '../../lib/cost/weekly-cost.ts';

const hour = 3600;

function product(productId: string, batches: number, chamberHours: number): ProductTerms {
  return {
    productId,
    batches,
    wetIn: 20 * batches,
    dryOut: 2.5 * batches,
    pricePerWetKilogram: 4,
    trimLoss: 0.1,
    saleableYield: 0.96,
    packagingPerKilogram: 6,
    otherPerBatch: 3,
    pricePerKilogram: 120,
    chamberTime: chamberHours * hour,
    handsOn: 2 * batches * hour,
    resources: { chambers: chamberHours * hour, crew: 2 * batches * hour },
  };
}

const crew: LabourTerms = {
  tasks: { load: 8 * hour, unload: 4 * hour },
  onShift: 40 * hour,
  wage: 20,
  onCost: 0.2,
  guaranteed: false,
  owner: { time: 2 * hour, rate: 25 },
};

const week: WeeklyCostTerms = {
  products: [product('berries', 4, 160), product('candy', 2, 20)],
  electricity: electricityCost({
    energy: { heaters: 300 * 3.6e6, pumps: 100 * 3.6e6 },
    peakPower: 6000,
    profile: [],
    tariff: { energyPrice: 0.2, bands: [], demandCharge: 8, fixedPerMonth: 20 },
  }),
  upkeep: [
    pumpUpkeepCost({
      pumpTime: 120 * hour,
      waterSwallowed: 0.3,
      oil: { volume: 0.001, price: 12, lifeTime: 60 * hour, lifeWater: 1, filterCost: 2 },
      rebuildInterval: 8000 * hour,
      rebuildCost: 500,
    }),
  ],
  labour: labourCost(crew),
  fixedPerMonth: { rent: 800, insurance: 120 },
};

describe('weeklyCost', () => {
  const cost = weeklyCost(week);
  const parts = Object.values(cost.running).reduce((sum, part) => sum + part, 0);

  it('sums: lines to totals, products to the week', () => {
    expect(parts).toBeCloseTo(cost.runningCost.week, 9);
    expect(cost.products.reduce((sum, one) => sum + one.cost.week, 0)).toBeCloseTo(cost.runningCost.week, 9);
    expect(cost.products.reduce((sum, one) => sum + one.contribution.week, 0)).toBeCloseTo(cost.contribution.week, 9);
    expect(cost.totalCost.week).toBeCloseTo(cost.runningCost.week + cost.standingCost.week, 9);
    expect(cost.revenue - cost.totalCost.week).toBeCloseTo(cost.profit, 9);
    expect(cost.profit - cost.profitAfterOwner).toBeCloseTo(50, 9);
  });

  it('loses no cost on the way: electricity, upkeep and labour are all in it', () => {
    expect(cost.running.energy).toBeCloseTo(80, 9);
    expect(cost.running.energy + cost.standing.demandCharge + cost.standing.electricityFixed).toBeCloseTo(
      week.electricity.total,
      9,
    );
    expect(cost.running.upkeep).toBeCloseTo(week.upkeep[0]?.total ?? Number.NaN, 9);
    expect(cost.running.labour).toBeCloseTo(week.labour.paid, 9);
    expect(cost.standing.fixed.rent).toBeCloseTo(800 / WEEKS_PER_MONTH, 9);
  });

  it('gives figures per batch, per dry and per saleable kilogram', () => {
    expect(cost.totalCost.perBatch).toBeCloseTo(cost.totalCost.week / 6, 9);
    expect(cost.totalCost.perDryKilogram).toBeCloseTo(cost.totalCost.week / 15, 9);
    expect(cost.totalCost.perSaleableKilogram).toBeCloseTo(cost.totalCost.week / 14.4, 9);
  });

  it('shares energy by chamber time, so the slow product carries more', () => {
    expect(cost.products[0]?.running.energy).toBeCloseTo((80 * 160) / 180, 9);
  });

  it('gives contribution per hour of what jams', () => {
    const berries = cost.products[0];
    expect(berries?.contributionPerHour.chambers).toBeCloseTo((berries?.contribution.week ?? 0) / 160, 9);
    expect(cost.contributionPerHour.chambers).toBeCloseTo(cost.contribution.week / 180, 9);
  });

  it('moves guaranteed labour to the standing costs', () => {
    const fixed = weeklyCost({ ...week, labour: labourCost({ ...crew, guaranteed: true }) });
    expect(fixed.running.labour).toBe(0);
    expect(fixed.standing.labour).toBeCloseTo(38 * 24, 9);
    expect(fixed.contribution.week).toBeGreaterThan(cost.contribution.week);
  });

  it('has no figure per batch when none was made', () => {
    const idle = weeklyCost({ ...week, products: [{ ...product('berries', 0, 0) }] });
    expect(idle.totalCost.perBatch).toBeNull();
    expect(idle.products[0]?.contributionPerHour.chambers).toBeNull();
    expect(idle.running.energy).toBe(0);
    expect(weeklyCost({ ...week, products: [] }).profit).toBeLessThan(0);
  });

  it('refuses negative amounts', () => {
    expect(() => weeklyCost({ ...week, fixedPerMonth: { rent: -1 } })).toThrow(RangeError);
    expect(() => weeklyCost({ ...week, products: [{ ...product('a', 1, 1), pricePerKilogram: -1 }] })).toThrow(
      RangeError,
    );
  });
});

describe('allocate', () => {
  it('shares out the whole pool', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 9 }),
        (pool, drivers) => {
          const parts = allocate(pool, drivers).reduce((sum, part) => sum + part, 0);
          expect(parts).toBeCloseTo(drivers.some((driver) => driver > 0) ? pool : 0, 6);
        },
      ),
      { seed: 41 },
    );
    expect(() => allocate(1, [-1])).toThrow(RangeError);
  });
});
