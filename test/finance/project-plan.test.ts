import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loanSchedule } from '../../lib/finance/loan-schedule.ts';
import type { PlanTerms } from '../../lib/finance/plan-terms.ts';
import { type Projection, projectPlan } from '../../lib/finance/project-plan.ts';

const months = (count: number, value: number) => new Array<number>(count).fill(value);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** A shop that buys nothing, owes nothing and is paid at once. */
const quietShop: PlanTerms = {
  horizonMonths: 24,
  revenue: months(24, 10000),
  variableCosts: months(24, 4000),
  fixedCosts: months(24, 3000),
  stockValue: months(24, 0),
  purchases: [],
  loans: [],
  tax: { rate: 0.3, lossOffsetShare: 1, paidEveryMonths: 12 },
  workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
  before: { revenue: 0, variableCosts: 0 },
  openingCash: 5000,
  ownerPaidIn: months(24, 0),
  ownerDraws: months(24, 0),
};

const cents = (max: number) => fc.integer({ min: 0, max }).map((value) => value / 100);
const horizon = 40;
const series = (max: number) => fc.array(cents(max), { minLength: horizon, maxLength: horizon });

const anyPlan: fc.Arbitrary<PlanTerms> = fc.record({
  horizonMonths: fc.constant(horizon),
  revenue: series(3e6),
  variableCosts: series(2e6),
  fixedCosts: series(1e6),
  stockValue: series(1e5),
  purchases: fc.array(
    fc.record({
      name: fc.constant('Thing'),
      month: fc.integer({ min: -30, max: 39 }),
      amount: cents(1e7),
      lifeMonths: fc.integer({ min: 1, max: 84 }),
      salvage: cents(1e6),
      method: fc.constantFrom(
        { kind: 'straightLine' as const },
        { kind: 'table' as const, table: 'recovery7' as const },
      ),
      expensedShare: fc.double({ min: 0, max: 1, noNaN: true }),
      replaced: fc.boolean(),
      sold: fc.constant(null),
    }),
    { maxLength: 4 },
  ),
  loans: fc.array(
    fc
      .record({
        principal: cents(1e7),
        annualRate: fc.double({ min: 0, max: 0.25, noNaN: true }),
        termMonths: fc.integer({ min: 20, max: 120 }),
        graceMonths: fc.integer({ min: 0, max: 6 }),
        interestOnlyMonths: fc.integer({ min: 0, max: 6 }),
        fee: cents(1e5),
        drawMonth: fc.integer({ min: -30, max: 39 }),
        isRunning: fc.boolean(),
      })
      .map((loan) => (loan.isRunning ? { ...loan, drawMonth: 0 } : loan)),
    { maxLength: 3 },
  ),
  tax: fc.record({
    rate: fc.double({ min: 0, max: 1, noNaN: true }),
    lossOffsetShare: fc.double({ min: 0, max: 1, noNaN: true }),
    paidEveryMonths: fc.constantFrom(1 as const, 3 as const, 12 as const),
  }),
  workingCapital: fc.record({
    receivableDays: fc.integer({ min: 0, max: 120 }),
    inventoryDays: fc.integer({ min: 0, max: 120 }),
    payableDays: fc.integer({ min: 0, max: 120 }),
  }),
  before: fc.record({ revenue: cents(3e6), variableCosts: cents(2e6) }),
  openingCash: cents(1e7),
  ownerPaidIn: series(1e5),
  ownerDraws: series(1e5),
});

function expectBalanced(plan: Projection): void {
  const { balance, income, cash } = plan;
  for (let t = 0; t <= plan.horizonMonths; t += 1) {
    expect(balance.totalAssets[t]).toBe((balance.totalLiabilities[t] ?? 0) + (balance.totalEquity[t] ?? 0));
  }
  for (const statement of [income, cash, balance]) {
    for (const line of Object.values(statement)) expect(line.every(Number.isSafeInteger)).toBe(true);
  }
}

describe('projectPlan', () => {
  it('balances to the cent in every month, whatever the plan', () => {
    fc.assert(
      fc.property(anyPlan, (terms) => {
        expectBalanced(projectPlan(terms));
      }),
      { seed: 10, numRuns: 200 },
    );
  });

  it('holds the same cash by moment as its cash flow statement', () => {
    fc.assert(
      fc.property(anyPlan, (terms) => {
        const plan = projectPlan(terms);
        const { operations, workingCapital, equipment, tax, loansDrawn, loanPayments } = plan.timeline;
        const moved = [operations, workingCapital, equipment, tax, loansDrawn, loanPayments].map(sum);
        const owner = sum(plan.cash.ownerPaidIn) + sum(plan.cash.ownerDraws);
        expect(sum(moved) + owner).toBe(sum(plan.cash.net));
      }),
      { seed: 12, numRuns: 100 },
    );
  });

  it('gives a quiet shop the profit and cash one works out by hand', () => {
    const plan = projectPlan(quietShop);
    expect(plan.income.ebitda[0]).toBe(300000);
    expect(sum(plan.income.netProfit)).toBe(24 * 300000 * 0.7);
    expect(plan.balance.cash.at(-1)).toBe(500000 + 24 * 210000);
    expect(plan.balance.taxPayable[6]).toBe(6 * 90000);
    expect(plan.cover.lowest).toBeNull();
  });

  it('carries a loan and the machine it bought', () => {
    const loan = {
      principal: 20000,
      annualRate: 0.08,
      termMonths: 24,
      graceMonths: 0,
      interestOnlyMonths: 0,
      fee: 250,
      drawMonth: 2,
    };
    const machine = {
      name: 'Chamber',
      month: 2,
      amount: 25000,
      lifeMonths: 120,
      salvage: 1000,
      method: { kind: 'straightLine' as const },
      expensedShare: 0,
      replaced: false,
      sold: null,
    };
    const plan = projectPlan({ ...quietShop, loans: [loan], purchases: [machine] });
    expectBalanced(plan);
    expect(plan.cash.purchases[2]).toBe(-2500000);
    expect(plan.cash.loansDrawn[2]).toBe(2000000);
    expect(plan.income.loanFees[2]).toBe(-25000);
    expect(plan.income.depreciation[2]).toBe(-20000);
    expect(plan.balance.loans[3]).toBe(loanSchedule(loan)[0]?.closing);
    expect(plan.cover.byYear[1]).toBeCloseTo(3600000 / (12 * (loanSchedule(loan)[0]?.payment ?? 0)), 9);
    expect(plan.timeline.equipment[2]).toBe(-2500000);
    expect(plan.timeline.loanPayments[2]).toBe(-25000);
    expect(plan.terminal.equipment).toBe(2500000 - 22 * 20000);
  });

  it('brings the same tax with loans as without when there are none', () => {
    const plan = projectPlan(quietShop);
    expect(plan.timeline.tax).toEqual(plan.timeline.taxWithoutLoans);
    expect(plan.terminal.tax).toBe(plan.terminal.taxWithoutLoans);
  });

  it('taxes equipment left above its book value, after losses', () => {
    const machine = {
      name: 'Chamber',
      month: 0,
      amount: 10000,
      lifeMonths: 48,
      salvage: 2000,
      method: { kind: 'straightLine' as const },
      expensedShare: 1,
      replaced: false,
      sold: null,
    };
    const plan = projectPlan({ ...quietShop, purchases: [machine] });
    expect(plan.terminal.equipment).toBe(600000);
    expect(plan.terminal.tax).toBe(-180000);
  });

  it('refuses series that do not fit the horizon and amounts that are negative', () => {
    expect(() => projectPlan({ ...quietShop, revenue: [1] })).toThrow(RangeError);
    expect(() => projectPlan({ ...quietShop, fixedCosts: months(24, -1) })).toThrow(RangeError);
    expect(() => projectPlan({ ...quietShop, horizonMonths: 0, revenue: [] })).toThrow(RangeError);
    expect(() => projectPlan({ ...quietShop, revenue: months(24, Number.NaN) })).toThrow(RangeError);
  });
});
