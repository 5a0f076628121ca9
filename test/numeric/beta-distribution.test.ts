import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaCumulative, betaQuantile } from '../../lib/numeric/beta-distribution.ts';
import { logGamma } from '../../lib/numeric/log-gamma.ts';
import fixtures from '../fixtures/risk.json' with { type: 'json' };

describe('logGamma', () => {
  it.each(fixtures.logGamma)('agrees with another library at %f', (x = Number.NaN, expected = Number.NaN) => {
    expect(Math.abs(logGamma(x) - expected)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(expected)));
  });

  it('knows factorials and refuses what is not above 0', () => {
    expect(Math.exp(logGamma(7))).toBeCloseTo(720, 9);
    expect(() => logGamma(0)).toThrow(RangeError);
    expect(() => logGamma(Number.NaN)).toThrow(RangeError);
  });
});

describe('beta distribution', () => {
  it('agrees with another library in its quantiles, tails included', () => {
    expect(fixtures.beta).toHaveLength(88);
    for (const { a, b, u, x } of fixtures.beta) {
      expect(Math.abs(betaQuantile(u, a, b) / x - 1), `a ${a}, b ${b}, u ${u}`).toBeLessThanOrEqual(1e-10);
    }
  });

  it('undoes itself', () => {
    // Below 1 a density runs to infinity at an end, where neighbouring doubles lie too far apart to give the share back.
    const shape = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.0001, max: 0.9999, noNaN: true }), shape, shape, (u, a, b) => {
        expect(betaCumulative(betaQuantile(u, a, b), a, b)).toBeCloseTo(u, 9);
      }),
      { seed: 71 },
    );
  });

  it('is the plain power where one shape is 1, and mirrors', () => {
    expect(betaCumulative(0.3, 1, 1)).toBeCloseTo(0.3, 14);
    expect(betaCumulative(0.3, 4, 1)).toBeCloseTo(0.3 ** 4, 14);
    expect(betaCumulative(0.3, 2.5, 4)).toBeCloseTo(1 - betaCumulative(0.7, 4, 2.5), 14);
  });

  it('has its ends at 0 and 1, and refuses what is outside', () => {
    expect(betaQuantile(0, 2, 3)).toBe(0);
    expect(betaQuantile(1, 2, 3)).toBe(1);
    expect(betaCumulative(1, 2, 3)).toBe(1);
    expect(() => betaQuantile(1.1, 2, 3)).toThrow(RangeError);
    expect(() => betaCumulative(-0.1, 2, 3)).toThrow(RangeError);
    expect(() => betaQuantile(0.5, 0, 3)).toThrow(RangeError);
  });
});
