import type { Plan } from '../../lib/plan/plan-types.ts';
import { smallPlan } from '../model/edited-plan.ts';
import type { Loose } from '../plan/edited-demo.ts';

/** Takes every low and high away. */
function makeCertain(node: Loose): void {
  if (typeof node !== 'object' || node === null) return;
  if ('origin' in node) {
    delete node.low;
    delete node.high;
  } else for (const child of Object.values(node)) makeCertain(child);
}

/**
 * A small plan of which only what `edit` says is uncertain. Without tax, so that its figures are straight lines in prices;
 * five years, so that it is worked out in a moment.
 */
export function certainPlan(edit: (document: Loose) => void = () => {}): Plan {
  return smallPlan((document) => {
    makeCertain(document);
    document.financing.taxRate.value = 0;
    document.financing.horizon.value = 60;
    edit(document);
  });
}

/** Strawberries at 112, between 70 and 130 a kilogram, and a market that takes them all. */
export function uncertainPrice(document: Loose): void {
  Object.assign(document.products[0].price, { value: 112, low: 70, high: 130 });
}

/** Fruit at 4.2, between 3 and 8 a kilogram. */
export function uncertainFruit(document: Loose): void {
  Object.assign(document.products[0].wetCost, { value: 4.2, low: 3, high: 8 });
}
