import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stockedCosts } from '../../lib/cost/stocked-costs.ts';

describe('stockedCosts', () => {
  it('charges goods when they leave, at the mean cost of what lay there', () => {
    // 10 kg made for 100, half of it kept; then 5 kg made for 100, all sold: 10 kg at a mean of 15.
    const { costs, stockValue } = stockedCosts(
      [
        { made: 10, stock: 5 },
        { made: 5, stock: 0 },
      ],
      [100, 100],
    );
    expect(costs).toEqual([50, 150]);
    expect(stockValue).toEqual([50, 0]);
  });

  it('charges all at once where nothing is kept', () => {
    const months = [3, 0, 7].map((made) => ({ made, stock: 0 }));
    expect(stockedCosts(months, [30, 5, 70])).toEqual({ costs: [30, 5, 70], stockValue: [0, 0, 0] });
  });

  it('loses no money: what is spent is charged or lies in store', () => {
    const month = fc.record({
      made: fc.double({ min: 0, max: 50, noNaN: true }),
      kept: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(month, { minLength: 1, maxLength: 24 }), (rows) => {
        let stock = 0;
        const months = rows.map(({ made, kept }) => {
          stock = (stock + made) * kept;
          return { made, stock };
        });
        const spent = rows.map((_, k) => 10 + k);
        const { costs, stockValue } = stockedCosts(months, spent);
        let left = 0;
        costs.forEach((cost, k) => {
          expect(cost).toBeGreaterThanOrEqual(0);
          expect(left + (spent[k] ?? 0)).toBeCloseTo(cost + (stockValue[k] ?? 0), 8);
          left = stockValue[k] ?? 0;
        });
      }),
      { seed: 3 },
    );
  });

  it('refuses negative amounts', () => {
    expect(() => stockedCosts([{ made: -1, stock: 0 }], [1])).toThrow(RangeError);
  });
});
