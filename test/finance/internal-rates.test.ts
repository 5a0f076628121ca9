import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type InternalRates, internalRates, mapRates } from '../../lib/finance/internal-rates.ts';
import { modifiedInternalRate } from '../../lib/finance/modified-internal-rate.ts';
import { netPresentValue, presentValues } from '../../lib/finance/net-present-value.ts';

function ratesOf(outcome: InternalRates): readonly number[] {
  if (outcome.kind === 'none') return [];
  return outcome.kind === 'one' ? [outcome.rate] : outcome.rates;
}

describe('internalRates', () => {
  it('makes the net present value nothing at every rate it gives', () => {
    const flows = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 85 });
    fc.assert(
      fc.property(flows, (values) => {
        for (const rate of ratesOf(internalRates(values))) {
          const gross = presentValues(rate, values).reduce((sum, value) => sum + Math.abs(value), 0);
          expect(Math.abs(netPresentValue(rate, values))).toBeLessThanOrEqual(1e-9 * gross * (1 + 1 / (1 + rate)));
        }
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('finds the one rate of a purchase that pays back over 84 and over 360 months', () => {
    for (const months of [84, 360]) {
      const found = internalRates([-60000, ...new Array<number>(months).fill(1100)]);
      expect(found.kind).toBe('one');
      for (const rate of ratesOf(found))
        expect(netPresentValue(rate, [-60000, ...new Array(months).fill(1100)])).toBeCloseTo(0, 6);
    }
  });

  it('gives every root where the flows change sign more than once', () => {
    const three = internalRates([-1000, 3.6 * 1000, -4.31 * 1000, 1.716 * 1000]);
    expect(ratesOf(three).map((rate) => Number(rate.toFixed(6)))).toEqual([0.1, 0.2, 0.3]);
    expect(three.kind).toBe('several');
  });

  it('finds the second root of a plant with a costly end, twenty years out', () => {
    const flows = [-100, ...new Array<number>(19).fill(20), -300];
    const rates = ratesOf(internalRates(flows));
    expect(rates).toHaveLength(2);
    for (const rate of rates) expect(netPresentValue(rate, flows)).toBeCloseTo(0, 8);
  });

  it('says why there is none', () => {
    expect(internalRates([])).toEqual({ kind: 'none', reason: 'noFlows' });
    expect(internalRates([0, 0])).toEqual({ kind: 'none', reason: 'noFlows' });
    expect(internalRates([5, 5])).toEqual({ kind: 'none', reason: 'oneSign' });
    expect(internalRates([-5, -1])).toEqual({ kind: 'none', reason: 'oneSign' });
    expect(internalRates([100, -150, 100])).toEqual({ kind: 'none', reason: 'neverZero' });
  });

  it('gives negative rates when the money does not come back', () => {
    expect(ratesOf(internalRates([-100, 50]))[0]).toBeCloseTo(-0.5, 12);
  });

  it('does not change the flows it is given', () => {
    const flows = Object.freeze([-10, 4, 4, 4]) as readonly number[];
    expect(() => internalRates(flows)).not.toThrow();
  });

  it('maps rates and leaves reasons alone', () => {
    expect(mapRates({ kind: 'one', rate: 2 }, (rate) => rate * 3)).toEqual({ kind: 'one', rate: 6 });
    expect(mapRates({ kind: 'several', rates: [1, 2] }, (rate) => rate + 1)).toEqual({
      kind: 'several',
      rates: [2, 3],
    });
    expect(mapRates({ kind: 'none', reason: 'oneSign' }, (rate) => rate)).toEqual({ kind: 'none', reason: 'oneSign' });
  });
});

describe('netPresentValue', () => {
  it('is the plain sum at a rate of nothing and does not discount the first flow', () => {
    expect(netPresentValue(0, [-100, 60, 70])).toBe(30);
    expect(netPresentValue(0.5, [-100])).toBe(-100);
    expect(netPresentValue(0.1, [])).toBe(0);
  });

  it('agrees with dividing by hand', () => {
    expect(netPresentValue(0.2, [10, 12, 14.4])).toBeCloseTo(30, 12);
    expect(() => netPresentValue(-1, [1])).toThrow(RangeError);
  });
});

describe('modifiedInternalRate', () => {
  it('equals the internal rate when both rates are that rate', () => {
    const flows = [-900, 300, 350, 500];
    const outcome = internalRates(flows);
    if (outcome.kind !== 'one') throw new Error('one rate expected');
    expect(modifiedInternalRate(flows, outcome.rate, outcome.rate)).toBeCloseTo(outcome.rate, 12);
  });

  it('is null without a payment or without a receipt', () => {
    expect(modifiedInternalRate([1, 2], 0.1, 0.1)).toBeNull();
    expect(modifiedInternalRate([-1, -2], 0.1, 0.1)).toBeNull();
    expect(modifiedInternalRate([], 0.1, 0.1)).toBeNull();
  });
});
