import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromCents, spreadCents, sumCents, toCents } from '../../lib/finance/cents.ts';

describe('cents', () => {
  it('rounds halves away from zero, alike on both sides', () => {
    expect(toCents(0.125)).toBe(13);
    expect(toCents(-0.125)).toBe(-13);
    expect(Object.is(toCents(-0.001), 0)).toBe(true);
    expect(fromCents(1234)).toBe(12.34);
  });

  it('refuses what cannot be counted', () => {
    expect(() => toCents(Number.NaN)).toThrow(RangeError);
    expect(() => toCents(1e15)).toThrow(RangeError);
    expect(() => spreadCents(10, [0, 0])).toThrow(RangeError);
    expect(() => spreadCents(10, [2, -1])).toThrow(RangeError);
  });

  it('spreads a total so that the parts sum to it', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 50 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        weights.filter((values) => values.some((value) => value > 0)),
        (total, values) => {
          const parts = spreadCents(total, values);
          expect(sumCents(parts)).toBe(total);
          const whole = values.reduce((sum, value) => sum + value, 0);
          parts.forEach((part, k) => {
            expect(Math.abs(part - (total * (values[k] ?? 0)) / whole)).toBeLessThanOrEqual(1 + 1e-6);
          });
        },
      ),
      { seed: 4 },
    );
  });
});
