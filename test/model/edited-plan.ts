import { checkPlan } from '../../lib/plan/check-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { editedDemo, type Loose } from '../plan/edited-demo.ts';

/** The demo plan with something changed; throws when what comes out is no plan. */
export function planWith(edit: (document: Loose) => void): Plan {
  const checked = checkPlan(editedDemo(edit));
  if (!checked.ok) throw new Error(JSON.stringify(checked.error));
  return checked.value;
}

/** Strawberries alone, a market that takes them all, no growth, no freezer, a low rent: a plan that is worked out in a moment. */
function makeSmall(document: Loose): void {
  const [fruit] = document.products;
  fruit.weeklyDemand = null;
  fruit.growth.value = 0;
  document.products = [fruit];
  document.freezer = null;
  document.site.rentAndFixed.value = 300;
  const mix = [{ product: fruit.id, share: 100 }];
  const [today, expansion] = document.scenarios;
  document.scenarios = [
    { ...today, mix, chambers: [{ chamber: 'mid', count: 1 }] },
    { ...expansion, id: 'two', name: 'Two on one pump', mix, chambers: [{ chamber: 'mid', count: 2 }] },
  ];
}

/** A small plan of two scenarios, 'today' with one chamber and 'two' with two on one pump, changed further by `edit`. */
export function smallPlan(edit: (document: Loose) => void = () => {}): Plan {
  return planWith((document) => {
    makeSmall(document);
    edit(document);
  });
}
