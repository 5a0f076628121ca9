import { describe, expect, it } from 'vitest';
import { interestPart } from '../../lib/finance/annuity.ts';
import { annuityRate } from '../../lib/finance/annuity-rate.ts';
import { debtServiceCover } from '../../lib/finance/debt-service-cover.ts';
import { monthlyDepreciation } from '../../lib/finance/depreciation.ts';
import { loanSchedule } from '../../lib/finance/loan-schedule.ts';
import { type PlanTerms, requirePlan } from '../../lib/finance/plan-terms.ts';
import { taxLedger } from '../../lib/finance/tax-ledger.ts';

const wearing = {
  cost: 1000,
  salvage: 0,
  lifeMonths: 12,
  method: { kind: 'straightLine' as const },
  expensedShare: 0,
  month: 0,
};
const loan = {
  principal: 1000,
  annualRate: 0.1,
  termMonths: 12,
  graceMonths: 0,
  interestOnlyMonths: 0,
  fee: 0,
  drawMonth: 0,
};
const tax = { rate: 0.2, lossOffsetShare: 1, paidEveryMonths: 12 as const };
const two = [1, 1];
const plan: PlanTerms = {
  horizonMonths: 2,
  revenue: two,
  variableCosts: two,
  fixedCosts: two,
  stockValue: two,
  purchases: [],
  loans: [],
  tax,
  workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
  before: { revenue: 0, variableCosts: 0 },
  openingCash: 0,
  ownerPaidIn: two,
  ownerDraws: two,
};

/** Each is one step beyond what is allowed, and its neighbour within is allowed. */
const REFUSED: Readonly<Record<string, () => unknown>> = {
  'a life of no months': () => monthlyDepreciation({ ...wearing, lifeMonths: 0 }),
  'a life of half a month': () => monthlyDepreciation({ ...wearing, lifeMonths: 12.5, method: table }),
  'a write-off over no months': () => monthlyDepreciation({ ...wearing, method: { kind: 'straightLine', months: 0 } }),
  'a write-off over half a month': () =>
    monthlyDepreciation({ ...wearing, method: { kind: 'straightLine', months: 1.5 } }),
  'a negative salvage': () => monthlyDepreciation({ ...wearing, salvage: -1 }),
  'more expensed than all': () => monthlyDepreciation({ ...wearing, expensedShare: 1.01 }),
  'less expensed than nothing': () => monthlyDepreciation({ ...wearing, expensedShare: -0.01 }),
  'a negative grace': () => loanSchedule({ ...loan, graceMonths: -1 }),
  'negative months of interest only': () => loanSchedule({ ...loan, interestOnlyMonths: -1 }),
  'half a month of term': () => loanSchedule({ ...loan, termMonths: 11.5 }),
  'a negative rate': () => loanSchedule({ ...loan, annualRate: -0.01 }),
  'a negative fee': () => loanSchedule({ ...loan, fee: -1 }),
  'a horizon of no months': () => requirePlan({ ...plan, horizonMonths: 0 }),
  'a horizon of half a month': () => requirePlan({ ...plan, horizonMonths: 1.5 }),
  'a series of another length': () => requirePlan({ ...plan, fixedCosts: [1] }),
  'a negative tax rate': () => taxLedger([1], { ...tax, rate: -0.01 }),
  'a negative share of losses': () => taxLedger([1], { ...tax, lossOffsetShare: -0.01 }),
  'more losses than there are': () => taxLedger([1], { ...tax, lossOffsetShare: 1.01 }),
  'a payment after the last': () => interestPart(0.1, 13, 12, 1000),
  'a payment before the first': () => interestPart(0.1, 0, 12, 1000),
  'a rate of half a period': () => annuityRate(1.5, -1, 1, 0),
  'a rate of no periods': () => annuityRate(0, -1, 1, 0),
  'one negative debt payment': () => debtServiceCover([1, 1], [1, -1]),
};

const table = { kind: 'table' as const, table: 'recovery7' as const };

describe('what the accounts refuse', () => {
  for (const [what, call] of Object.entries(REFUSED)) it(what, () => expect(call).toThrow(RangeError));
});

describe('what the accounts take, at the edge of what they refuse', () => {
  it('a plan of one month, an asset of one month, a loan of one month, the first and the last payment', () => {
    const one = [1];
    const short = { revenue: one, variableCosts: one, fixedCosts: one, stockValue: one, ownerPaidIn: one };
    requirePlan({ ...plan, ...short, ownerDraws: one, horizonMonths: 1 });
    expect(monthlyDepreciation({ ...wearing, lifeMonths: 1 })).toEqual([1000]);
    expect(loanSchedule({ ...loan, annualRate: 0, termMonths: 1 })).toHaveLength(1);
    expect(interestPart(0.1, 1, 12, 1000)).toBeCloseTo(-100, 9);
    expect(interestPart(0.1, 12, 12, 1000)).toBeLessThan(0);
  });
});
