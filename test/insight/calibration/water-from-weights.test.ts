import { describe, expect, it } from 'vitest';
import { ODDS_SCALE } from '../../../lib/insight/calibration/fit-scale.ts';
import type { LoggedBatch } from '../../../lib/insight/calibration/logged-batches.ts';
import { waterFromWeights } from '../../../lib/insight/calibration/water-from-weights.ts';
import { bellCurve } from './synthetic-log.ts';

function weighed(wet: number, dry: number): LoggedBatch {
  return { id: 'b', date: '2026-05-03', chamber: 'mid', product: 'p', wet, dry, time: 1, highestPressure: null };
}

const PRIOR = { centre: ODDS_SCALE.to(0.9), spread: 0.12 };

describe('waterFromWeights', () => {
  it('goes from belief to what the scale says as weighings come in', () => {
    const dry = 10 * 0.08 * 1.03;
    const waters = [1, 4, 40].map((count) => {
      const found = waterFromWeights(
        Array.from({ length: count }, () => weighed(10, dry)),
        0.03,
        PRIOR,
      );
      return ODDS_SCALE.from(found?.place ?? 0);
    });
    expect(waters[0]).toBeGreaterThan(0.9);
    expect(waters[1]).toBeGreaterThan(waters[0] ?? 1);
    expect(waters[2]).toBeCloseTo(0.92, 3);
  });

  it('has nothing to say of a batch heavier than dry matter could be', () => {
    expect(waterFromWeights([weighed(10, 10)], 0.03 - 0.05, PRIOR)).toBeNull();
    expect(waterFromWeights([], 0.03, PRIOR)).toBeNull();
  });

  it('holds the true water about as often as it says', () => {
    const next = bellCurve(11);
    const held = Array.from({ length: 300 }, () => {
      const place = PRIOR.centre + PRIOR.spread * next();
      const solids = 1 - ODDS_SCALE.from(place);
      const batches = Array.from({ length: 4 }, () => weighed(10, 10.3 * solids * Math.exp(0.03 * next())));
      const found = waterFromWeights(batches, 0.03, PRIOR);
      return Math.abs((found?.place ?? 9) - place) <= 1.96 * (found?.deviation ?? 0);
    });
    const share = held.filter(Boolean).length / held.length;
    expect(share).toBeGreaterThan(0.9);
    expect(share).toBeLessThan(0.99);
  });
});
