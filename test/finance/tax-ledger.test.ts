import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TaxTerms, taxLedger } from '../../lib/finance/tax-ledger.ts';

const terms: TaxTerms = { rate: 0.25, lossOffsetShare: 1, paidEveryMonths: 3 };
const year = (profit: number) => [...new Array<number>(11).fill(0), profit];
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('taxLedger', () => {
  it('taxes a profitable year at the rate', () => {
    const ledger = taxLedger(new Array(12).fill(10000), terms);
    expect(sum(ledger.expense)).toBe(30000);
    expect(ledger.paid.filter((paid) => paid > 0)).toEqual([7500, 7500, 7500, 7500]);
    expect(ledger.payable.at(-1)).toBe(0);
  });

  it('carries losses forward until they are used', () => {
    const ledger = taxLedger([...year(-100000), ...year(60000), ...year(100000)], terms);
    expect(sum(ledger.expense.slice(0, 24))).toBe(0);
    expect(sum(ledger.expense.slice(24))).toBe(15000);
    expect(ledger.lossCarried).toBe(0);
  });

  it('lets losses take off only the stated share of a profit', () => {
    const ledger = taxLedger([...year(-100000), ...year(50000)], { ...terms, lossOffsetShare: 0.8 });
    expect(sum(ledger.expense)).toBe(2500);
    expect(ledger.lossCarried).toBe(60000);
  });

  it('pays back within the year what a later loss of that year undoes', () => {
    const ledger = taxLedger([...new Array<number>(6).fill(10000), ...new Array<number>(6).fill(-10000)], terms);
    expect(sum(ledger.expense)).toBe(0);
    expect(ledger.paid[5]).toBe(7500);
    expect(ledger.payable[8]).toBe(-7500);
    expect(ledger.paid[11]).toBe(-15000);
  });

  it('agrees with taxing whole years, for any profit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -50000, max: 50000 }), { minLength: 36, maxLength: 36 }), (profit) => {
        const ledger = taxLedger(profit, terms);
        let loss = 0;
        for (let k = 0; k < 3; k += 1) {
          const whole = sum(profit.slice(12 * k, 12 * k + 12));
          const taxable = Math.max(0, whole - loss);
          expect(sum(ledger.expense.slice(12 * k, 12 * k + 12))).toBe(Math.round(taxable * 0.25));
          loss = Math.max(0, loss - whole);
        }
        expect(ledger.lossCarried).toBe(loss);
        expect(sum(ledger.paid)).toBe(sum(ledger.expense));
      }),
      { seed: 8 },
    );
  });

  it('refuses rates outside 0 to 1', () => {
    expect(() => taxLedger([1], { ...terms, rate: 1.2 })).toThrow(RangeError);
    expect(() => taxLedger([1], { ...terms, lossOffsetShare: -0.1 })).toThrow(RangeError);
  });
});
