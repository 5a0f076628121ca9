import { expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { FOOD_CHOICES, takeComposition } from '../../../lib/views/fields/composition-gesture.ts';
import { presentState, startSheet, undoGesture } from '../../../lib/views/sheet-history.ts';

it.each(FOOD_CHOICES)('a product takes over the composition of $label in one step', ({ key }) => {
  const outcome = takeComposition('products.@bean-soup', key)(startSheet(DEMO_PLAN));
  expect(outcome.done, outcome.said).toBe(true);
  const { water } = presentState(outcome.sheet).plan.products[2] ?? {};
  expect(water?.origin).toBe(key === 'coffee' ? 'guess' : 'handbook');
  expect(presentState(undoGesture(outcome.sheet).sheet).plan).toBe(DEMO_PLAN);
});

it('a product that is gone is said to be', () => {
  expect(takeComposition('products.@gone', 'apple')(startSheet(DEMO_PLAN)).done).toBe(false);
});
