import { describe, expect, it } from 'vitest';
import {
  type BallastCase,
  ballastTolerance,
  printedBallastTolerance,
  vapourCapacity,
} from '../../lib/physics/gas-ballast.ts';

const PUMP: BallastCase = {
  speed: 10e-3,
  ballast: 1e-3,
  saturation: 31_180,
  ambientVapour: 1170,
  exhaust: 133_300,
  atmosphere: 101_325,
};

describe('ballastTolerance', () => {
  it('closes the mole balance at the exhaust valve: vapour there is just saturated', () => {
    const vapour = ballastTolerance(PUMP);
    const water = PUMP.speed * vapour + PUMP.ballast * PUMP.ambientVapour;
    const total = PUMP.speed * vapour + PUMP.ballast * PUMP.atmosphere;
    expect((water / total) * PUMP.exhaust).toBeCloseTo(PUMP.saturation, 6);
  });

  it('grows with the ballast and with a warmer pump', () => {
    expect(ballastTolerance({ ...PUMP, ballast: 2e-3 })).toBeCloseTo(2 * ballastTolerance(PUMP), 9);
    expect(ballastTolerance({ ...PUMP, saturation: 40_000 })).toBeGreaterThan(ballastTolerance(PUMP));
  });

  it('is nothing without ballast and never negative for a cold pump in damp air', () => {
    expect(ballastTolerance({ ...PUMP, ballast: 0 })).toBe(0);
    expect(ballastTolerance({ ...PUMP, saturation: 1200 })).toBe(0);
  });

  it('is a quarter below the printed form, which lets the ballast in at exhaust pressure', () => {
    expect(ballastTolerance(PUMP) / printedBallastTolerance(PUMP)).toBeCloseTo(0.751, 3);
    const open = { ...PUMP, exhaust: PUMP.atmosphere };
    expect(ballastTolerance(open)).toBe(printedBallastTolerance(open));
  });

  it('refuses an exhaust below saturation and a pump that stands still', () => {
    expect(() => ballastTolerance({ ...PUMP, exhaust: 31_180 })).toThrow(RangeError);
    expect(() => ballastTolerance({ ...PUMP, speed: 0 })).toThrow(RangeError);
  });
});

describe('vapourCapacity', () => {
  it('is in proportion to speed and pressure', () => {
    expect(vapourCapacity(2, 3, 293)).toBeCloseTo(6 * vapourCapacity(1, 1, 293), 15);
  });
});
