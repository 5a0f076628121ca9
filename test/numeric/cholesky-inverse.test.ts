import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choleskyInverse } from '../../lib/numeric/cholesky-inverse.ts';

function times(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  return a.map((row) =>
    b.map((_, j) => row.reduce((sum, value, k) => sum + value * ((b[k] as number[])[j] as number), 0)),
  );
}

describe('choleskyInverse', () => {
  it('inverts a matrix known by hand', () => {
    const [first = [], second = []] = choleskyInverse([
      [4, 2],
      [2, 3],
    ]);
    expect([...first, ...second]).toEqual([0.375, -0.25, -0.25, 0.5].map((value) => expect.closeTo(value, 14)));
  });

  it('gives the unit matrix when multiplied with what it inverted', () => {
    const size = fc.integer({ min: 1, max: 6 });
    const entry = fc.double({ min: -3, max: 3, noNaN: true });
    const square = size.chain((n) =>
      fc.array(fc.array(entry, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
    );
    fc.assert(
      fc.property(square, (root) => {
        // M·Mᵀ + 1 is positive definite whatever M is.
        const matrix = root.map((row, i) =>
          root.map((other, j) => row.reduce((sum, value, k) => sum + value * (other[k] as number), i === j ? 1 : 0)),
        );
        times(matrix, choleskyInverse(matrix)).forEach((row, i) => {
          expect(row).toEqual(row.map((_, j) => expect.closeTo(i === j ? 1 : 0, 8)));
        });
      }),
    );
  });

  it('refuses what is not positive definite', () => {
    expect(() => choleskyInverse([[0]])).toThrow(RangeError);
    expect(() =>
      choleskyInverse([
        [1, 2],
        [2, 1],
      ]),
    ).toThrow(RangeError);
  });
});
