import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { icePressure, icePressureSlope } from '../../lib/physics/ice-pressure.ts';
import { iceFront, iceTemperature } from '../../lib/physics/ice-temperature.ts';

describe('iceTemperature', () => {
  it('undoes icePressure to round-off from 100 K to the triple point', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 273.16, noNaN: true }), (T) => {
        expect(Math.abs(iceTemperature(icePressure(T)) / T - 1)).toBeLessThan(1e-14);
      }),
      { numRuns: 2000 },
    );
  });

  it('undoes icePressure the other way round', () => {
    fc.assert(
      fc.property(fc.double({ min: -25, max: Math.log(611.657), noNaN: true }), (logPressure) => {
        const p = Math.exp(logPressure);
        expect(Math.abs(icePressure(iceTemperature(p)) / p - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it('never passes the triple point', () => {
    expect(iceTemperature(611.657)).toBeLessThanOrEqual(273.16);
    expect(iceTemperature(611.657)).toBeCloseTo(273.16, 10);
  });

  it.each([0, -1, 611.66, 1e-30, Number.NaN])('refuses %s Pa', (p) => {
    expect(() => iceTemperature(p)).toThrow(RangeError);
  });
});

describe('iceFront', () => {
  it('gives the temperature and the slope of the pressure there', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 273.15, noNaN: true }), (T) => {
        const out = { temperature: 0, slope: 0 };
        iceFront(icePressure(T), out);
        expect(out.temperature).toBe(iceTemperature(icePressure(T)));
        expect(Math.abs(out.slope / icePressureSlope(T) - 1)).toBeLessThan(1e-6);
      }),
    );
  });
});
