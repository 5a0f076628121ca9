import { describe, expect, it } from 'vitest';
import { type MaterialTerms, materialCost } from '../../lib/cost/materials.ts';

const fruit: MaterialTerms = {
  batches: 4,
  wetIn: 80,
  dryOut: 8,
  pricePerWetKilogram: 3,
  trimLoss: 0.2,
  saleableYield: 0.95,
  packagingPerKilogram: 5,
  otherPerBatch: 2,
};

describe('materialCost', () => {
  it('buys what is trimmed off as well', () => {
    const cost = materialCost(fruit);
    expect(cost.bought).toBeCloseTo(100, 9);
    expect(cost.saleable).toBeCloseTo(7.6, 9);
    expect(cost.ingredients).toBeCloseTo(300, 9);
    expect(cost.packaging).toBeCloseTo(38, 9);
    expect(cost.other).toBe(8);
    expect(cost.total).toBeCloseTo(346, 9);
  });

  it('refuses shares out of range', () => {
    expect(() => materialCost({ ...fruit, trimLoss: 1 })).toThrow(RangeError);
    expect(() => materialCost({ ...fruit, saleableYield: 1.2 })).toThrow(RangeError);
    expect(() => materialCost({ ...fruit, wetIn: -1 })).toThrow(RangeError);
  });
});
