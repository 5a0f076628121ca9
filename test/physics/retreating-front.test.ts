import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ductSublimation, pressureRiseConstant } from '../../lib/physics/duct-sublimation.ts';
import { driedThickness, frontPressure, frontTime, growingResistanceTime } from '../../lib/physics/retreating-front.ts';

const FRONT = { conductivity: 0.05, heat: 2.838e6, surface: 303, front: 245 };
const GROWING = { ice: 700, surface: 1e5, slope: 1.6e8, driving: 60 };

describe('a front fed through its dried layer', () => {
  it('takes four times as long for twice the depth', () => {
    expect(frontTime(FRONT, 500, 0.02)).toBeCloseTo(4 * frontTime(FRONT, 500, 0.01), 6);
  });

  it('carries as much heat in as vapour takes out, at any thickness', () => {
    const permeability = 2e-8;
    const pressure = frontPressure(FRONT, 20, permeability);
    for (const thickness of [1e-3, 1e-2]) {
      const heat = (FRONT.conductivity * (FRONT.surface - FRONT.front)) / thickness;
      const vapour = (permeability * (pressure - 20)) / thickness;
      expect(vapour * FRONT.heat).toBeCloseTo(heat, 9);
    }
  });

  it('refuses a surface colder than the front', () => {
    expect(() => frontTime({ ...FRONT, surface: 245 }, 500, 0.01)).toThrow(RangeError);
  });
});

describe('a resistance that grows as the layer dries', () => {
  it('gives times and thicknesses that undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 0.05, noNaN: true }), (depth) => {
        expect(driedThickness(GROWING, growingResistanceTime(GROWING, depth)) / depth).toBeCloseTo(1, 10);
      }),
    );
  });
});

describe('a duct from ice to trap', () => {
  const path = { icePressure: 100, trapPressure: 4, resistance: 2e5, area: 2, conductance: 0.5, temperature: 293 };

  it('carries less through a narrower duct, and nothing without a difference', () => {
    expect(ductSublimation({ ...path, conductance: 0.25 })).toBeLessThan(ductSublimation(path));
    expect(ductSublimation({ ...path, trapPressure: 100 })).toBe(0);
  });

  it('has its pressure rise slowed by volume', () => {
    expect(pressureRiseConstant(2, 2e5, 1, 293)).toBeCloseTo(2 * pressureRiseConstant(1, 2e5, 1, 293), 12);
  });
});
