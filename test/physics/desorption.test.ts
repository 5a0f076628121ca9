import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { desorptionRate, desorptionTime, moistureAfter } from '../../lib/physics/desorption.ts';

describe('desorptionRate', () => {
  it('doubles over about 10 K at 60 kJ/mol and is the bare rate without an activation energy', () => {
    expect(desorptionRate(1e6, 60_000, 313.15) / desorptionRate(1e6, 60_000, 303.15)).toBeCloseTo(2.14, 2);
    expect(desorptionRate(0.3, 0, 300)).toBe(0.3);
  });

  it.each([0, -5, Number.NaN])('refuses %s K', (T) => {
    expect(() => desorptionRate(1, 1, T)).toThrow(RangeError);
  });
});

describe('moistureAfter and desorptionTime', () => {
  it('undo each other', () => {
    const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(share, share, (start, left) => {
        const target = 0.01 + (start - 0.01) * left;
        const time = desorptionTime(start, target, 0.01, 2e-4);
        expect(moistureAfter(start, 0.01, 2e-4, time)).toBeCloseTo(target, 12);
      }),
    );
  });

  it('take no time when it is dry enough, and refuse a target that is never reached', () => {
    expect(desorptionTime(0.03, 0.04, 0.01, 1e-4)).toBe(0);
    expect(() => desorptionTime(0.1, 0.01, 0.01, 1e-4)).toThrow(RangeError);
    expect(() => desorptionTime(0.1, 0.02, 0.01, 0)).toThrow(RangeError);
  });
});
