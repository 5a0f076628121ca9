import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FreezingCase } from '../../lib/physics/freezing-time.ts';
import { slabEigenvalue, temperingTime } from '../../lib/physics/tempering-time.ts';

const C = 273.15;
const LOAD = { density: 900, heat: 2200, conductivity: 1.7 };
const SLAB: FreezingCase = {
  thickness: 0.02,
  sides: 1,
  coefficient: 40,
  ambient: C - 40,
  initial: C - 18,
  finalCentre: C - 30,
};

function time(change: Partial<FreezingCase> = {}): number {
  const outcome = temperingTime({ ...SLAB, ...change }, LOAD);
  if (outcome.kind !== 'frozen') throw new Error(outcome.kind);
  return outcome.time;
}

describe('temperingTime', () => {
  it('is the lumped exponential when the surface is what holds the heat', () => {
    const lumped = ((0.02 * 900 * 2200) / 0.1) * Math.log(22 / 10);
    expect(time({ coefficient: 0.1 }) / lumped).toBeCloseTo(1, 2);
  });

  it('tends to a surface held at the ambient when contact is perfect', () => {
    const diffusivity = 1.7 / (900 * 2200);
    const held = ((4 * 0.02 ** 2) / (Math.PI ** 2 * diffusivity)) * Math.log(((4 / Math.PI) * 22) / 10);
    expect(time({ coefficient: 1e7 }) / held).toBeCloseTo(1, 4);
  });

  it('is no time for a load that is cold enough, and never without a colder ambient', () => {
    expect(time({ initial: C - 31 })).toBe(0);
    expect(temperingTime({ ...SLAB, ambient: C - 30 }, LOAD)).toEqual({
      kind: 'neverFreezes',
      ambient: C - 30,
      needed: C - 30,
    });
  });

  it('refuses a slab of no thickness', () => {
    expect(() => time({ thickness: 0 })).toThrow(RangeError);
  });
});

describe('slabEigenvalue', () => {
  it('solves ζ·tan ζ = Bi and stays below a quarter turn', () => {
    fc.assert(
      fc.property(fc.double({ min: -4, max: 4, noNaN: true }), (exponent) => {
        const biot = 10 ** exponent;
        const zeta = slabEigenvalue(biot);
        expect(zeta).toBeLessThan(Math.PI / 2);
        expect(Math.abs((zeta * Math.tan(zeta)) / biot - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('refuses a Biot number that is not positive', () => {
    expect(() => slabEigenvalue(-1)).toThrow(RangeError);
  });
});
