import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../lib/numeric/least-squares.ts';

const FREE = { least: [-100, -100], most: [100, 100], difference: 1e-5 };

describe('leastSquares', () => {
  it('finds the line that a textbook finds by its formulas', () => {
    const points = [1, 3, 4, 8].map((y, x) => ({ x, y }));
    const fit = leastSquares({
      ...FREE,
      start: [0, 0],
      residuals: ([a = 0, b = 0]) => points.map(({ x, y }) => y - a - b * x),
    });
    // Slope Σ(x−x̄)(y−ȳ)/Σ(x−x̄)² = 11/5, intercept 4 − 1.5·2.2.
    expect(fit.parameters[0]).toBeCloseTo(0.7, 4);
    expect(fit.parameters[1]).toBeCloseTo(2.2, 4);
    expect(fit.converged).toBe(true);
  });

  it('finds a decay from far off, where the first full step would overshoot', () => {
    const times = [0, 1, 2, 3, 4, 5];
    const fit = leastSquares({
      ...FREE,
      start: [1, 2.5],
      residuals: ([a = 0, b = 0]) => times.map((time) => 7 * Math.exp(-0.4 * time) - a * Math.exp(-b * time)),
    });
    expect(fit.parameters[0]).toBeCloseTo(7, 2);
    expect(fit.parameters[1]).toBeCloseTo(0.4, 2);
    expect(fit.converged).toBe(true);
  });

  it('stays within its limits', () => {
    const fit = leastSquares({
      ...FREE,
      most: [0.5, 100],
      start: [0, 0],
      residuals: ([a = 0, b = 0]) => [3 - a, 1 - b],
    });
    expect(fit.parameters[0]).toBe(0.5);
    expect(fit.parameters[1]).toBeCloseTo(1, 4);
  });

  it('never ends above where it began', () => {
    for (let k = 0; k < 20; k += 1) {
      const bumpy = ([x = 0, y = 0]: readonly number[]) => [Math.sin((3 + k) * x) + x, Math.cos(2 * y) + y * y];
      const start = [2 - k / 7, k / 9];
      const before = bumpy(start).reduce((sum, value) => sum + value * value, 0);
      expect(leastSquares({ ...FREE, start, residuals: bumpy }).cost).toBeLessThanOrEqual(before);
    }
  });

  it('refuses to fit nothing', () => {
    expect(() => leastSquares({ ...FREE, start: [], residuals: () => [1, 2] })).toThrow(RangeError);
    expect(() => leastSquares({ ...FREE, start: [1, 2], residuals: () => [1] })).toThrow(RangeError);
  });
});
