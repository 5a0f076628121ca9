import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolate, segmentIndex } from '../../lib/numeric/interpolate.ts';

const XS = [1, 2, 4, 8];
const YS = [10, 20, 0, 5];

describe('interpolate', () => {
  it('goes through the points and straight between them', () => {
    XS.forEach((x, i) => {
      expect(interpolate(XS, YS, x)).toBe(YS[i]);
    });
    expect(interpolate(XS, YS, 1.5)).toBe(15);
    expect(interpolate(XS, YS, 3)).toBe(10);
    expect(interpolate(XS, YS, 6)).toBe(2.5);
  });

  it('holds the end values outside the table', () => {
    expect(interpolate(XS, YS, -100)).toBe(10);
    expect(interpolate(XS, YS, 100)).toBe(5);
    expect(interpolate([3], [7], 0)).toBe(7);
  });

  it('stays between the neighbours', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 8, noNaN: true }), (x) => {
        const i = segmentIndex(XS, x);
        expect(x).toBeGreaterThanOrEqual(XS[i] as number);
        expect(x).toBeLessThanOrEqual(XS[i + 1] as number);
        const ends = [YS[i] as number, YS[i + 1] as number];
        expect(interpolate(XS, YS, x)).toBeGreaterThanOrEqual(Math.min(...ends));
        expect(interpolate(XS, YS, x)).toBeLessThanOrEqual(Math.max(...ends));
      }),
    );
  });

  it('refuses tables that are empty or of two lengths', () => {
    expect(() => interpolate([], [], 1)).toThrow(RangeError);
    expect(() => interpolate([1, 2], [1], 1)).toThrow(RangeError);
  });
});
