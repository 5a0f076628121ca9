import { describe, expect, it } from 'vitest';
import { compositionValues } from '../../../lib/inputs/presets/composition-values.ts';
import { FOOD_COMPOSITIONS } from '../../../lib/inputs/presets/food-compositions.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import type { Product } from '../../../lib/plan/plan-types.ts';
import { namedParts } from '../../../lib/plan/rules/product-rule.ts';

/** Tables round each part to 0.01 g; the protein of meat is reckoned from nitrogen and overstates it by about a hundredth. */
function slackOf(protein: number): number {
  return protein > 15 ? 1 : 0.05;
}

describe('compositions of usual foods', () => {
  it('are many, each under a key of its own', () => {
    expect(new Set(FOOD_COMPOSITIONS.map((food) => food.key)).size).toBe(FOOD_COMPOSITIONS.length);
    expect(FOOD_COMPOSITIONS.length).toBeGreaterThanOrEqual(20);
  });

  it.each(FOOD_COMPOSITIONS)('$label sums to 100 g', ({ water, protein, fat, carbohydrate, fibre, ash }) => {
    const sum = water + protein + fat + carbohydrate + ash;
    expect(Math.abs(sum - 100)).toBeLessThanOrEqual(slackOf(protein));
    expect(fibre).toBeLessThanOrEqual(carbohydrate);
  });

  it.each(FOOD_COMPOSITIONS)('$label can be held by a product', (food) => {
    const product = { ...DEMO_PLAN.products[0], ...compositionValues(food) } as Product;
    const rest = 1 - namedParts(product);
    expect(rest).toBeGreaterThanOrEqual(-1e-9);
    // What is left is carbohydrate without fibre.
    expect(rest * 100).toBeCloseTo(food.carbohydrate - food.fibre, 0);
  });
});
