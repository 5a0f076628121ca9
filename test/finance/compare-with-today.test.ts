import { describe, expect, it } from 'vitest';
import { compareWithToday, returnMeasures } from '../../lib/finance/compare-with-today.ts';
import { internalRates } from '../../lib/finance/internal-rates.ts';
import { netPresentValue } from '../../lib/finance/net-present-value.ts';
import type { PlanTerms } from '../../lib/finance/plan-terms.ts';
import { projectPlan } from '../../lib/finance/project-plan.ts';

const months = (value: number) => new Array<number>(36).fill(value);
const rates = { discountRate: 0.1, financeRate: 0.08, reinvestRate: 0.05 };

const today: PlanTerms = {
  horizonMonths: 36,
  revenue: months(8000),
  variableCosts: months(3000),
  fixedCosts: months(3000),
  stockValue: months(0),
  purchases: [],
  loans: [],
  tax: { rate: 0, lossOffsetShare: 1, paidEveryMonths: 12 },
  workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
  before: { revenue: 8000, variableCosts: 3000 },
  openingCash: 1000,
  ownerPaidIn: months(0),
  ownerDraws: months(0),
};

const chamber = {
  name: 'Chamber',
  month: 0,
  amount: 24000,
  lifeMonths: 120,
  salvage: 0,
  method: { kind: 'straightLine' as const },
  expensedShare: 0,
  replaced: false,
  sold: null,
};

const loan = {
  principal: 18000,
  annualRate: 0.09,
  termMonths: 36,
  graceMonths: 0,
  interestOnlyMonths: 0,
  fee: 0,
  drawMonth: 0,
};

const grown: PlanTerms = { ...today, revenue: months(11000), variableCosts: months(4000), purchases: [chamber] };

describe('compareWithToday', () => {
  it('finds nothing between a shop and itself', () => {
    const same = compareWithToday(projectPlan(today), projectPlan(today), rates);
    expect(same.beforeFinancing.flows.every((flow) => flow === 0)).toBe(true);
    expect(same.beforeFinancing.payback).toEqual({ kind: 'notNeeded' });
    expect(same.beforeFinancing.internalRates).toEqual({ kind: 'none', reason: 'noFlows' });
    expect(same.profitabilityIndex).toBeNull();
    expect(same.cashNeeded.amount).toBe(0);
  });

  it('pays a chamber back out of the extra contribution', () => {
    const result = compareWithToday(projectPlan(today), projectPlan(grown), rates);
    expect(result.beforeFinancing.flows).toEqual([-24000, ...months(2000)]);
    expect(result.beforeFinancing.payback).toEqual({ kind: 'after', period: 12, later: [] });
    expect(result.beforeFinancing.terminal).toBe(24000 * 0.7);
    expect(result.cashNeeded).toMatchObject({ amount: -24000, month: 0, equipment: -24000, operations: 0 });
  });

  it('agrees with discounting the flows by hand, what is left included', () => {
    const result = compareWithToday(projectPlan(today), projectPlan(grown), rates);
    const byHand = months(2000).reduce((sum, flow, k) => sum + flow / 1.1 ** ((k + 1) / 12), -24000) + 16800 / 1.1 ** 3;
    expect(result.beforeFinancing.netPresentValue).toBeCloseTo(byHand, 6);
    expect(result.profitabilityIndex).toBeCloseTo(1 + byHand / 24000, 9);
    const found = result.beforeFinancing.internalRates;
    if (found.kind !== 'one') throw new Error('one rate expected');
    const monthly = (1 + found.rate) ** (1 / 12) - 1;
    expect(
      netPresentValue(monthly, [-24000, ...months(2000).map((flow, k) => (k === 35 ? flow + 16800 : flow))]),
    ).toBeCloseTo(0, 6);
  });

  it('shows the owner less cash needed with a loan, and the lender the whole shop', () => {
    const result = compareWithToday(projectPlan(today), projectPlan({ ...grown, loans: [loan] }), rates);
    expect(result.afterFinancing.flows[0]).toBe(-6000);
    expect(result.cashNeeded.amount).toBe(-6000);
    expect(result.cashNeeded.loansDrawn).toBe(18000);
    expect(result.cover.lowest).toBeCloseTo(4000 / 572.4, 3);
    expect(result.beforeFinancing.netPresentValue).toBe(
      compareWithToday(projectPlan(today), projectPlan(grown), rates).beforeFinancing.netPresentValue,
    );
  });

  it('is worth the same financed at the discount rate as not financed, when there is no tax', () => {
    const monthly = 12 * (1.1 ** (1 / 12) - 1);
    const result = compareWithToday(
      projectPlan(today),
      projectPlan({ ...grown, loans: [{ ...loan, annualRate: monthly }] }),
      rates,
    );
    expect(result.afterFinancing.netPresentValue).toBeCloseTo(result.beforeFinancing.netPresentValue, 0);
  });

  it('breaks the cash needed into parts that sum to it', () => {
    const slow: PlanTerms = {
      ...grown,
      revenue: months(0).map((_, month) => (month < 4 ? 8000 : 11000)),
      workingCapital: { receivableDays: 30, inventoryDays: 20, payableDays: 10 },
      tax: { rate: 0.25, lossOffsetShare: 1, paidEveryMonths: 3 },
      loans: [{ ...loan, fee: 300, interestOnlyMonths: 6 }],
    };
    const base: PlanTerms = { ...today, workingCapital: slow.workingCapital, tax: slow.tax };
    const { cashNeeded } = compareWithToday(projectPlan(base), projectPlan(slow), rates);
    const { amount, month, ...parts } = cashNeeded;
    expect(month).toBeGreaterThan(0);
    expect(Object.values(parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(amount, 6);
    expect(amount).toBeLessThan(-6000);
  });

  it('says that a purchase with no use never pays back', () => {
    const idle = compareWithToday(projectPlan(today), projectPlan({ ...today, purchases: [chamber] }), rates);
    expect(idle.beforeFinancing.payback).toEqual({ kind: 'never', missing: 24000 });
  });

  it('refuses to compare different horizons', () => {
    const short = { ...today, horizonMonths: 12 };
    const cut = Object.fromEntries(
      (['revenue', 'variableCosts', 'fixedCosts', 'stockValue', 'ownerPaidIn', 'ownerDraws'] as const).map((name) => [
        name,
        today[name].slice(0, 12),
      ]),
    );
    expect(() => compareWithToday(projectPlan({ ...short, ...cut }), projectPlan(today), rates)).toThrow(RangeError);
  });
});

describe('returnMeasures', () => {
  it('gives annual rates for monthly flows', () => {
    const flows = [-1000, ...new Array<number>(11).fill(0), 1200];
    const measures = returnMeasures(flows, 0, rates);
    const monthly = internalRates(flows);
    if (monthly.kind !== 'one') throw new Error('one rate expected');
    expect(measures.internalRates).toEqual({ kind: 'one', rate: expect.closeTo(0.2, 12) });
    expect(measures.modifiedRate).toBeCloseTo(0.2, 12);
    expect(measures.netPresentValue).toBeCloseTo(-1000 + 1200 / 1.1, 9);
  });
});
