import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GAS_CONSTANT, WATER_MOLAR_MASS } from '../../lib/physics/constants.ts';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { icePressure, icePressureSlope, iceVapour } from '../../lib/physics/ice-pressure.ts';
import fixture from '../fixtures/iapws-ice.json' with { type: 'json' };

const temperature = fc.double({ min: 100, max: 273.1, noNaN: true });

describe('icePressure', () => {
  it.each(fixture.ice)('agrees to round-off with an independent code of the same equation at $temperature K', (row) => {
    expect(Math.abs(icePressure(row.temperature) / row.correlation - 1)).toBeLessThan(1e-14);
  });

  it.each(fixture.ice)('agrees with equal Gibbs energies of ice and vapour at $temperature K', (row) => {
    // Worst 1.2e-4 at 170 K, 7e-5 from 200 K up; the release states 0.01 to 1 %.
    expect(Math.abs(icePressure(row.temperature) / row.equilibrium - 1)).toBeLessThan(
      row.temperature < 200 ? 1.3e-4 : 8e-5,
    );
  });

  it('is the triple-point pressure at the triple point', () => {
    expect(icePressure(273.16)).toBeCloseTo(611.657, 10);
  });

  it('rises with temperature', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 1e-6, max: 0.05, noNaN: true }), (T, step) => {
        expect(icePressure(T + step)).toBeGreaterThan(icePressure(T));
      }),
    );
  });

  it('reaches down to 50 K', () => {
    expect(icePressure(50)).toBeGreaterThan(0);
  });

  it.each([49.99, 273.17, Number.NaN, Number.POSITIVE_INFINITY, -1])('refuses %s K', (T) => {
    expect(() => icePressure(T)).toThrow(RangeError);
    expect(() => icePressureSlope(T)).toThrow(RangeError);
  });
});

describe('icePressureSlope', () => {
  it('is the derivative of the pressure', () => {
    fc.assert(
      fc.property(temperature, (T) => {
        const h = 2e-4 * Math.sqrt(T);
        const central = (icePressure(T + h / 2) - icePressure(T - h / 2)) / h;
        expect(Math.abs(icePressureSlope(T) / central - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('obeys Clausius and Clapeyron with the sublimation heat of the other publication', () => {
    for (let T = 180; T <= 273.15; T += 0.5) {
      const clapeyron = (sublimationHeat(T) * WATER_MOLAR_MASS * icePressure(T)) / (GAS_CONSTANT * T * T);
      // 0.07 % at 273 K, where vapour stops being quite ideal.
      expect(Math.abs(icePressureSlope(T) / clapeyron - 1)).toBeLessThan(1e-3);
    }
  });
});

describe('iceVapour', () => {
  it('writes pressure and slope together', () => {
    const out = { pressure: 0, slope: 0 };
    iceVapour(250, out);
    expect(out).toEqual({ pressure: icePressure(250), slope: icePressureSlope(250) });
  });
});
