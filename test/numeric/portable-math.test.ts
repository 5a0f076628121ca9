import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cos, exp, expm1, log, log1p, pow, sin } from '../../lib/numeric/portable-math.ts';

/*
 * Against the functions of this JavaScript engine, which are good to one unit in the last place, and against values of
 * Abramowitz and Stegun (1964), tables 1.1 and 4 (from memory): e, ln 10, sin 1, cos 1.
 */
const EPS = 1e-15;

function off(value: number, exact: number): number {
  return value === exact ? 0 : Math.abs(value - exact) / Math.abs(exact);
}

function expectClose(own: (x: number) => number, given: (x: number) => number, min: number, max: number): void {
  fc.assert(
    fc.property(fc.double({ min, max, noNaN: true }), (x) => {
      expect(off(own(x), given(x))).toBeLessThan(EPS);
    }),
    { numRuns: 3000 },
  );
}

describe('the elementary functions of our own', () => {
  it('have the tabulated values', () => {
    expect(exp(1)).toBeCloseTo(Math.E, 15);
    expect(log(10)).toBeCloseTo(Math.LN10, 15);
    expect(sin(1)).toBeCloseTo(0.8414709848078965, 15);
    expect(cos(1)).toBeCloseTo(0.5403023058681398, 15);
  });

  it('agree with those of the engine to the last bits', () => {
    expectClose(exp, Math.exp, -700, 700);
    expectClose(expm1, Math.expm1, -1, 1);
    expectClose(log, Math.log, 1e-300, 1e300);
    expectClose(log, Math.log, 0.5, 2);
    expectClose(log1p, Math.log1p, -0.9, 5);
    expectClose(
      (x) => pow(x, 0.25),
      (x) => x ** 0.25,
      1e-6,
      1e6,
    );
    expectClose(
      (x) => pow(x, -12),
      (x) => x ** -12,
      0.5,
      2,
    );
  });

  it('turn with the angle', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), (x) => {
        expect(Math.abs(sin(x) - Math.sin(x))).toBeLessThan(1e-15);
        expect(Math.abs(cos(x) - Math.cos(x))).toBeLessThan(1e-15);
      }),
      { numRuns: 3000 },
    );
  });

  it('know where they end', () => {
    expect([exp(710), exp(-746), exp(Number.NEGATIVE_INFINITY)]).toEqual([Number.POSITIVE_INFINITY, 0, 0]);
    expect([log(0), log(Number.POSITIVE_INFINITY)]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
    expect([exp(Number.NaN), log(-1), log(Number.NaN)]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    expect(off(log(Number.MIN_VALUE), -744.4400719213812)).toBeLessThan(EPS);
    expect(off(exp(709.7), 1.6549840276802644e308)).toBeLessThan(1e-15);
    expect([exp(0), expm1(0), log(1), log1p(0), pow(0, 0.5), pow(-2, 3), pow(2, -2)]).toEqual([
      1, 0, 0, 0, 0, -8, 0.25,
    ]);
    expect(() => pow(-2, 0.5)).toThrow(/-2 to the 0.5/);
  });
});
