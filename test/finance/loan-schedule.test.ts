import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { principalPart } from '../../lib/finance/annuity.ts';
import { loanBook } from '../../lib/finance/loan-book.ts';
import { type LoanTerms, loanSchedule } from '../../lib/finance/loan-schedule.ts';

const plain: LoanTerms = {
  principal: 10000,
  annualRate: 0.09,
  termMonths: 24,
  graceMonths: 0,
  interestOnlyMonths: 0,
  fee: 0,
  drawMonth: 0,
};

const anyLoan: fc.Arbitrary<LoanTerms> = fc
  .record({
    principal: fc.integer({ min: 0, max: 5e7 }).map((cents) => cents / 100),
    annualRate: fc.double({ min: 0, max: 0.3, noNaN: true }),
    repaying: fc.integer({ min: 1, max: 120 }),
    graceMonths: fc.integer({ min: 0, max: 12 }),
    interestOnlyMonths: fc.integer({ min: 0, max: 12 }),
    fee: fc.integer({ min: 0, max: 1e5 }).map((cents) => cents / 100),
    drawMonth: fc.integer({ min: -40, max: 40 }),
  })
  .map(({ repaying, ...loan }) => ({ ...loan, termMonths: repaying + loan.graceMonths + loan.interestOnlyMonths }));

describe('loanSchedule', () => {
  it('closes at exactly nothing, in whole cents, whatever the terms', () => {
    fc.assert(
      fc.property(anyLoan, (loan) => {
        const rows = loanSchedule(loan);
        expect(rows).toHaveLength(loan.termMonths);
        expect(rows.at(-1)?.closing).toBe(0);
        const paid = rows.reduce((sum, row) => sum + row.payment, 0);
        const interest = rows.reduce((sum, row) => sum + row.interest, 0);
        expect(paid - interest).toBe(Math.round(loan.principal * 100));
        for (const row of rows) {
          expect(row.closing).toBe(row.opening + row.interest - row.payment);
          expect(Number.isInteger(row.payment)).toBe(true);
          expect(row.payment).toBeGreaterThanOrEqual(0);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('follows the annuity formula to within rounding, month by month', () => {
    loanSchedule(plain).forEach((row, k) => {
      expect(Math.abs(row.principal + 100 * principalPart(0.09 / 12, k + 1, 24, 10000))).toBeLessThan(15);
    });
  });

  it('has level payments but for the last, which differs by cents', () => {
    const payments = loanSchedule(plain).map((row) => row.payment);
    expect(new Set(payments.slice(0, -1)).size).toBe(1);
    expect(Math.abs((payments.at(-1) ?? 0) - (payments[0] ?? 0))).toBeLessThan(24);
  });

  it('adds interest to the debt in grace months and pays only interest after', () => {
    const rows = loanSchedule({ ...plain, graceMonths: 2, interestOnlyMonths: 3 });
    expect(rows[0]).toMatchObject({ opening: 1000000, interest: 7500, payment: 0, principal: -7500, closing: 1007500 });
    expect(rows[2]?.payment).toBe(rows[2]?.interest);
    expect(rows[4]?.closing).toBe(rows[2]?.opening);
    expect(rows[5]?.principal).toBeGreaterThan(0);
  });

  it('needs no interest at a rate of nothing', () => {
    expect(loanSchedule({ ...plain, annualRate: 0 }).every((row) => row.interest === 0)).toBe(true);
  });

  it('refuses terms that cannot be repaid', () => {
    expect(() => loanSchedule({ ...plain, graceMonths: 12, interestOnlyMonths: 12 })).toThrow(RangeError);
    expect(() => loanSchedule({ ...plain, principal: -1 })).toThrow(RangeError);
    expect(() => loanSchedule({ ...plain, termMonths: 2.5 })).toThrow(RangeError);
  });
});

describe('loanBook', () => {
  it('adds several loans up and keeps its own identity', () => {
    fc.assert(
      fc.property(fc.array(anyLoan, { maxLength: 4 }), (loans) => {
        const book = loanBook(loans, 60);
        let owed = book.opening;
        for (let month = 0; month < 60; month += 1) {
          owed += (book.drawn[month] ?? 0) + (book.interest[month] ?? 0) - (book.payments[month] ?? 0);
          expect(book.owed[month]).toBe(owed);
          expect(book.payments[month]).toBe(
            (book.interest[month] ?? 0) - (book.interestAdded[month] ?? 0) + (book.principal[month] ?? 0),
          );
        }
      }),
      { seed: 6, numRuns: 100 },
    );
  });

  it('takes a loan that runs already with what is still owed, and forgets one that is over', () => {
    const book = loanBook(
      [
        { ...plain, drawMonth: -23 },
        { ...plain, drawMonth: -24, fee: 50 },
      ],
      12,
    );
    expect(book.opening).toBe(loanSchedule(plain)[22]?.closing);
    expect(book.payments[0]).toBe(loanSchedule(plain)[23]?.payment);
    expect(book.payments[1]).toBe(0);
    expect(book.drawn.every((amount) => amount === 0)).toBe(true);
    expect(book.fees.every((amount) => amount === 0)).toBe(true);
  });

  it('charges the fee in the month of the draw', () => {
    expect(loanBook([{ ...plain, drawMonth: 3, fee: 120 }], 12).fees[3]).toBe(12000);
  });
});
