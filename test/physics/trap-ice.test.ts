import { describe, expect, it } from 'vitest';
import { carnotCoefficient } from '../../lib/physics/carnot-coefficient.ts';
import { frostConductivity, laminarFrostConductivity } from '../../lib/physics/frost-conductivity.ts';
import { grownIce, trapIceThickness, trapSurface } from '../../lib/physics/trap-ice.ts';
import { vapourVolume } from '../../lib/physics/vapour-volume.ts';

describe('ice on a trap', () => {
  it('warms its surface in proportion to load and thickness', () => {
    const bare = trapSurface(220, 1000, 0.5, 0, 2);
    expect(bare).toBe(220);
    expect(trapSurface(220, 1000, 0.5, 0.01, 2)).toBeCloseTo(230, 12);
    expect(trapSurface(220, 2000, 0.5, 0.01, 2)).toBeCloseTo(240, 12);
  });

  it('grows as the square root of time, and takes up the heat that its growth gives', () => {
    const thickness = (time: number) => grownIce(2.2, 20, 900, 2.838e6, time);
    expect(thickness(4000)).toBeCloseTo(2 * thickness(1000), 12);
    const rate = (thickness(1000.5) - thickness(999.5)) * 900 * 2.838e6;
    expect(rate / ((2.2 * 20) / thickness(1000))).toBeCloseTo(1, 6);
  });

  it('spreads evenly', () => {
    expect(trapIceThickness(9, 1, 900)).toBeCloseTo(0.01, 15);
  });

  it('conducts better the denser it is, by either correlation, and always less than solid ice', () => {
    for (const conductivity of [frostConductivity, laminarFrostConductivity]) {
      expect(conductivity(400)).toBeGreaterThan(conductivity(200));
      expect(conductivity(573)).toBeLessThan(2.2);
    }
  });
});

describe('carnotCoefficient', () => {
  it('rises as the lift shrinks and refuses none at all', () => {
    expect(carnotCoefficient(240, 310)).toBeGreaterThan(carnotCoefficient(230, 310));
    expect(() => carnotCoefficient(310, 310)).toThrow(RangeError);
    expect(() => carnotCoefficient(0, 310)).toThrow(RangeError);
  });
});

describe('vapourVolume', () => {
  it('falls with pressure and refuses a vacuum', () => {
    expect(vapourVolume(20, 250)).toBeCloseTo(2 * vapourVolume(40, 250), 9);
    expect(() => vapourVolume(0, 250)).toThrow(RangeError);
  });
});
