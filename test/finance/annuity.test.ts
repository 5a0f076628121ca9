import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annuityPayment,
  futureValue,
  interestPart,
  periodCount,
  presentValue,
  principalPart,
  seriesFactor,
} from '../../lib/finance/annuity.ts';
import { annuityRate } from '../../lib/finance/annuity-rate.ts';
import { annualRate, monthlyRate } from '../../lib/finance/monthly-rate.ts';

const money = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const rate = fc.double({ min: -0.05, max: 0.2, noNaN: true });
const periods = fc.integer({ min: 1, max: 120 });
const timing = fc.constantFrom('end' as const, 'begin' as const);

describe('annuity', () => {
  it('turns future value back into present value', () => {
    fc.assert(
      fc.property(rate, periods, money, money, timing, (r, n, pmt, pv, when) => {
        const back = presentValue(r, n, pmt, futureValue(r, n, pmt, pv, when), when);
        expect(Math.abs(back - pv)).toBeLessThanOrEqual(1e-9 * (Math.abs(pv) + n * Math.abs(pmt) * 500 + 1));
      }),
      { seed: 1 },
    );
  });

  it('agrees with walking the periods one by one', () => {
    for (const when of ['end', 'begin'] as const) {
      let balance = 1000;
      for (let k = 0; k < 30; k += 1) balance = when === 'end' ? balance * 1.04 + 25 : (balance + 25) * 1.04;
      expect(futureValue(0.04, 30, 25, 1000, when)).toBeCloseTo(-balance, 8);
    }
  });

  it('splits every payment into interest and principal, and the principal clears the debt', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.05, noNaN: true }), periods, timing, (r, n, when) => {
        const pmt = annuityPayment(r, n, 5000, 0, when);
        let cleared = 0;
        for (let k = 1; k <= n; k += 1) {
          const principal = principalPart(r, k, n, 5000, 0, when);
          expect(interestPart(r, k, n, 5000, 0, when) + principal).toBeCloseTo(pmt, 8);
          cleared += principal;
        }
        expect(cleared).toBeCloseTo(-5000, 5);
      }),
      { seed: 2, numRuns: 50 },
    );
  });

  it('counts the periods of the payment it computed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0001, max: 0.1, noNaN: true }), periods, timing, (r, n, when) => {
        expect(periodCount(r, annuityPayment(r, n, 800, 100, when), 800, 100, when)).toBeCloseTo(n, 6);
      }),
      { seed: 3 },
    );
  });

  it('says null where a payment never reaches the goal', () => {
    expect(periodCount(0, 0, 1000)).toBeNull();
    expect(periodCount(0.05, -10, 1000)).toBeNull();
    expect(periodCount(0.05, 100, 1000)).toBeNull();
  });

  it('finds the rate of the payment it computed, and none where there is none', () => {
    const pmt = annuityPayment(0.0125, 48, 9000);
    const found = annuityRate(48, pmt, 9000, 0);
    expect(found.kind).toBe('one');
    if (found.kind === 'one') expect(found.rate).toBeCloseTo(0.0125, 12);
    expect(annuityRate(12, 400, 10000, 5000)).toEqual({ kind: 'none', reason: 'oneSign' });
    const begin = annuityRate(48, annuityPayment(0.0125, 48, 9000, 0, 'begin'), 9000, 0, 'begin');
    if (begin.kind === 'one') expect(begin.rate).toBeCloseTo(0.0125, 12);
    expect(begin.kind).toBe('one');
  });

  it('goes smoothly to the zero-rate case', () => {
    expect(seriesFactor(0, 60)).toBe(60);
    expect(seriesFactor(1e-14, 60)).toBeCloseTo(60, 9);
    expect(annuityPayment(0, 10, 1000)).toBe(-100);
  });

  it('refuses terms that cannot be', () => {
    expect(() => futureValue(-1, 3, 0, 1)).toThrow(RangeError);
    expect(() => futureValue(0.1, -3, 0, 1)).toThrow(RangeError);
    expect(() => annuityPayment(0.1, 0, 100)).toThrow(RangeError);
    expect(() => interestPart(0.1, 0, 12, 100)).toThrow(RangeError);
    expect(() => interestPart(0.1, 13, 12, 100)).toThrow(RangeError);
    expect(() => annuityRate(1.5, 1, 1, 1)).toThrow(RangeError);
    expect(() => monthlyRate(-1)).toThrow(RangeError);
    expect(() => annualRate(-1)).toThrow(RangeError);
  });

  it('turns annual rates into monthly ones and back', () => {
    expect(monthlyRate(0.12)).toBeCloseTo(1.12 ** (1 / 12) - 1, 14);
    expect(annualRate(monthlyRate(0.37))).toBeCloseTo(0.37, 14);
  });
});
