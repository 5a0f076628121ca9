import { describe, expect, it } from 'vitest';
import { breakEven, marginOfSafety } from '../../lib/finance/break-even.ts';

describe('breakEven', () => {
  it('is the volume at which profit is nothing', () => {
    const at = breakEven(1234, 17, 5.5);
    expect(at).not.toBeNull();
    if (at) expect(at.volume * (17 - 5.5) - 1234).toBeCloseTo(0, 9);
  });

  it('works on whole plans too: as a share of the planned sales', () => {
    expect(breakEven(30000, 100000, 40000)?.volume).toBeCloseTo(0.5, 12);
  });

  it('is null when a unit costs as much as it brings', () => {
    expect(breakEven(100, 5, 5)).toBeNull();
    expect(breakEven(100, 5, 6)).toBeNull();
  });

  it('refuses a negative fixed cost and a price of nothing', () => {
    expect(() => breakEven(-1, 5, 1)).toThrow(RangeError);
    expect(() => breakEven(1, 0, 1)).toThrow(RangeError);
  });
});

describe('marginOfSafety', () => {
  it('is the share by which sales can fall', () => {
    expect(marginOfSafety(200, 150)).toBe(0.25);
    expect(marginOfSafety(100, 150)).toBe(-0.5);
    expect(marginOfSafety(0, 10)).toBeNull();
  });
});
