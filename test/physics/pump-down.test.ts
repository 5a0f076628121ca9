import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalisedPressure } from '../../lib/physics/equalised-pressure.ts';
import { leakRate } from '../../lib/physics/leak-rate.ts';
import { hosePumpDownTime, pumpDownPressure, pumpDownTime, settledPressure } from '../../lib/physics/pump-down.ts';
import { seriesConductance } from '../../lib/physics/series-conductance.ts';

const VESSEL = { volume: 0.3, speed: 8e-3, ultimate: 1, leak: 0.02, start: 101_325 };

describe('pumpDownTime and pumpDownPressure', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 1e5, noNaN: true }), (target) => {
        expect(pumpDownPressure(VESSEL, pumpDownTime(VESSEL, target)) / target).toBeCloseTo(1, 9);
      }),
    );
  });

  it('settle where the pump takes what leaks in', () => {
    expect(settledPressure(VESSEL)).toBeCloseTo(3.5, 12);
    expect(pumpDownPressure(VESSEL, 1e6)).toBeCloseTo(3.5, 12);
  });

  it('refuse a target that is never passed', () => {
    expect(() => pumpDownTime(VESSEL, 3.5)).toThrow(RangeError);
    expect(() => pumpDownTime(VESSEL, 2e5)).toThrow(RangeError);
  });
});

describe('hosePumpDownTime', () => {
  const tight = { ...VESSEL, ultimate: 0, leak: 0 };

  it('tends to the time without a hose when the hose is wide', () => {
    expect(hosePumpDownTime(tight, 1e3, 100) / pumpDownTime(tight, 100)).toBeCloseTo(1, 4);
  });

  it('adds up over the way down', () => {
    const whole = hosePumpDownTime(tight, 1e-4, 30);
    const parts = hosePumpDownTime(tight, 1e-4, 1000) + hosePumpDownTime({ ...tight, start: 1000 }, 1e-4, 30);
    expect(parts).toBeCloseTo(whole, 8);
  });

  it('refuses a target that is never passed', () => {
    expect(() => hosePumpDownTime(tight, 1e-4, 0)).toThrow(RangeError);
    expect(() => hosePumpDownTime(tight, 1e-4, 2e5)).toThrow(RangeError);
  });
});

describe('vessels, leaks and parts in a row', () => {
  it('share their gas', () => {
    expect(equalisedPressure([1, 1], [0, 100])).toBe(50);
    expect(() => equalisedPressure([1], [1, 2])).toThrow(RangeError);
    expect(() => equalisedPressure([], [])).toThrow(RangeError);
  });

  it('give the leak of a pressure-rise test', () => {
    expect(leakRate(0.3, 20, 600)).toBeCloseTo(0.01, 15);
    expect(() => leakRate(0.3, 20, 0)).toThrow(RangeError);
    expect(() => leakRate(0, 20, 60)).toThrow(RangeError);
  });

  it('conduct less in a row than the least of them', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 1e-6, max: 10, noNaN: true }), { minLength: 1, maxLength: 6 }), (parts) => {
        expect(seriesConductance(parts)).toBeLessThanOrEqual(Math.min(...parts) * (1 + 1e-12));
      }),
    );
    expect(() => seriesConductance([])).toThrow(RangeError);
    expect(() => seriesConductance([1, 0])).toThrow(RangeError);
  });
});
