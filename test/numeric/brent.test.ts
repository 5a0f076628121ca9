import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brent } from '../../lib/numeric/brent.ts';

describe('brent', () => {
  it.each<[string, (x: number) => number, number, number, number]>([
    ['cosine', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['cube', (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['steep exponential', (x) => Math.exp(40 * x) - 2, -1, 1, Math.LN2 / 40],
    ['flat power', (x) => x ** 9, -1, 1.5, 0],
    ['root at the low end', (x) => x - 2, 2, 5, 2],
    ['root at the high end', (x) => x - 5, 2, 5, 5],
  ])('finds the root of a %s', (_, f, low, high, root) => {
    const outcome = brent(f, low, high);
    if (outcome.kind !== 'root') throw new Error(outcome.kind);
    expect(Math.abs(outcome.root - root)).toBeLessThan(1e-11);
    expect(outcome.value).toBe(f(outcome.root));
  });

  it('needs fewer evaluations than halving does', () => {
    const outcome = brent((x) => Math.cos(x) - x, 0, 1, { absolute: 1e-15 });
    expect(outcome.kind).toBe('root');
    expect(outcome.kind === 'root' && outcome.iterations).toBeLessThan(10);
  });

  it('stays in the bracket and brackets the root of any rising cubic', () => {
    const coefficient = fc.double({ min: 0.01, max: 100, noNaN: true });
    const place = fc.double({ min: -9, max: 9, noNaN: true });
    fc.assert(
      fc.property(coefficient, coefficient, place, (a, b, root) => {
        const tried: number[] = [];
        const outcome = brent(
          (x) => {
            tried.push(x);
            return a * (x - root) ** 3 + b * (x - root);
          },
          -10,
          10,
        );
        expect(tried.every((x) => x >= -10 && x <= 10)).toBe(true);
        expect(outcome.kind === 'root' && Math.abs(outcome.root - root)).toBeLessThan(1e-10);
      }),
    );
  });

  it('says so when the signs agree, and when it runs out of steps', () => {
    expect(brent((x) => x * x + 1, -1, 2)).toEqual({ kind: 'noSignChange', atLow: 2, atHigh: 5 });
    expect(brent((x) => Math.cos(x) - x, 0, 1, { maxIterations: 2 }).kind).toBe('notConverged');
  });

  it('refuses ends that are not numbers in order, and functions that are not numbers there', () => {
    expect(() => brent((x) => x, 1, 0)).toThrow(RangeError);
    expect(() => brent((x) => x, Number.NEGATIVE_INFINITY, 0)).toThrow(RangeError);
    expect(() => brent((x) => Math.log(x), -1, 1)).toThrow(RangeError);
  });
});
