import { describe, expect, it } from 'vitest';
import { clelandEarleTime } from '../../lib/physics/cleland-earle-time.ts';
import type { Composition } from '../../lib/physics/food-components.ts';
import { foodEnthalpy } from '../../lib/physics/food-enthalpy.ts';
import { freezingProperties } from '../../lib/physics/freezing-properties.ts';
import { type FreezingCase, freezingTime } from '../../lib/physics/freezing-time.ts';
import { plankTime } from '../../lib/physics/plank-time.ts';

const C = 273.15;
const APPLE: Composition = {
  water: 0.8556,
  protein: 0.0027,
  fat: 0.0017,
  carbohydrate: 0.1113,
  fibre: 0.0267,
  ash: 0.002,
};
const FOOD = freezingProperties(APPLE, C - 1.1, C - 20);
const SLAB: FreezingCase = {
  thickness: 0.02,
  sides: 1,
  coefficient: 40,
  ambient: C - 35,
  initial: C + 10,
  finalCentre: C - 20,
};

function time(change: Partial<FreezingCase> = {}): number {
  const outcome = freezingTime({ ...SLAB, ...change }, FOOD);
  if (outcome.kind !== 'frozen') throw new Error(outcome.kind);
  return outcome.time;
}

describe('freezingTime', () => {
  it('grows with thickness and starting temperature, and falls with colder air and better contact', () => {
    expect(time({ thickness: 0.025 })).toBeGreaterThan(time());
    expect(time({ initial: C + 20 })).toBeGreaterThan(time());
    expect(time({ ambient: C - 40 })).toBeLessThan(time());
    expect(time({ coefficient: 60 })).toBeLessThan(time());
  });

  it('counts one cooled face as half of a slab twice as thick', () => {
    expect(time({ thickness: 0.04, sides: 2 })).toBeCloseTo(time(), 9);
  });

  it('is continuous at the mean freezing temperature, and no time for a load that is cold enough', () => {
    const mean = C + 1.8 - 0.263 * 20 - 0.105 * 35;
    expect(time({ initial: mean + 1e-9 })).toBeCloseTo(time({ initial: mean - 1e-9 }), 3);
    expect(time({ initial: C - 25 })).toBe(0);
  });

  it('says that an ambient at or above the final temperature never freezes it', () => {
    expect(freezingTime({ ...SLAB, ambient: C - 20 }, FOOD)).toEqual({
      kind: 'neverFreezes',
      ambient: C - 20,
      needed: C - 20,
    });
    expect(freezingTime({ ...SLAB, ambient: C + 5 }, FOOD).kind).toBe('neverFreezes');
  });

  it('refuses a slab of no thickness or no cooling', () => {
    expect(() => freezingTime({ ...SLAB, thickness: 0 }, FOOD)).toThrow(RangeError);
    expect(() => freezingTime({ ...SLAB, coefficient: -1 }, FOOD)).toThrow(RangeError);
  });

  it('lies above Plank and near Cleland and Earle for a real fruit', () => {
    const { frozenDensity, frozenHeat, unfrozenDensity, unfrozenHeat, frozenConductivity } = FOOD;
    const toTen = freezingProperties(APPLE, C - 1.1, C - 10);
    const shared = {
      thickness: 0.04,
      coefficient: 40,
      ambient: C - 35,
      freezing: C - 1.1,
      conductivity: frozenConductivity,
    };
    const plank = plankTime({ ...shared, heat: frozenDensity * toTen.latentHeat });
    const earle = clelandEarleTime({
      ...shared,
      heat: frozenDensity * (toTen.latentHeat + frozenHeat * 8.9),
      initial: C + 10,
      unfrozenCapacity: unfrozenDensity * unfrozenHeat,
      frozenCapacity: frozenDensity * frozenHeat,
    });
    const pham = freezingTime({ ...SLAB, finalCentre: C - 10 }, toTen);
    if (pham.kind !== 'frozen') throw new Error(pham.kind);
    expect(pham.time).toBeGreaterThan(plank);
    expect(Math.abs(pham.time / earle - 1)).toBeLessThan(0.1);
  });
});

describe('plankTime and clelandEarleTime', () => {
  it('refuse an ambient above the freezing point', () => {
    const warm = { thickness: 0.1, coefficient: 30, ambient: C, freezing: C - 1, conductivity: 1.6, heat: 2.6e8 };
    expect(() => plankTime(warm)).toThrow(RangeError);
    const more = { ...warm, initial: C + 5, unfrozenCapacity: 3.7e6, frozenCapacity: 1.9e6 };
    expect(() => clelandEarleTime(more)).toThrow(RangeError);
  });
});

describe('freezingProperties', () => {
  it('hold exactly the heat of the enthalpy from freezing point to final temperature', () => {
    const heat = foodEnthalpy(APPLE, C - 1.1, C - 1.1) - foodEnthalpy(APPLE, C - 1.1, C - 20);
    expect(FOOD.latentHeat + FOOD.frozenHeat * 18.9).toBeCloseTo(heat, 6);
  });

  it('refuse a final temperature that is not frozen', () => {
    expect(() => freezingProperties(APPLE, C - 1.1, C)).toThrow(RangeError);
  });
});
