import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { steadyState } from '../../lib/numeric/steady-state.ts';

const anyRates = fc.integer({ min: 1, max: 7 }).chain((size) =>
  fc.array(fc.array(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), { minLength: size, maxLength: size }), {
    minLength: size,
    maxLength: size,
  }),
);

describe('steadyState', () => {
  it('shares time between two states as the rates back and forth', () => {
    expect(
      steadyState([
        [0, 2],
        [6, 0],
      ]),
    ).toEqual([0.75, 0.25]);
    expect(steadyState([[99]])).toEqual([1]);
  });

  it('lets as much flow into every state as out of it', () => {
    fc.assert(
      fc.property(anyRates, (rates) => {
        const shares = steadyState(rates);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        rates.forEach((row, state) => {
          const out = (shares[state] ?? 0) * row.reduce((sum, rate, to) => (to === state ? sum : sum + rate), 0);
          const into = rates.reduce(
            (sum, from, k) => (k === state ? sum : sum + (shares[k] ?? 0) * (from[state] ?? 0)),
            0,
          );
          expect(Math.abs(into - out)).toBeLessThan(1e-12 * Math.max(1, out));
        });
      }),
    );
  });

  it('keeps all digits of a share of a trillionth of a trillionth', () => {
    const [, , last] = steadyState([
      [0, 1e-12, 0],
      [1, 0, 1e-12],
      [0, 1, 0],
    ]);
    expect((last ?? 0) / 1e-24).toBeCloseTo(1, 11);
  });

  it('leaves out what is never entered', () => {
    expect(
      steadyState([
        [0, 0],
        [3, 0],
      ]),
    ).toEqual([1, 0]);
  });

  it('refuses a chain that gets stuck, and an empty one', () => {
    expect(() =>
      steadyState([
        [0, 1],
        [0, 0],
      ]),
    ).toThrow(RangeError);
    expect(() => steadyState([])).toThrow(RangeError);
  });
});
