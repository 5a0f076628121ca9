import { describe, expect, it } from 'vitest';
import { leakFromTests } from '../../../lib/insight/calibration/leak-from-tests.ts';
import { bellCurve } from './synthetic-log.ts';

function test(from: number, to: number, time: number) {
  return { id: 't', date: '2026-05-03', chamber: 'mid', from, to, time };
}

describe('leakFromTests', () => {
  it('is volume times rise over time', () => {
    const found = leakFromTests([test(20, 80, 600)], 0.25, 0);
    expect(found?.leak).toBeCloseTo((0.25 * 60) / 600, 12);
    expect(found?.deviation).toBeGreaterThan(0);
  });

  it('is nothing without tests', () => {
    expect(leakFromTests([], 0.25, 0.1)).toBeNull();
  });

  it('is surer with more tests, and no surer than the volume', () => {
    const one = leakFromTests([test(20, 80, 600)], 0.25, 0.05);
    const nine = leakFromTests(
      Array.from({ length: 9 }, () => test(20, 80, 600)),
      0.25,
      0.05,
    );
    expect(nine?.deviation).toBeLessThan(one?.deviation ?? 0);
    expect(nine?.deviation).toBeGreaterThanOrEqual(0.05 * 0.025);
  });

  it('is less sure when tests disagree', () => {
    const alike = leakFromTests([test(20, 80, 600), test(20, 80, 600)], 0.25, 0);
    const unlike = leakFromTests([test(20, 60, 600), test(20, 100, 600)], 0.25, 0);
    expect(unlike?.deviation).toBeGreaterThan(3 * (alike?.deviation ?? 0));
  });

  it('tells a rise that dies down from a leak', () => {
    expect(leakFromTests([test(20, 80, 600), test(20, 100, 1800)], 0.25, 0)?.levelsOff).toBe(true);
    expect(leakFromTests([test(20, 80, 600), test(20, 200, 1800)], 0.25, 0)?.levelsOff).toBe(false);
  });

  it('holds the true leak about as often as it says, with readings off by 3 %', () => {
    const next = bellCurve(5);
    const read = (pressure: number) => pressure * (1 + 0.03 * next());
    const held = Array.from({ length: 400 }, () => {
      const found = leakFromTests([test(read(20), read(80), 600), test(read(25), read(85), 600)], 0.25, 0);
      return Math.abs((found?.leak ?? 0) - 0.025) <= 1.96 * (found?.deviation ?? 0);
    });
    // 95 % asked for; 400 draws scatter by 1.1 %, and disagreement of two tests widens some.
    const share = held.filter(Boolean).length / held.length;
    expect(share).toBeGreaterThan(0.92);
    expect(share).toBeLessThan(0.995);
  });
});
