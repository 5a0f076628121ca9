import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PumpCurve, pumpLaw, pumpSpeed, pumpThroughput } from '../../lib/physics/pump-speed.ts';

const plain: PumpCurve = { speed: 5e-3, ultimate: 0.5, table: [] };
const measured: PumpCurve = {
  speed: 5e-3,
  ultimate: 0.5,
  table: [
    { pressure: 2, speed: 2e-3 },
    { pressure: 20, speed: 4e-3 },
    { pressure: 2000, speed: 5e-3 },
    { pressure: 1e5, speed: 4.5e-3 },
  ],
};

function at(pump: PumpCurve, pressure: number): { throughput: number; slope: number } {
  const out = { throughput: 0, slope: 0 };
  pumpThroughput(pumpLaw(pump), pressure, out);
  return out;
}

const pressure = fc.double({ min: -2, max: 5.2, noNaN: true }).map((x) => 10 ** x);

describe('pumpSpeed', () => {
  it('follows S0·(1 − p_ult/p) without a table', () => {
    expect(pumpSpeed(pumpLaw(plain), 1)).toBeCloseTo(2.5e-3, 15);
    expect(pumpSpeed(pumpLaw(plain), 1e9)).toBeCloseTo(5e-3, 10);
  });

  it('is nothing at and below the ultimate pressure', () => {
    for (const pump of [plain, measured]) {
      expect(pumpSpeed(pumpLaw(pump), 0.5)).toBe(0);
      expect(pumpSpeed(pumpLaw(pump), 0.1)).toBe(0);
      expect(pumpSpeed(pumpLaw(pump), 0)).toBe(0);
    }
  });

  it('goes through every point of a table and halfway between in ln p', () => {
    for (const point of measured.table) {
      expect(pumpSpeed(pumpLaw(measured), point.pressure)).toBeCloseTo(point.speed, 14);
    }
    expect(pumpSpeed(pumpLaw(measured), 200)).toBeCloseTo(4.5e-3, 14);
    expect(pumpSpeed(pumpLaw(measured), 1e6)).toBeCloseTo(4.5e-3, 14);
  });

  it('keeps the shape of the law below the first point of a table', () => {
    expect(pumpSpeed(pumpLaw(measured), 1)).toBeCloseTo((2e-3 * (1 - 0.5)) / (1 - 0.25), 14);
  });

  it('leaves out points at or below the ultimate pressure', () => {
    const low = { ...measured, table: [{ pressure: 0.3, speed: 1e-3 }, ...measured.table] };
    expect(pumpSpeed(pumpLaw(low), 1)).toBe(pumpSpeed(pumpLaw(measured), 1));
  });
});

describe('pumpThroughput', () => {
  it.each([
    ['law', plain],
    ['table', measured],
  ])('rises without jumps, and its slope is its derivative (%s)', (_, pump) => {
    fc.assert(
      fc.property(pressure, (p) => {
        const knots = [pump.ultimate, ...pump.table.map((point) => point.pressure)];
        fc.pre(knots.every((knot) => Math.abs(p / knot - 1) > 1e-4));
        const h = 1e-6 * p;
        const slope = (at(pump, p + h).throughput - at(pump, p - h).throughput) / (2 * h);
        expect(at(pump, p).slope).toBeGreaterThanOrEqual(0);
        expect(Math.abs(at(pump, p).slope - slope)).toBeLessThan(1e-9);
      }),
    );
    for (const knot of [pump.ultimate, ...pump.table.map((point) => point.pressure)]) {
      const jump = at(pump, knot * (1 + 1e-12)).throughput - at(pump, knot * (1 - 1e-12)).throughput;
      expect(Math.abs(jump)).toBeLessThan(1e-10 * knot);
    }
  });
});

describe('pumpLaw', () => {
  it.each<[string, Partial<PumpCurve>]>([
    ['no speed', { speed: 0 }],
    ['a speed that is not a number', { speed: Number.NaN }],
    ['a negative ultimate pressure', { ultimate: -1 }],
    [
      'falling pressures',
      {
        table: [
          { pressure: 10, speed: 1e-3 },
          { pressure: 5, speed: 1e-3 },
        ],
      },
    ],
    [
      'falling throughput',
      {
        table: [
          { pressure: 10, speed: 5e-3 },
          { pressure: 11, speed: 1e-3 },
        ],
      },
    ],
    ['a point without speed', { table: [{ pressure: 10, speed: 0 }] }],
    ['a table below the ultimate pressure', { table: [{ pressure: 0.4, speed: 1e-3 }] }],
  ])('refuses %s', (_, change) => {
    expect(() => pumpLaw({ ...plain, ...change })).toThrow(RangeError);
  });
});
