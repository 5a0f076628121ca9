import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { icePressure } from '../../lib/physics/ice-pressure.ts';
import { type TrapVapour, trapLaw, trapVapour } from '../../lib/plant/trap-law.ts';
import type { TrapSpec } from '../../lib/plant/types.ts';
import { CHAMBER } from './sample-shop.ts';

function vapourOf(flow: number, ice = 0, change: Partial<TrapSpec> = {}): TrapVapour {
  const out: TrapVapour = { pressure: 0, slope: 0, load: 0 };
  trapVapour(trapLaw({ ...CHAMBER.trap, ...change }, CHAMBER.gasTemperature), flow, ice, out);
  return out;
}

const THREE_POINTS = {
  parasiticLoad: 0,
  vapourConductance: 1e9,
  curve: [
    { load: 0, temperature: 220 },
    { load: 1000, temperature: 230 },
    { load: 2000, temperature: 245 },
  ],
};

describe('a cold trap', () => {
  it('at rest stands at the pressure of ice at the temperature that its own heat leak sets', () => {
    const temperature = 223.15 + (150 * 18) / 1600;
    expect(vapourOf(0).pressure).toBeCloseTo(icePressure(temperature), 9);
    expect(vapourOf(0).load).toBe(150);
  });

  it('takes up the heat of sublimation and what the vapour brings along: 2940 kJ/kg from 20 °C', () => {
    const { heatPerMass } = trapLaw(CHAMBER.trap, 293.15);
    // 2838.6 kJ/kg at −30 °C and 1.85 kJ/(kg·K) over 50 K.
    expect(heatPerMass).toBeGreaterThan(2.92e6);
    expect(heatPerMass).toBeLessThan(2.94e6);
    expect(trapLaw(CHAMBER.trap, 240).heatPerMass).toBeLessThan(2.84e6);
  });

  it('follows its refrigeration curve from point to point and on beyond the last', () => {
    const { heatPerMass } = trapLaw(CHAMBER.trap, CHAMBER.gasTemperature);
    const at = (load: number) => vapourOf(load / heatPerMass, 0, THREE_POINTS).pressure;
    expect(at(500) / icePressure(225)).toBeCloseTo(1, 6);
    expect(at(1000) / icePressure(230)).toBeCloseTo(1, 6);
    expect(at(1500) / icePressure(237.5)).toBeCloseTo(1, 6);
    expect(at(2500) / icePressure(252.5)).toBeCloseTo(1, 6);
  });

  it('warms at its surface as ice grows: load/area·δ/k', () => {
    const flow = 1e-4;
    const { load } = vapourOf(flow, 10);
    const thickness = 10 / (CHAMBER.trap.iceDensity * CHAMBER.trap.area);
    const warmer = ((load / CHAMBER.trap.area) * thickness) / CHAMBER.trap.iceConductivity;
    const bare = 223.15 + (load * 18) / 1600;
    expect(vapourOf(flow, 10, { vapourConductance: 1e9 }).pressure / icePressure(bare + warmer)).toBeCloseTo(1, 6);
  });

  it('adds the way from shelf to trap: flow/G', () => {
    const open = vapourOf(3e-4, 0, { vapourConductance: 1e9 }).pressure;
    expect(vapourOf(3e-4, 0, { vapourConductance: 1e-5 }).pressure - open).toBeCloseTo(30, 4);
  });

  it('rises with the flow at the slope it tells, even far beyond what it can take', () => {
    const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
    fc.assert(
      fc.property(between(0, 2e-3), between(0, 16), (flow, ice) => {
        const step = 1e-9;
        const here = vapourOf(flow, ice);
        const measured = (vapourOf(flow + step, ice).pressure - here.pressure) / step;
        expect(here.slope).toBeGreaterThan(0);
        expect(Math.abs(measured / here.slope - 1)).toBeLessThan(1e-3);
      }),
      { numRuns: 200 },
    );
  });
});
