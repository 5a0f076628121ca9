import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fastIceFront, fastIceVapour, fastSublimationHeat } from '../../lib/physics/ice-fast.ts';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { iceVapour } from '../../lib/physics/ice-pressure.ts';
import { iceFront } from '../../lib/physics/ice-temperature.ts';

const temperature = fc.double({ min: 160, max: 273.16, noNaN: true });

function relative(a: number, b: number): number {
  return Math.abs(a / b - 1);
}

describe('the laws of ice for the inner loop', () => {
  it('give the exact pressure and slope to 1e-10', () => {
    fc.assert(
      fc.property(temperature, (T) => {
        const exact = { pressure: 0, slope: 0 };
        const fast = { pressure: 0, slope: 0 };
        iceVapour(T, exact);
        fastIceVapour(T, fast);
        expect(relative(fast.pressure, exact.pressure)).toBeLessThan(1e-10);
        expect(relative(fast.slope, exact.slope)).toBeLessThan(1e-8);
      }),
    );
  });

  it('give the exact temperature and slope', () => {
    fc.assert(
      fc.property(temperature, (T) => {
        const vapour = { pressure: 0, slope: 0 };
        iceVapour(T, vapour);
        const exact = { temperature: 0, slope: 0 };
        const fast = { temperature: 0, slope: 0 };
        iceFront(vapour.pressure, exact);
        fastIceFront(vapour.pressure, fast);
        expect(relative(fast.temperature, exact.temperature)).toBeLessThan(1e-11);
        expect(relative(fast.slope, exact.slope)).toBeLessThan(2e-6);
      }),
    );
  });

  it('give the exact heat of sublimation to 1e-11', () => {
    fc.assert(
      fc.property(temperature, (T) => {
        expect(relative(fastSublimationHeat(T), sublimationHeat(T))).toBeLessThan(1e-11);
      }),
    );
  });

  it('fall back on the exact laws outside the range of the fits, errors included', () => {
    const out = { pressure: 0, slope: 0 };
    fastIceVapour(120, out);
    const exact = { pressure: 0, slope: 0 };
    iceVapour(120, exact);
    expect(out).toEqual(exact);
    expect(() => fastIceVapour(280, out)).toThrow(RangeError);
    expect(() => fastSublimationHeat(280)).toThrow(RangeError);
    expect(() => fastIceFront(700, { temperature: 0, slope: 0 })).toThrow(RangeError);
  });
});
