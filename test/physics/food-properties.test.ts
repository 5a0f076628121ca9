import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Composition } from '../../lib/physics/food-components.ts';
import {
  dryMatterHeat,
  foodConductivity,
  foodDensity,
  foodHeat,
  freezableWater,
  iceFraction,
} from '../../lib/physics/food-properties.ts';

const C = 273.15;
const APPLE: Composition = {
  water: 0.8556,
  protein: 0.0027,
  fat: 0.0017,
  carbohydrate: 0.1113,
  fibre: 0.0267,
  ash: 0.002,
};

/** Any composition, fractions summing to 1. */
const composition = fc
  .tuple(...Array.from({ length: 6 }, () => fc.double({ min: 0.01, max: 1, noNaN: true })))
  .map((parts): Composition => {
    const total = parts.reduce((sum, part) => sum + part, 0);
    const [water, protein, fat, carbohydrate, fibre, ash] = parts.map((part) => part / total) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    return { water, protein, fat, carbohydrate, fibre, ash };
  });
const celsius = fc.double({ min: -45, max: 60, noNaN: true });

describe('iceFraction', () => {
  it('is nothing at and above the freezing point, and grows as it gets colder, never past the water', () => {
    fc.assert(
      fc.property(composition, celsius, fc.double({ min: 0, max: 10, noNaN: true }), (food, t, step) => {
        const warm = iceFraction(food, C - 1, C + t);
        const cold = iceFraction(food, C - 1, C + t - step);
        expect(warm).toBeGreaterThanOrEqual(0);
        expect(cold).toBeGreaterThanOrEqual(warm);
        expect(cold).toBeLessThanOrEqual(food.water);
        if (t >= -1) expect(warm).toBe(0);
      }),
    );
  });
});

describe('freezableWater', () => {
  it('leaves the unfreezable water of the solids liquid', () => {
    expect(freezableWater(APPLE, 0.3)).toBeCloseTo(0.8556 - 0.3 * 0.1444, 14);
    expect(freezableWater(APPLE, 0)).toBe(0.8556);
  });

  it('is never negative', () => {
    expect(freezableWater({ ...APPLE, water: 0.1, carbohydrate: 0.8669 }, 0.3)).toBe(0);
  });
});

describe('properties of a mixture', () => {
  it('lie between those of its components', () => {
    const single = (part: keyof Composition): Composition => ({
      ...{ water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 },
      [part]: 1,
    });
    fc.assert(
      fc.property(composition, fc.double({ min: 1, max: 60, noNaN: true }), (food, t) => {
        for (const property of [foodDensity, foodConductivity, foodHeat]) {
          const parts = (Object.keys(food) as (keyof Composition)[]).map((part) => property(single(part), 0, C + t));
          expect(property(food, 0, C + t)).toBeGreaterThan(Math.min(...parts));
          expect(property(food, 0, C + t)).toBeLessThan(Math.max(...parts));
        }
      }),
    );
  });

  it('change with freezing the way food does: lighter, half the heat capacity, four times the conductivity', () => {
    const ice = iceFraction(APPLE, C - 1.1, C - 25);
    expect(foodDensity(APPLE, ice, C - 25) / foodDensity(APPLE, 0, C + 5)).toBeCloseTo(0.94, 2);
    expect(foodHeat(APPLE, ice, C - 25) / foodHeat(APPLE, 0, C + 5)).toBeCloseTo(0.55, 1);
    expect(foodConductivity(APPLE, ice, C - 25) / foodConductivity(APPLE, 0, C + 5)).toBeCloseTo(4, 0);
  });

  it('of dry matter do not depend on the water', () => {
    const wetter: Composition = { ...APPLE };
    const shrink = 0.5;
    const drier: Composition = {
      water: 1 - (1 - APPLE.water) / shrink,
      protein: APPLE.protein / shrink,
      fat: APPLE.fat / shrink,
      carbohydrate: APPLE.carbohydrate / shrink,
      fibre: APPLE.fibre / shrink,
      ash: APPLE.ash / shrink,
    };
    expect(dryMatterHeat(drier)).toBeCloseTo(dryMatterHeat(wetter), 9);
    // Σ x·c of the printed fits at 40 °C, summed by hand.
    expect(dryMatterHeat(APPLE)).toBeCloseTo(1678.909, 3);
    expect(dryMatterHeat(APPLE)).toBe(dryMatterHeat(APPLE, C + 40));
  });
});

describe('preconditions', () => {
  it.each<[string, Partial<Composition>]>([
    ['do not sum to 1', { water: 0.9 }],
    ['are negative', { fat: -0.1, carbohydrate: 0.2113 + 0.0017 }],
    ['are not numbers', { ash: Number.NaN }],
  ])('refuse fractions that %s', (_, change) => {
    expect(() => foodHeat({ ...APPLE, ...change }, 0, C)).toThrow(RangeError);
  });

  it('allow the rounding of labels and −60 to 150 °C, no more', () => {
    const label = (sum: number) => ({ ...APPLE, carbohydrate: APPLE.carbohydrate + sum - 1 });
    expect(foodHeat(label(1.00095), 0, C - 60)).toBeGreaterThan(0);
    expect(foodHeat(label(0.99905), 0, C + 150)).toBeGreaterThan(0);
    expect(() => foodHeat(label(1.00105), 0, C)).toThrow(RangeError);
    expect(() => foodHeat(APPLE, 0, 212.9)).toThrow(RangeError);
    expect(() => foodHeat(APPLE, 0, 424.1)).toThrow(RangeError);
  });

  it('refuse temperatures out of range, more ice than water, and dry matter of pure water', () => {
    expect(() => foodDensity(APPLE, 0, 200)).toThrow(RangeError);
    expect(() => foodConductivity(APPLE, 0.9, C - 20)).toThrow(RangeError);
    expect(() => foodHeat(APPLE, -0.1, C - 20)).toThrow(RangeError);
    expect(() => dryMatterHeat({ water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 })).toThrow(
      RangeError,
    );
  });
});
