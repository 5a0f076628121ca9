import { describe, expect, it } from 'vitest';
import type { Composition } from '../../lib/physics/food-components.ts';
import { foodEnthalpy } from '../../lib/physics/food-enthalpy.ts';
import { foodHeat, iceFraction } from '../../lib/physics/food-properties.ts';

const C = 273.15;
const FREEZING = C - 1.1;
const APPLE: Composition = {
  water: 0.8556,
  protein: 0.0027,
  fat: 0.0017,
  carbohydrate: 0.1113,
  fibre: 0.0267,
  ash: 0.002,
};

/** Chen (1985), from memory, the second method: kJ/kg above −40 °C with t in °C. */
function chenEnthalpy(food: Composition, freezing: number, t: number): number {
  const solids = 1 - food.water;
  const bound = 0.4 * food.protein;
  const frozen = (x: number) =>
    (x + 40) * (1.55 + 1.26 * solids + ((food.water - bound) * 333.6 * freezing) / (40 * x));
  if (t <= freezing) return frozen(t);
  return frozen(freezing) + (t - freezing) * (4.19 - 2.3 * solids - 0.628 * solids ** 3);
}

describe('foodEnthalpy', () => {
  it('is nothing for the unfrozen food at 0 °C', () => {
    expect(foodEnthalpy(APPLE, FREEZING, C)).toBe(0);
  });

  it.each([-40, -30, -20, -10])('agrees within 4 % with the method of Chen from 10 to %s °C', (t) => {
    const ours = foodEnthalpy(APPLE, FREEZING, C + 10) - foodEnthalpy(APPLE, FREEZING, C + t);
    const chen = 1000 * (chenEnthalpy(APPLE, -1.1, 10) - chenEnthalpy(APPLE, -1.1, t));
    expect(Math.abs(ours / chen - 1)).toBeLessThan(0.04);
  });

  it('has the specific heat as its slope where no ice forms, supercooled or hot', () => {
    for (const t of [-28, -10, -1, 1, 20, 60, 140]) {
      const slope = foodEnthalpy(APPLE, C - 30, C + t + 0.05) - foodEnthalpy(APPLE, C - 30, C + t - 0.05);
      expect(Math.abs(slope / (0.1 * foodHeat(APPLE, 0, C + t)) - 1)).toBeLessThan(1e-6);
    }
  });

  it('has the heat of fusion in its slope where ice forms', () => {
    const [warm, cold] = [C - 9.99, C - 10.01];
    const rise = foodEnthalpy(APPLE, FREEZING, warm) - foodEnthalpy(APPLE, FREEZING, cold);
    const ice = iceFraction(APPLE, FREEZING, cold) - iceFraction(APPLE, FREEZING, warm);
    const sensible = foodHeat(APPLE, iceFraction(APPLE, FREEZING, C - 10), C - 10) * 0.02;
    // The heat of fusion at −10 °C is a tenth below that at 0 °C, water's specific heat being larger than ice's.
    expect((rise - sensible) / ice).toBeGreaterThan(300_000);
    expect((rise - sensible) / ice).toBeLessThan(333_600);
  });

  it('rises with temperature', () => {
    for (let t = -50; t < 60; t += 0.25) {
      expect(foodEnthalpy(APPLE, FREEZING, C + t + 0.25)).toBeGreaterThan(foodEnthalpy(APPLE, FREEZING, C + t));
    }
  });
});
