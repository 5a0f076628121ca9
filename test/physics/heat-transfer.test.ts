import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driedResistance } from '../../lib/physics/dried-resistance.ts';
import { driedConductivity, shelfTransfer, shelfTransferSlope } from '../../lib/physics/heat-transfer.ts';

const HEAT = { contact: 6, pressureSlope: 0.3, pressureDamping: 0.02, radiation: 3 };
const pressure = fc.double({ min: 0, max: 2000, noNaN: true });

describe('shelfTransfer', () => {
  it('is contact and radiation in vacuum, and gains slope/damping at most', () => {
    expect(shelfTransfer(HEAT, 0)).toBe(9);
    expect(shelfTransfer(HEAT, 1e12)).toBeCloseTo(9 + 15, 6);
  });

  it('rises with pressure, at its slope', () => {
    fc.assert(
      fc.property(pressure, (p) => {
        const h = 1e-3 * (1 + p);
        const central = (shelfTransfer(HEAT, p + h) - shelfTransfer(HEAT, p - h)) / (2 * h);
        expect(shelfTransferSlope(HEAT, p)).toBeGreaterThan(0);
        expect(Math.abs(shelfTransferSlope(HEAT, p) / central - 1)).toBeLessThan(1e-5);
      }),
    );
  });
});

describe('the dried layer', () => {
  it('conducts on a straight line over pressure', () => {
    expect(driedConductivity(0.03, 2e-4, 50)).toBeCloseTo(0.04, 15);
  });

  it('holds vapour back by its surface and in proportion to its thickness', () => {
    expect(driedResistance(5e4, 1e-8, 0)).toBe(5e4);
    expect(driedResistance(5e4, 1e-8, 0.01)).toBeCloseTo(1.05e6, 6);
  });
});
