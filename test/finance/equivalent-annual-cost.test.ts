import { describe, expect, it } from 'vitest';
import { equivalentAnnualCost, equivalentAnnualFlow } from '../../lib/finance/equivalent-annual-cost.ts';
import { netPresentValue } from '../../lib/finance/net-present-value.ts';

describe('equivalentAnnualCost', () => {
  const terms = { price: 9000, salvage: 1500, lifeYears: 6, yearlyCost: 400 };

  it('agrees with spreading the flows themselves', () => {
    const flows = [-9000, -400, -400, -400, -400, -400, -400 + 1500];
    expect(equivalentAnnualCost(0.11, terms)).toBeCloseTo(equivalentAnnualFlow(0.11, flows), 9);
  });

  it('is worth the same as the thing bought again and again', () => {
    const annual = equivalentAnnualCost(0.08, terms);
    const once = [-9000, -400, -400, -400, -400, -400, -400 + 1500];
    const twice = [...once.slice(0, 6), -400 + 1500 - 9000, ...once.slice(1)];
    const level = [0, ...new Array<number>(12).fill(annual)];
    expect(netPresentValue(0.08, level)).toBeCloseTo(netPresentValue(0.08, twice), 6);
  });

  it('is plain wear and cost at a rate of nothing, and takes a life that is not whole', () => {
    expect(equivalentAnnualCost(0, terms)).toBeCloseTo(-(9000 - 1500) / 6 - 400, 9);
    const between = equivalentAnnualCost(0.1, { ...terms, lifeYears: 6.5 });
    expect(between).toBeGreaterThan(equivalentAnnualCost(0.1, terms));
    expect(between).toBeLessThan(equivalentAnnualCost(0.1, { ...terms, lifeYears: 7 }));
  });

  it('refuses a life of nothing', () => {
    expect(() => equivalentAnnualCost(0.1, { ...terms, lifeYears: 0 })).toThrow(RangeError);
    expect(() => equivalentAnnualFlow(0.1, [5])).toThrow(RangeError);
  });
});
