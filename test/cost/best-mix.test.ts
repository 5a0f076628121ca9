import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestMix, type MixProduct } from '../../lib/cost/best-mix.ts';

const hour = 3600;
const berries: MixProduct = {
  productId: 'berries',
  contribution: 90,
  uses: { chambers: 30 * hour, crew: hour },
  demand: 3,
};
const candy: MixProduct = {
  productId: 'candy',
  contribution: 40,
  uses: { chambers: 5 * hour, crew: hour },
  demand: null,
};

describe('bestMix', () => {
  it('fills the jammed resource with what brings most per hour of it', () => {
    const mix = bestMix([berries, { ...candy, demand: 10 }], { chambers: 100 * hour, crew: 40 * hour });
    if (mix.kind !== 'best') throw new Error('a mix expected');
    expect(mix.units[1]).toBeCloseTo(10, 9);
    expect(mix.units[0]).toBeCloseTo(50 / 30, 9);
    expect(mix.worthOfHour.chambers).toBeCloseTo(3, 9);
    expect(mix.worthOfHour.crew).toBe(0);
  });

  it('is never worse than any mix on a grid', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 2, max: 40 }), (chambers, crew) => {
        const mix = bestMix([berries, candy], { chambers: chambers * hour, crew: crew * hour });
        if (mix.kind !== 'best') throw new Error('a mix expected');
        for (let a = 0; a <= 3; a += 0.25) {
          const b = Math.max(0, Math.min((chambers - 30 * a) / 5, crew - a));
          const fits = 30 * a + 5 * b <= chambers && a + b <= crew;
          if (fits) expect(mix.contribution).toBeGreaterThanOrEqual(90 * a + 40 * b - 1e-6);
        }
      }),
      { seed: 61, numRuns: 60 },
    );
  });

  it('leaves out a product that loses money', () => {
    const mix = bestMix([{ ...berries, contribution: -1 }], { chambers: hour, crew: hour });
    if (mix.kind === 'best') expect(mix.units).toEqual([0]);
    expect(mix.kind).toBe('best');
  });

  it('says when nothing holds a product back', () => {
    expect(bestMix([{ ...candy, uses: {} }], {})).toEqual({ kind: 'unlimited', productId: 'candy' });
  });

  it('refuses a resource without capacity', () => {
    expect(() => bestMix([berries], { crew: hour })).toThrow(RangeError);
    expect(() => bestMix([{ ...berries, demand: -1 }], { chambers: 1, crew: 1 })).toThrow(RangeError);
  });
});
