import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundStep, roundTicks } from '../../lib/views/chart-scale.ts';

describe('round marks', () => {
  it.each([
    [0, 100, 5, [0, 20, 40, 60, 80, 100]],
    [-120, 480, 6, [-200, -100, 0, 100, 200, 300, 400, 500]],
    [0, 0.0123, 2, [0, 0.01, 0.02]],
    [0, 0, 4, [0]],
  ])('from %d to %d', (low, high, count, ticks) => {
    expect(roundTicks(low, high, count)).toEqual(ticks);
  });

  it('always hold the whole range, and are neither few nor many', () => {
    const size = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 8 }), (below, above, count) => {
        const ticks = roundTicks(-below, above, count);
        const slack = 1e-6 * (below + above);
        expect(ticks[0]).toBeLessThanOrEqual(-below + slack);
        expect(ticks.at(-1)).toBeGreaterThanOrEqual(above - slack);
        expect(ticks.length).toBeLessThanOrEqual(count + 3);
      }),
    );
  });

  it('have a step of one for a range without size', () => {
    expect([0, -1, Number.NaN].map(roundStep)).toEqual([1, 1, 1]);
  });
});
