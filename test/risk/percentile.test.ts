import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentile, percentiles } from '../../lib/risk/percentile.ts';

const numbers = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 });

describe('percentile', () => {
  it('interpolates between neighbours as spreadsheets do', () => {
    expect(percentile([4, 1, 3, 2], 0.25)).toBe(1.75);
    expect(percentile([4, 1, 3, 2], 0.5)).toBe(2.5);
    expect(percentile([15, 20, 35, 40, 50], 0.4)).toBeCloseTo(29, 12);
    expect(percentile([7], 0.9)).toBe(7);
  });

  it('is a value of the sample where the place is whole', () => {
    fc.assert(
      fc.property(numbers, fc.nat(), (sample, pick) => {
        const place = pick % sample.length;
        const share = sample.length === 1 ? 0 : place / (sample.length - 1);
        const sorted = [...sample].sort((a, b) => a - b);
        expect(percentile(sample, share)).toBeCloseTo(sorted[place] ?? Number.NaN, 6);
      }),
    );
  });

  it('rises with the share and stays inside the sample', () => {
    const shares = Array.from({ length: 41 }, (_, k) => k / 40);
    fc.assert(
      fc.property(numbers, (sample) => {
        const values = percentiles(sample, shares);
        expect(values[0]).toBe(Math.min(...sample));
        expect(values.at(-1)).toBe(Math.max(...sample));
        values.forEach((value, k) => {
          expect(value).toBeGreaterThanOrEqual(values[k - 1] ?? Number.NEGATIVE_INFINITY);
        });
      }),
    );
  });

  it('is infinite only where an infinite value is needed', () => {
    const sample = [1, 2, 3, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    expect(percentiles(sample, [0.5, 0.6, 0.75, 0.9, 1])).toEqual([3, ...new Array(4).fill(Number.POSITIVE_INFINITY)]);
  });

  it('refuses what has no percentile', () => {
    expect(() => percentile([], 0.5)).toThrow(RangeError);
    expect(() => percentile([1, Number.NaN], 0.5)).toThrow(RangeError);
    expect(() => percentile([1], 1.2)).toThrow(RangeError);
  });
});
