import { describe, expect, it } from 'vitest';
import { ductSublimation, pressureRiseConstant } from '../../lib/physics/duct-sublimation.ts';

/** Gas constant of water vapour [J/(kg·K)]: 8.314463/0.018015268. */
const VAPOUR_CONSTANT = 461.523;

describe('vapour from ice through a dried layer', () => {
  it('rises, with the valve shut, twice as fast over twice the area, as worked by hand', () => {
    const one = (0.5 * 1e5) / (VAPOUR_CONSTANT * 250 * 2);
    expect(pressureRiseConstant(0.5, 1e5, 2, 250)).toBeCloseTo(one, 5);
    expect(pressureRiseConstant(0.5, 1e5, 4, 250)).toBeCloseTo(one / 2, 5);
  });

  it('flows through layer and duct as through two resistances in series', () => {
    const path = { icePressure: 60, trapPressure: 10, resistance: 1e5, area: 2, temperature: 250, conductance: 0.8 };
    const byHand = 50 / (1e5 / 2 + (VAPOUR_CONSTANT * 250) / 0.8);
    expect(ductSublimation(path)).toBeCloseTo(byHand, 8);
  });
});
