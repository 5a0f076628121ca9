import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airViscosity,
  chokedSpeed,
  freePathPressure,
  gasMixture,
  meanMolecularSpeed,
  mixtureMolarMass,
  mixtureViscosity,
  vapourViscosity,
} from '../../lib/physics/gas-mixture.ts';
import fixture from '../fixtures/iapws-ice.json' with { type: 'json' };

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe('viscosities', () => {
  it.each(fixture.viscosity)('agree with an independent code of the same equations at $temperature K', (row) => {
    expect(Math.abs(airViscosity(row.temperature) / row.air - 1)).toBeLessThan(1e-9);
    expect(Math.abs(vapourViscosity(row.temperature) / row.vapour - 1)).toBeLessThan(1e-9);
  });

  it('reach from 200 to 500 K', () => {
    expect(airViscosity(500)).toBeGreaterThan(airViscosity(200));
    expect(vapourViscosity(500)).toBeGreaterThan(vapourViscosity(200));
  });

  it.each([199, 501, Number.NaN])('refuse %s K', (T) => {
    expect(() => airViscosity(T)).toThrow(RangeError);
    expect(() => vapourViscosity(T)).toThrow(RangeError);
  });

  it('of a mixture is that of the pure gas at either end and between them inside', () => {
    const gas = gasMixture(293.15);
    expect(mixtureViscosity(gas, 0)).toBe(gas.air);
    expect(mixtureViscosity(gas, 1)).toBe(gas.vapour);
    fc.assert(
      fc.property(fraction, (x) => {
        expect(mixtureViscosity(gas, x)).toBeLessThanOrEqual(gas.air * (1 + 1e-12));
        expect(mixtureViscosity(gas, x)).toBeGreaterThanOrEqual(gas.vapour * (1 - 1e-12));
      }),
    );
  });
});

describe('Wilke’s rule', () => {
  it('weighs each gas by what it shares its space with, as worked by hand', () => {
    const gas = { temperature: 300, air: 4, vapour: 1, airWithVapour: 2, vapourWithAir: 0.5 };
    const air = (0.75 * 4) / (0.75 + 0.25 * 2);
    const vapour = (0.25 * 1) / (0.25 + 0.75 * 0.5);
    expect(air).toBeCloseTo(2.4, 12);
    expect(mixtureViscosity(gas, 0.25)).toBeCloseTo(air + vapour, 12);
  });
});

describe('gas speeds', () => {
  it('rise with the share of the lighter gas', () => {
    fc.assert(
      fc.property(fraction, fraction, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(mixtureMolarMass(high)).toBeLessThanOrEqual(mixtureMolarMass(low));
        expect(meanMolecularSpeed(high, 293)).toBeGreaterThanOrEqual(meanMolecularSpeed(low, 293));
        expect(chokedSpeed(high, 293)).toBeGreaterThanOrEqual(chokedSpeed(low, 293) * (1 - 1e-12));
      }),
    );
  });

  it('give a free path of 66 µm in air at a millibar', () => {
    expect(freePathPressure(gasMixture(293.15), 0) / 100).toBeCloseTo(66.1e-6, 6);
  });
});
