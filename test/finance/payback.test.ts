import { describe, expect, it } from 'vitest';
import { netPresentValue, presentValues } from '../../lib/finance/net-present-value.ts';
import { payback, runningTotals } from '../../lib/finance/payback.ts';
import { profitabilityIndex } from '../../lib/finance/profitability-index.ts';

describe('payback', () => {
  it('interpolates within the period in which the money is back', () => {
    expect(payback([-100, 40, 40, 40])).toEqual({ kind: 'after', period: 2.5, later: [] });
  });

  it('counts a total of exactly nothing as paid back', () => {
    expect(payback([-100, 50, 50])).toEqual({ kind: 'after', period: 2, later: [] });
    expect(payback([-0.3, 0.1, 0.2])).toEqual({ kind: 'after', period: 2, later: [] });
  });

  it('tells each later crossing', () => {
    expect(payback([-100, 150, -100, 100])).toEqual({
      kind: 'after',
      period: 2 / 3,
      later: [
        { period: 1.5, direction: 'below' },
        { period: 2.5, direction: 'above' },
      ],
    });
  });

  it('starts to count only once the total is below zero', () => {
    expect(payback([10, -20, 15])).toEqual({ kind: 'after', period: 1 + 10 / 15 + 0, later: [] });
  });

  it('says what is missing when it never comes back, and when none was needed', () => {
    expect(payback([-100, 30, 30])).toEqual({ kind: 'never', missing: 40 });
    expect(payback([0, 5])).toEqual({ kind: 'notNeeded' });
    expect(payback([])).toEqual({ kind: 'notNeeded' });
  });

  it('is later when the flows are discounted', () => {
    const flows = [-100, 60, 60, 60];
    const plain = payback(flows);
    const discounted = payback(presentValues(0.1, flows));
    if (plain.kind !== 'after' || discounted.kind !== 'after') throw new Error('both pay back');
    expect(discounted.period).toBeGreaterThan(plain.period);
  });

  it('gives running totals that end at the sum', () => {
    expect(runningTotals([1, 2, 3])).toEqual([1, 3, 6]);
    expect(runningTotals([0.1, 0.2, -0.3]).at(-1)).toBe(0);
  });
});

describe('profitabilityIndex', () => {
  it('is what comes back over what is put in, at present value', () => {
    const flows = [-100, 60, 60];
    const value = netPresentValue(0.05, flows);
    expect(profitabilityIndex(value, 100)).toBeCloseTo((60 / 1.05 + 60 / 1.05 ** 2) / 100, 12);
    expect(profitabilityIndex(5, 0)).toBeNull();
  });
});
