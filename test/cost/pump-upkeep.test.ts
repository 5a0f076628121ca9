import { describe, expect, it } from 'vitest';
import { type OilTerms, type PumpUpkeepTerms, pumpUpkeepCost } from '../../lib/cost/pump-upkeep.ts';

const hour = 3600;
const oil: OilTerms = { volume: 0.002, price: 15, lifeTime: 50 * hour, lifeWater: 0.5, filterCost: 4 };
const pump: PumpUpkeepTerms = {
  pumpTime: 100 * hour,
  waterSwallowed: 0.1,
  oil,
  rebuildInterval: 5000 * hour,
  rebuildCost: 600,
};

describe('pumpUpkeepCost', () => {
  it('changes the oil for hours while the load is dry', () => {
    const cost = pumpUpkeepCost(pump);
    expect(cost).toMatchObject({ oilChanges: 2, changedFor: 'hours' });
    expect(cost.oil).toBeCloseTo(60, 9);
    expect(cost.filters).toBeCloseTo(8, 9);
    expect(cost.rebuilds).toBeCloseTo(12, 9);
    expect(cost.total).toBeCloseTo(80, 9);
  });

  it('changes it for water once that comes first', () => {
    expect(pumpUpkeepCost({ ...pump, waterSwallowed: 2 })).toMatchObject({ oilChanges: 4, changedFor: 'water' });
  });

  it('costs only rebuilds without oil', () => {
    const dry = pumpUpkeepCost({ ...pump, oil: null });
    expect(dry).toMatchObject({ oilChanges: 0, changedFor: null, oil: 0, filters: 0 });
    expect(dry.total).toBe(dry.rebuilds);
  });

  it('costs nothing while it stands', () => {
    expect(pumpUpkeepCost({ ...pump, pumpTime: 0, waterSwallowed: 0 })).toMatchObject({ total: 0, changedFor: null });
  });

  it('never costs less when it runs longer or swallows more', () => {
    const base = pumpUpkeepCost(pump).total;
    for (const factor of [1.1, 2, 10]) {
      expect(pumpUpkeepCost({ ...pump, pumpTime: pump.pumpTime * factor }).total).toBeGreaterThan(base);
      expect(pumpUpkeepCost({ ...pump, waterSwallowed: pump.waterSwallowed * factor }).total).toBeGreaterThanOrEqual(
        base,
      );
    }
  });

  it('refuses lives of nothing', () => {
    expect(() => pumpUpkeepCost({ ...pump, rebuildInterval: 0 })).toThrow(RangeError);
    expect(() => pumpUpkeepCost({ ...pump, waterSwallowed: -1 })).toThrow(RangeError);
    expect(() => pumpUpkeepCost({ ...pump, oil: { ...oil, lifeWater: 0 } })).toThrow(RangeError);
  });
});
