import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BlendProduct, marketBlend } from '../../lib/cost/market-blend.ts';

/** Two products of one shop: more berries in the larger week, less candy. */
const berries: BlendProduct = { today: 10, larger: 16, demand: 13, margin: 50 };
const candy: BlendProduct = { today: 20, larger: 14, demand: 40, margin: 5 };

function broughtIn(products: readonly BlendProduct[], share: number): number {
  return products.reduce((sum, { today, larger, demand, margin }) => {
    const made = (1 - share) * today + share * larger;
    return sum + margin * Math.min(made, demand ?? Number.POSITIVE_INFINITY);
  }, 0);
}

describe('marketBlend', () => {
  it('stops where the dearer product meets its demand, and the other only loses from there on', () => {
    expect(marketBlend([berries, candy])).toBeCloseTo(0.5, 12);
  });

  it('stays with today where more brings nothing, and goes all the way where nothing stops it', () => {
    expect(marketBlend([{ ...berries, demand: 9 }, candy])).toBe(0);
    expect(marketBlend([{ ...berries, demand: null }, candy])).toBe(1);
    expect(marketBlend([{ ...berries, demand: null, margin: -1 }])).toBe(0);
    expect(marketBlend([])).toBe(0);
  });

  it('is beaten by no share on a grid', () => {
    const product = fc.record({
      today: fc.double({ min: 0, max: 100, noNaN: true }),
      larger: fc.double({ min: 0, max: 100, noNaN: true }),
      demand: fc.option(fc.double({ min: 0, max: 100, noNaN: true }), { nil: null }),
      margin: fc.double({ min: -10, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(product, { maxLength: 4 }), (products) => {
        const best = marketBlend(products);
        expect(best >= 0 && best <= 1).toBe(true);
        for (let share = 0; share <= 1; share += 0.05) {
          expect(broughtIn(products, best)).toBeGreaterThanOrEqual(broughtIn(products, share) - 1e-4);
        }
      }),
      { seed: 12 },
    );
  });

  it('refuses negative amounts', () => {
    expect(() => marketBlend([{ ...berries, today: -1 }])).toThrow(RangeError);
  });
});
