import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pertQuantile } from '../../lib/risk/pert.ts';
import { triangularQuantile } from '../../lib/risk/triangular.ts';
import fixtures from '../fixtures/risk.json' with { type: 'json' };

const both = [
  ['triangular', triangularQuantile],
  ['pert', pertQuantile],
] as const;

describe.each(both)('%s', (name, quantile) => {
  it('agrees with another library', () => {
    expect(fixtures.threePoint).toHaveLength(55);
    for (const row of fixtures.threePoint) {
      const [low = 0, likely = 0, high = 0] = row.points;
      const value = quantile(row.u, { low, likely, high });
      expect(Math.abs(value - row[name]), `${row.points.join(', ')} at ${row.u}`).toBeLessThanOrEqual(
        1e-8 * (high - low),
      );
    }
  });

  it('rises with the share and stays between low and high', () => {
    const triple = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.nat(40), fc.nat(40));
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(triple, share, share, ([low, up, more], u, v) => {
        const points = { low, likely: low + up, high: low + up + more };
        const [small, large] = [Math.min(u, v), Math.max(u, v)];
        expect(quantile(small, points)).toBeGreaterThanOrEqual(low);
        expect(quantile(large, points)).toBeLessThanOrEqual(points.high);
        expect(quantile(small, points)).toBeLessThanOrEqual(quantile(large, points) + 1e-9);
      }),
      { seed: 81 },
    );
  });

  it('has its ends at low and high, and is the point itself when there is one', () => {
    expect(quantile(0, { low: 1, likely: 2, high: 4 })).toBe(1);
    expect(quantile(1, { low: 1, likely: 2, high: 4 })).toBe(4);
    expect(quantile(0.3, { low: 5, likely: 5, high: 5 })).toBe(5);
  });

  it('refuses points out of order and shares outside 0 to 1', () => {
    expect(() => quantile(0.5, { low: 2, likely: 1, high: 3 })).toThrow(RangeError);
    expect(() => quantile(1.5, { low: 1, likely: 2, high: 3 })).toThrow(RangeError);
    expect(() => quantile(0.5, { low: Number.NaN, likely: 2, high: 3 })).toThrow(RangeError);
  });
});
