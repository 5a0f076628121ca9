import { describe, expect, it } from 'vitest';
import { compareWithToday } from '../../lib/finance/compare-with-today.ts';
import type { PlanTerms } from '../../lib/finance/plan-terms.ts';
import { projectPlan } from '../../lib/finance/project-plan.ts';
import { DAYS_PER_MONTH } from '../../lib/finance/working-capital.ts';

const MONTHS = 30;
const each = (value: number) => new Array<number>(MONTHS).fill(value);
const rates = { discountRate: 0.1, financeRate: 0.08, reinvestRate: 0.05 };

function chamber(amount: number, month = 0) {
  return {
    name: 'Chamber',
    month,
    amount,
    lifeMonths: 120,
    salvage: 0,
    method: { kind: 'straightLine' as const },
    // Written off at once, so that all it fetches at the end is a gain.
    expensedShare: 1,
    replaced: false,
    sold: null,
  };
}

function loan(principal: number) {
  // Without interest every month pays back a thirty-sixth.
  return { principal, annualRate: 0, termMonths: 36, graceMonths: 0, interestOnlyMonths: 0, fee: 0, drawMonth: 0 };
}

/** Customers pay after a month, goods lie for half of one, suppliers wait for a quarter. */
const shop: PlanTerms = {
  horizonMonths: MONTHS,
  revenue: each(11_000),
  variableCosts: each(4000),
  fixedCosts: each(3000),
  stockValue: each(0),
  purchases: [chamber(24_000)],
  loans: [loan(18_000)],
  tax: { rate: 0.25, lossOffsetShare: 1, paidEveryMonths: 12 },
  workingCapital: {
    receivableDays: DAYS_PER_MONTH,
    inventoryDays: DAYS_PER_MONTH / 2,
    payableDays: DAYS_PER_MONTH / 4,
  },
  before: { revenue: 8000, variableCosts: 3000 },
  openingCash: 1000,
  ownerPaidIn: each(0),
  ownerDraws: each(0),
};

/** Worked by hand: 30 of 120 months leave three quarters of a chamber; of the third year's tax nothing has been paid. */
describe('what is left at the horizon', () => {
  it('is the market value, the balances, the debt, and the tax due and on the gain', () => {
    const tax = -(6 * 4000 + 18_000) * 0.25;
    expect(projectPlan(shop).terminal).toEqual({
      equipment: 1_800_000,
      workingCapital: (11_000 + 2000 - 1000) * 100,
      loans: -300_000,
      tax: tax * 100,
      taxWithoutLoans: tax * 100,
    });
  });

  it('lets earlier losses take off the share of the gain that the law allows', () => {
    const losing = { ...shop, fixedCosts: each(7500), tax: { ...shop.tax, lossOffsetShare: 0.8 } };
    expect(projectPlan(losing).terminal.tax).toBe(-(18_000 - 0.8 * 18_000) * 0.25 * 100);
  });

  it('counts against today as the difference of the two, the loan only for the owner', () => {
    const today = { ...shop, revenue: each(10_000), purchases: [chamber(12_000)], loans: [loan(7200)] };
    const { left, beforeFinancing, afterFinancing } = compareWithToday(projectPlan(today), projectPlan(shop), rates);
    expect(left).toEqual({
      equipment: 9000,
      workingCapital: 1000,
      loans: -1800,
      tax: -(6 * 1000 + 9000) * 0.25,
      taxWithoutLoans: -(6 * 1000 + 9000) * 0.25,
    });
    expect(beforeFinancing.terminal).toBe(9000 + 1000 - 3750);
    expect(afterFinancing.terminal).toBe(9000 + 1000 - 3750 - 1800);
  });
});

describe('cash needed', () => {
  const plain: PlanTerms = {
    ...shop,
    loans: [],
    tax: { ...shop.tax, rate: 0 },
    workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
  };
  const base = { ...plain, revenue: each(9000), purchases: [] };

  it('is the first dip, not a deeper one that the plan pays for itself by then', () => {
    const twice = { ...plain, purchases: [chamber(24_000), chamber(90_000, 24)] };
    const { cashNeeded, beforeFinancing } = compareWithToday(projectPlan(base), projectPlan(twice), rates);
    expect(Math.min(...beforeFinancing.totals)).toBe(-24_000 + 24 * 2000 - 90_000);
    expect(cashNeeded).toMatchObject({ amount: -24_000, month: 0, equipment: -24_000, operations: 0 });
  });

  it('is the deepest point of the first dip', () => {
    const twice = { ...plain, purchases: [chamber(24_000), chamber(6000, 2)] };
    const { cashNeeded } = compareWithToday(projectPlan(base), projectPlan(twice), rates);
    expect(cashNeeded).toMatchObject({ amount: -26_000, month: 2, equipment: -30_000, operations: 4000 });
  });

  it('is nothing when the cash never falls below today’s', () => {
    const dearer = { ...base, revenue: each(9500) };
    const { cashNeeded } = compareWithToday(projectPlan(base), projectPlan(dearer), rates);
    expect(cashNeeded.amount).toBe(0);
  });
});
