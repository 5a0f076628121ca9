import { describe, expect, it } from 'vitest';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import fixture from '../fixtures/iapws-ice.json' with { type: 'json' };

describe('sublimationHeat', () => {
  it.each(fixture.ice)('agrees with the enthalpies of ice and vapour at $temperature K', (row) => {
    // Worst 1.6e-4, at 150 K: another formulation of the heat capacities.
    expect(Math.abs(sublimationHeat(row.temperature) / row.heat - 1)).toBeLessThan(1.7e-4);
  });

  it('is largest near −35 °C and changes by 0.2 % up to 0 °C', () => {
    expect(sublimationHeat(238.15)).toBeGreaterThan(sublimationHeat(228));
    expect(sublimationHeat(238.15)).toBeGreaterThan(sublimationHeat(250));
    expect(sublimationHeat(273.15) / sublimationHeat(238.15)).toBeGreaterThan(0.998);
  });

  it('reaches down to 30 K', () => {
    expect(sublimationHeat(30)).toBeGreaterThan(2.6e6);
  });

  it.each([29, 273.17, Number.NaN])('refuses %s K', (T) => {
    expect(() => sublimationHeat(T)).toThrow(RangeError);
  });
});
