import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../lib/numeric/seeded-random.ts';
import { convergence } from '../../lib/risk/convergence.ts';
import { percentile } from '../../lib/risk/percentile.ts';
import { samplePoints } from '../../lib/risk/sample-points.ts';

/** Independent draws of −ln u: skewed, mean 1, median ln 2. */
function skewed(count: number, seed: number): number[] {
  const { uniform } = seededRandom(seed);
  return Array.from({ length: count }, () => -Math.log(uniform()));
}

describe('convergence', () => {
  it('looks at doubling counts and at all', () => {
    expect(convergence(skewed(100, 1)).map((point) => point.draws)).toEqual([16, 32, 64, 100]);
    expect(convergence(skewed(64, 1)).map((point) => point.draws)).toEqual([16, 32, 64]);
    expect(convergence(skewed(15, 1))).toEqual([]);
  });

  it('has mean and median of the first draws', () => {
    const values = skewed(40, 2);
    const [first] = convergence(values);
    expect(first?.mean).toBeCloseTo(values.slice(0, 16).reduce((sum, value) => sum + value, 0) / 16, 12);
    expect(first?.median).toBe(percentile(values.slice(0, 16), 0.5));
  });

  it('narrows by about the root of the count', () => {
    const points = convergence(skewed(4096, 3));
    const [last] = points.slice(-1);
    points.slice(0, -1).forEach((point) => {
      const expected = Math.sqrt(4096 / point.draws);
      const ratio = point.meanHalfWidth / (last?.meanHalfWidth ?? Number.NaN);
      expect(ratio / expected).toBeGreaterThan(0.5);
      expect(ratio / expected).toBeLessThan(2);
    });
    // Deviation 1, and 1/(2·density·√n) = 1/√n at the median, where the density is one half.
    expect((last?.meanHalfWidth ?? 0) / (1.96 / 64)).toBeCloseTo(1, 1);
    expect((last?.medianHalfWidth ?? 0) / (1.96 / 64)).toBeCloseTo(1, 0);
  });

  it('holds the truth about 19 times in 20', () => {
    const trials = Array.from({ length: 400 }, (_, seed) => convergence(skewed(256, seed)).at(-1));
    const holds = (centre: 'mean' | 'median', half: 'meanHalfWidth' | 'medianHalfWidth', truth: number) =>
      trials.filter((point) => Math.abs((point?.[centre] ?? 9) - truth) < (point?.[half] ?? 0)).length / 400;
    // 400 trials at 95 % scatter by 1.1 %; four of those either way.
    expect(Math.abs(holds('mean', 'meanHalfWidth', 1) - 0.95)).toBeLessThan(0.044);
    expect(Math.abs(holds('median', 'medianHalfWidth', Math.log(2)) - 0.95)).toBeLessThan(0.044);
  });

  it('is too careful for evenly spread points', () => {
    const misses = Array.from({ length: 50 }, (_, seed) => {
      const points = samplePoints(256, 3, seed).map(([a = 0, b = 0, c = 0]) => a + b + c);
      const last = convergence(points).at(-1);
      return Math.abs((last?.mean ?? 9) - 1.5) / (last?.meanHalfWidth ?? 0);
    });
    expect(Math.max(...misses)).toBeLessThan(0.2);
  });

  it('refuses what has no mean', () => {
    expect(() => convergence([...skewed(20, 1), Number.POSITIVE_INFINITY])).toThrow(RangeError);
  });
});
