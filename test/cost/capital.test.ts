import { describe, expect, it } from 'vitest';
import { type CapitalTerms, capitalCost } from '../../lib/cost/capital.ts';

const expansion: CapitalTerms = {
  items: [
    { name: 'Large chamber', group: 'chambers', count: 2, price: 9000, installation: 500 },
    { name: 'Shared pump', group: 'pumps', count: 1, price: 6000, installation: 0 },
    { name: 'Hose', group: 'hoses', count: 2, price: 150, installation: 0 },
    { name: 'Circuit', group: 'electrical', count: 0, price: 900, installation: 0 },
  ],
  delivery: 1000,
  contingency: 0.1,
  tradeIn: 800,
};

describe('capitalCost', () => {
  it('has lines that sum to the total', () => {
    const { lines, total } = capitalCost(expansion);
    expect(lines.reduce((sum, line) => sum + line.amount, 0)).toBe(total);
    expect(total).toBeCloseTo(26300 + 2630 - 800, 9);
    expect(lines.map((line) => line.group)).toEqual([
      'chambers',
      'pumps',
      'hoses',
      'delivery',
      'contingency',
      'tradeIn',
    ]);
  });

  it('is nothing when nothing is bought', () => {
    expect(capitalCost({ items: [], delivery: 0, contingency: 0.2, tradeIn: 0 })).toEqual({ lines: [], total: 0 });
  });

  it('refuses negative prices', () => {
    expect(() => capitalCost({ ...expansion, delivery: -1 })).toThrow(RangeError);
    expect(() => capitalCost({ ...expansion, contingency: 2 })).toThrow(RangeError);
  });
});
