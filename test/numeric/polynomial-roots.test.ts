import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { positiveRoots, signChanges } from '../../lib/numeric/polynomial-roots.ts';

/** Coefficients of Π (x − root), lowest power first. */
function fromRoots(roots: readonly number[]): number[] {
  let coefficients = [1];
  for (const root of roots) {
    const known = coefficients;
    coefficients = [0, ...known].map((value, k) => value - root * (known[k] ?? 0));
  }
  return coefficients;
}

/** A second method: sign changes of the polynomial on a fine grid. */
function gridRoots(coefficients: readonly number[], from: number, to: number, steps: number): number[] {
  const at = (x: number) => coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
  const found: number[] = [];
  for (let k = 1; k <= steps; k += 1) {
    const low = from + ((to - from) * (k - 1)) / steps;
    const high = from + ((to - from) * k) / steps;
    if (at(low) > 0 !== at(high) > 0) found.push((low + high) / 2);
  }
  return found;
}

describe('positiveRoots', () => {
  it('finds the roots it was built from, below, at and above 1', () => {
    const roots = positiveRoots(fromRoots([0.25, 0.5, 1, 3, 40]));
    expect(roots).toHaveLength(5);
    [0.25, 0.5, 1, 3, 40].forEach((root, k) => {
      expect(roots[k]).toBeCloseTo(root, 10);
    });
  });

  it('gives no root for coefficients of one sign, for a constant and for nothing', () => {
    expect(positiveRoots([1, 2, 3])).toEqual([]);
    expect(positiveRoots([-4])).toEqual([]);
    expect(positiveRoots([0, 0])).toEqual([]);
    expect(positiveRoots([])).toEqual([]);
  });

  it('gives no root where the curve comes close to zero without touching it', () => {
    expect(positiveRoots([1, -1.9999, 1])).toEqual([]);
    expect(positiveRoots([1.21, -2.19, 1])).toEqual([]);
  });

  it('gives a touching root once', () => {
    expect(positiveRoots([1, -2, 1])).toEqual([1]);
    const below = positiveRoots(fromRoots([0.3, 0.3]));
    expect(below).toHaveLength(1);
    expect(below[0]).toBeCloseTo(0.3, 7);
    const triple = positiveRoots(fromRoots([0.6, 0.6, 0.6, 0.9]));
    expect(triple).toHaveLength(2);
    expect(triple[0]).toBeCloseTo(0.6, 4);
    const above = positiveRoots(fromRoots([7, 7]));
    expect(above).toHaveLength(1);
    expect(above[0]).toBeCloseTo(7, 6);
  });

  it('keeps a root that falls exactly where an interval is halved', () => {
    const roots = positiveRoots(fromRoots([0.25, 0.5, 0.75]));
    expect(roots.map((root) => Number(root.toFixed(12)))).toEqual([0.25, 0.5, 0.75]);
  });

  it('ignores roots at zero and below', () => {
    expect(positiveRoots([0, 0, -2, 1])).toEqual([2]);
    expect(positiveRoots(fromRoots([-3, -0.5, 2]))).toEqual([2]);
  });

  it('agrees with a fine grid on random polynomials', () => {
    const coefficient = fc.integer({ min: -1000, max: 1000 });
    fc.assert(
      fc.property(fc.array(coefficient, { minLength: 2, maxLength: 9 }), (coefficients) => {
        const found = positiveRoots(coefficients).filter((root) => root > 0.001 && root < 3);
        for (const root of gridRoots(coefficients, 0.001, 3, 4000)) {
          expect(found.some((other) => Math.abs(other - root) < 2e-3)).toBe(true);
        }
      }),
      { seed: 20, numRuns: 300 },
    );
  });

  it('never gives more roots than the coefficients change sign', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 40 }), (coefficients) => {
        expect(positiveRoots(coefficients).length).toBeLessThanOrEqual(signChanges(coefficients));
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it('refuses what is not a number and a degree out of range', () => {
    expect(() => positiveRoots([1, Number.NaN])).toThrow(RangeError);
    expect(() => positiveRoots(new Array(1002).fill(1))).toThrow(RangeError);
  });
});
