import { describe, expect, it } from 'vitest';
import { workingCapital } from '../../lib/finance/working-capital.ts';

const month = 365.25 / 12;
const terms = { receivableDays: 0, inventoryDays: 0, payableDays: 0 };

describe('workingCapital', () => {
  it('holds the last days of sales', () => {
    const half = workingCapital(
      [1000, 2000],
      [0, 0],
      { ...terms, receivableDays: month / 2 },
      { revenue: 0, variableCosts: 0 },
    );
    expect(half.receivables).toEqual([0, 500, 1000]);
  });

  it('reaches back over several months, and before the plan', () => {
    const long = workingCapital(
      [1000, 2000, 4000],
      [0, 0, 0],
      { ...terms, receivableDays: 1.5 * month },
      { revenue: 6, variableCosts: 0 },
    );
    expect(long.receivables).toEqual([900, 1300, 2500, 5000]);
  });

  it('counts stock and payables on cost', () => {
    const both = workingCapital(
      [0],
      [300],
      { ...terms, inventoryDays: month, payableDays: 2 * month },
      { revenue: 0, variableCosts: 1 },
    );
    expect(both.inventory).toEqual([100, 300]);
    expect(both.payables).toEqual([200, 400]);
  });

  it('refuses negative days', () => {
    expect(() => workingCapital([1], [1], { ...terms, payableDays: -1 }, { revenue: 0, variableCosts: 0 })).toThrow(
      RangeError,
    );
  });
});
