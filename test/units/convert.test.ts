import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase, shownUnit, toBase, unitSymbols } from '../../lib/units/convert.ts';
import { DIMENSIONS, type Dimension } from '../../lib/units/dimension.ts';

const NAMES = Object.keys(DIMENSIONS) as Dimension[];
const PAIRS = NAMES.flatMap((dimension) => unitSymbols(dimension).map((symbol) => [dimension, symbol] as const));

describe('units', () => {
  it.each(PAIRS)('%s in %s comes back unchanged', (dimension, symbol) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const back = fromBase(toBase(value, dimension, symbol), dimension, symbol);
        // A temperature loses the digits that its offset pushes out.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
      }),
    );
  });

  // Exact by the definitions of the units (international yard and pound, standard atmosphere, international table BTU).
  it.each([
    [1, 'pumpingSpeed', 'cfm', 0.0004719474432, 1e-16],
    [-40, 'temperature', '°F', 233.15, 1e-10],
    [0, 'temperature', '°C', 273.15, 0],
    [760, 'pressure', 'Torr', 101325, 1e-9],
    [760000, 'pressure', 'mTorr', 101325, 1e-9],
    [1, 'load', 'lb/ft²', 4.882427636383051, 1e-12],
    [1, 'heatTransfer', 'BTU/(h·ft²·°F)', 5.678263341113487, 1e-12],
    [12, 'moneyPerMonth', 'money/year', 1, 1e-15],
    [40, 'timePerWeek', 'h/week', 144000, 0],
  ] as const)('%d of %s in %s is %d', (value, dimension, symbol, expected, tolerance) => {
    expect(Math.abs(toBase(value, dimension, symbol) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it('refuses a unit of another dimension', () => {
    expect(() => toBase(1, 'mass', 'm')).toThrow(RangeError);
    expect(() => fromBase(1, 'mass', 'm')).toThrow(RangeError);
  });

  it.each(NAMES)('shows %s in one of its own units', (dimension) => {
    expect(unitSymbols(dimension)).toContain(shownUnit(dimension, 'us'));
    expect(unitSymbols(dimension)).toContain(shownUnit(dimension, 'si'));
  });

  it('names no unit twice within a dimension', () => {
    for (const dimension of NAMES) expect(new Set(unitSymbols(dimension)).size).toBe(unitSymbols(dimension).length);
  });
});
