import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chokedSpeed,
  freePathPressure,
  gasMixture,
  meanMolecularSpeed,
  mixtureViscosity,
} from '../../lib/physics/gas-mixture.ts';
import { type HoseThroughput, hoseConductance, hoseLaw, hoseThroughput } from '../../lib/physics/hose-conductance.ts';

const law = hoseLaw(0.05, 1, 293.15);

function flowAt(p1: number, p2: number, x = 0.5, hose = law): HoseThroughput {
  const out = { flow: 0, byUpstream: 0, byDownstream: 0 };
  hoseThroughput(hose, p1, p2, x, out);
  return out;
}

const pressure = fc.double({ min: -3, max: 5, noNaN: true }).map((x) => 10 ** x);
const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe('hoseConductance', () => {
  it('has the shallow Knudsen minimum below its molecular value', () => {
    const values = [0, 0.1, 1, 10, 100].map((p) => hoseConductance(0.05, 1, p, 0, 293.15));
    expect(values[1]).toBeLessThan(values[0] as number);
    expect(values[1]).toBeGreaterThan(0.9 * (values[0] as number));
    expect(values[4]).toBeGreaterThan(values[3] as number);
  });

  it('is the sum of its parts as they are written down, the radius counted in mean free paths', () => {
    fc.assert(
      fc.property(pressure, fraction, (p, x) => {
        const gas = gasMixture(293.15);
        const paths = (0.025 * p) / freePathPressure(gas, x);
        const transition = (1 + 2.507 * paths) / (1 + 3.095 * paths);
        const molecular = ((Math.PI / 12) * meanMolecularSpeed(x, 293.15) * 0.05 ** 3) / 2;
        const viscous = (Math.PI * 0.05 ** 4 * p) / (128 * mixtureViscosity(gas, x) * 2);
        expect(hoseConductance(0.05, 2, p, x, 293.15) / (viscous + transition * molecular)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('falls as 1/L and grows with the bore', () => {
    fc.assert(
      fc.property(pressure, fraction, (p, x) => {
        const one = hoseConductance(0.04, 1, p, x, 293.15);
        expect(hoseConductance(0.04, 2, p, x, 293.15) / one).toBeCloseTo(0.5, 12);
        expect(hoseConductance(0.05, 1, p, x, 293.15)).toBeGreaterThan(one);
      }),
    );
  });

  it.each([
    [0, 1],
    [-0.1, 1],
    [0.05, 0],
    [0.05, Number.POSITIVE_INFINITY],
    [Number.NaN, 1],
  ])('refuses a hose of %s m × %s m', (diameter, length) => {
    expect(() => hoseConductance(diameter, length, 10, 0, 293.15)).toThrow(RangeError);
  });
});

describe('hoseThroughput', () => {
  it('is conductance times difference while the gas is slower than sound', () => {
    const { flow } = flowAt(20, 18, 0);
    expect(flow).toBeCloseTo(hoseConductance(0.05, 1, 19, 0, 293.15) * 2, 12);
  });

  it('runs back with the same size when the pressures are exchanged', () => {
    fc.assert(
      fc.property(pressure, pressure, fraction, (a, b, x) => {
        expect(flowAt(a, b, x).flow).toBeCloseTo(-flowAt(b, a, x).flow, 12);
      }),
    );
  });

  it('is nothing without a difference, vacuum included', () => {
    expect(flowAt(7, 7).flow).toBe(0);
    expect(flowAt(0, 0)).toMatchObject({ flow: 0 });
    expect(Number.isFinite(flowAt(0, 0).byUpstream)).toBe(true);
  });

  it('never passes the sonic limit of the higher pressure', () => {
    const area = (Math.PI / 4) * 0.05 ** 2;
    fc.assert(
      fc.property(pressure, pressure, fraction, (a, b, x) => {
        const sonic = area * chokedSpeed(x, 293.15) * Math.max(a, b);
        // The nozzle factor of mixtures is a straight line between the pure gases.
        expect(Math.abs(flowAt(a, b, x).flow)).toBeLessThanOrEqual(sonic * 1.0003);
      }),
    );
    expect(flowAt(1e5, 1e3, 0).flow).toBeCloseTo(area * chokedSpeed(0, 293.15) * 1e5, 6);
  });

  it('rises with the first pressure and falls with the second', () => {
    fc.assert(
      fc.property(pressure, pressure, fraction, (a, b, x) => {
        const { byUpstream, byDownstream } = flowAt(a, b, x);
        expect(byUpstream).toBeGreaterThanOrEqual(0);
        expect(byDownstream).toBeLessThanOrEqual(0);
        expect(byUpstream - byDownstream).toBeGreaterThan(0);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives slopes that are derivatives of the flow, on both sides of the sonic limit', () => {
    const hose = hoseLaw(0.025, 2, 293.15);
    fc.assert(
      fc.property(pressure, pressure, fraction, (a, b, x) => {
        const h = 1e-5;
        const here = flowAt(a, b, x, hose);
        const up = [flowAt(a * (1 + h), b, x, hose), flowAt(a * (1 - h), b, x, hose)] as const;
        const down = [flowAt(a, b * (1 + h), x, hose), flowAt(a, b * (1 - h), x, hose)] as const;
        const all = [...up, ...down];
        const sonic = (flow: HoseThroughput) => flow.byUpstream === 0 || flow.byDownstream === 0;
        fc.pre(all.every((flow) => sonic(flow) === sonic(here)));
        const scale = Math.abs(here.byUpstream) + Math.abs(here.byDownstream);
        expect(Math.abs((up[0].flow - up[1].flow) / (2 * h * a) - here.byUpstream) / scale).toBeLessThan(
          1e-6 * (1 + b / a),
        );
        expect(Math.abs((down[0].flow - down[1].flow) / (2 * h * b) - here.byDownstream) / scale).toBeLessThan(
          1e-6 * (1 + a / b),
        );
      }),
    );
  });
});
