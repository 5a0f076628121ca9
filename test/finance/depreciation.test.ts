import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DepreciationTerms, monthlyDepreciation, yearlyDepreciation } from '../../lib/finance/depreciation.ts';
import { DEPRECIATION_TABLES, type DepreciationTable } from '../../lib/finance/depreciation-tables.ts';

const tables = Object.keys(DEPRECIATION_TABLES) as DepreciationTable[];
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

const bought: DepreciationTerms = {
  cost: 1000000,
  salvage: 0,
  lifeMonths: 60,
  method: { kind: 'straightLine' },
  expensedShare: 0,
  month: 0,
};

describe('depreciation tables', () => {
  it.each(tables)('%s adds up to 100', (table) => {
    expect(sum(DEPRECIATION_TABLES[table])).toBeCloseTo(100, 9);
  });

  it('has one year more than its name, for the half year at each end', () => {
    expect(DEPRECIATION_TABLES.recovery7).toHaveLength(8);
    expect(DEPRECIATION_TABLES.recovery20).toHaveLength(21);
  });
});

describe('monthlyDepreciation', () => {
  it('writes off exactly cost less salvage, evenly', () => {
    const amounts = monthlyDepreciation({ ...bought, salvage: 100001 });
    expect(amounts).toHaveLength(60);
    expect(sum(amounts)).toBe(899999);
    expect(Math.max(...amounts) - Math.min(...amounts)).toBeLessThanOrEqual(1);
  });

  it('takes other months than the useful life for tax', () => {
    const amounts = monthlyDepreciation({ ...bought, method: { kind: 'straightLine', months: 10 } });
    expect(amounts).toEqual(new Array(10).fill(100000));
    expect(() => monthlyDepreciation({ ...bought, method: { kind: 'straightLine', months: 0 } })).toThrow(RangeError);
  });

  it('writes the expensed share off in the first month', () => {
    const amounts = monthlyDepreciation({ ...bought, expensedShare: 0.4 });
    expect(amounts[0]).toBe(400000 + 10000);
    expect(sum(amounts)).toBe(1000000);
    expect(sum(monthlyDepreciation({ ...bought, expensedShare: 1 }))).toBe(1000000);
  });

  it('puts each printed year into its plan year, the first into the months left of it', () => {
    const amounts = monthlyDepreciation({ ...bought, method: { kind: 'table', table: 'recovery5' }, month: 9 });
    expect(sum(amounts.slice(0, 3))).toBe(200000);
    expect(sum(amounts.slice(3, 15))).toBe(320000);
    expect(amounts).toHaveLength(3 + 5 * 12);
    expect(sum(amounts)).toBe(1000000);
  });

  it('counts years backwards for what was bought before the plan', () => {
    const amounts = monthlyDepreciation({ ...bought, method: { kind: 'table', table: 'recovery5' }, month: -14 });
    expect(sum(amounts.slice(0, 2))).toBe(200000);
  });

  it('always writes off the whole, whatever the method', () => {
    const method = fc.oneof(
      fc.constant({ kind: 'straightLine' as const }),
      fc.constantFrom(...tables).map((table) => ({ kind: 'table' as const, table })),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.integer({ min: 1, max: 240 }),
        method,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: -100, max: 100 }),
        (cost, lifeMonths, how, expensedShare, month) => {
          const amounts = monthlyDepreciation({ cost, salvage: 0, lifeMonths, method: how, expensedShare, month });
          expect(sum(amounts)).toBe(cost);
          expect(amounts.every((amount) => amount >= 0 && Number.isInteger(amount))).toBe(true);
        },
      ),
      { seed: 7 },
    );
  });

  it('never writes off below salvage', () => {
    expect(sum(monthlyDepreciation({ ...bought, salvage: 2000000 }))).toBe(0);
  });

  it('refuses impossible terms', () => {
    expect(() => monthlyDepreciation({ ...bought, lifeMonths: 0 })).toThrow(RangeError);
    expect(() => monthlyDepreciation({ ...bought, expensedShare: 1.1 })).toThrow(RangeError);
    expect(() => monthlyDepreciation({ ...bought, cost: -1 })).toThrow(RangeError);
  });
});

describe('yearlyDepreciation', () => {
  it('is the printed percentage of the basis', () => {
    expect(yearlyDepreciation(1000, 'recovery3').map((amount) => Number(amount.toFixed(2)))).toEqual([
      333.3, 444.5, 148.1, 74.1,
    ]);
  });
});
