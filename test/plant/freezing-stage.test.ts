import { describe, expect, it } from 'vitest';
import { chamberFreezingTime, freezerFreezingTime } from '../../lib/plant/freezing-stage.ts';
import type { FreezerSpec, ProductSpec } from '../../lib/plant/types.ts';
import { CANDY, CHAMBER, FRUIT, SOUP } from './sample-shop.ts';

const HOUR = 3600;
const FREEZER: FreezerSpec = { temperature: 245.15, coefficient: 20, capacity: 60, power: 400 };

/** Made here and put into the chamber at 8 °C. */
const FRESH: ProductSpec = { ...SOUP, preFrozen: false, loadingTemperature: 281.15 };

describe('freezing in the chamber', () => {
  it('takes at least the time the trap needs to get cold', () => {
    expect(chamberFreezingTime(CANDY, CHAMBER, null)).toBe(CHAMBER.trapCooling);
    const cold = { ...FRUIT, loadingTemperature: 243.15 };
    expect(chamberFreezingTime(cold, CHAMBER, null)).toBe(CHAMBER.trapCooling);
  });

  it('takes hours for a fresh load, less for a frozen one', () => {
    const fresh = chamberFreezingTime(FRESH, CHAMBER, null) as number;
    const frozen = chamberFreezingTime({ ...FRESH, loadingTemperature: 262.15 }, CHAMBER, null) as number;
    // A 9 mm layer of watery food on a shelf at −32 °C with 20 W/(m²·K): ρ·ΔH·d/(h·ΔT) is 1050·3.3e5·0.009/(20·30) s = 1.4 h.
    expect(fresh / HOUR).toBeGreaterThan(1);
    expect(fresh / HOUR).toBeLessThan(4);
    expect(frozen).toBeLessThan(0.6 * fresh);
  });

  it('takes longer thicker, and less on a colder shelf or with a better touch', () => {
    const time = chamberFreezingTime(FRESH, CHAMBER, null) as number;
    expect(chamberFreezingTime({ ...FRESH, pieceThickness: 0.018 }, CHAMBER, null)).toBeGreaterThan(1.8 * time);
    expect(chamberFreezingTime(FRESH, { ...CHAMBER, freezingTemperature: 231.15 }, null)).toBeLessThan(time);
    expect(chamberFreezingTime(FRESH, { ...CHAMBER, freezingCoefficient: 40 }, null)).toBeLessThan(time);
  });

  it('is impossible on a shelf that is not cold enough', () => {
    expect(chamberFreezingTime(FRESH, { ...CHAMBER, freezingTemperature: 260 }, null)).toBeNull();
    expect(chamberFreezingTime({ ...FRESH, frozenLimit: 244 }, CHAMBER, null)).toBeNull();
  });

  it('is tempering only when the load comes out of the freezer', () => {
    const made = { ...FRESH, preFrozen: true };
    const direct = chamberFreezingTime(made, CHAMBER, null) as number;
    const fromFreezer = chamberFreezingTime(made, CHAMBER, FREEZER) as number;
    expect(fromFreezer).toBeLessThan(direct);
    // A load that does not go there gains nothing from a freezer.
    expect(chamberFreezingTime(FRESH, CHAMBER, FREEZER)).toBe(chamberFreezingTime(FRESH, CHAMBER, null));
  });
});

describe('freezing in the freezer', () => {
  const made = { ...FRESH, preFrozen: true };

  it('is for pre-frozen products with ice only', () => {
    expect(freezerFreezingTime(FRESH, FREEZER)).toBe(0);
    expect(freezerFreezingTime({ ...CANDY, preFrozen: true }, FREEZER)).toBe(0);
    expect(freezerFreezingTime(made, FREEZER)).toBeGreaterThan(HOUR / 2);
  });

  it('is faster than on a shelf just as cold, for air reaches both sides', () => {
    const shelf = { ...CHAMBER, freezingTemperature: FREEZER.temperature, trapCooling: 0 };
    const one = chamberFreezingTime(FRESH, shelf, null) as number;
    const both = freezerFreezingTime(made, FREEZER) as number;
    expect(both / one).toBeGreaterThan(0.3);
    expect(both / one).toBeLessThan(0.55);
  });

  it('is impossible in a freezer that is too warm', () => {
    expect(freezerFreezingTime(made, { ...FREEZER, temperature: 258 })).toBeNull();
  });
});
