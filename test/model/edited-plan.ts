import { checkPlan } from '../../lib/plan/check-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { editedDemo, type Loose } from '../plan/edited-demo.ts';

/** The demo plan with something changed; throws when what comes out is no plan. */
export function planWith(edit: (document: Loose) => void): Plan {
  const checked = checkPlan(editedDemo(edit));
  if (!checked.ok) throw new Error(JSON.stringify(checked.error));
  return checked.value;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * Strawberries alone, a market that takes them all, no growth or season, no freezer, one price of current, a low rent, paid at
 * once, no debt today, machines new, pumps that never fail: a plan that is worked out in a moment and much of it by hand.
 */
function makeSmall(document: Loose): void {
  const [fruit] = document.products;
  fruit.weeklyDemand = null;
  fruit.growth.value = 0;
  document.products = [fruit];
  document.batchLog = [];
  document.freezer = null;
  for (const month of MONTHS) fruit[`season${month}`] = 100;
  document.site.rentAndFixed.value = 300;
  document.site.priceBands = [];
  document.financing.loans.splice(1);
  document.financing.openingCash.value = 0;
  document.financing.receivableDays.value = 0;
  document.financing.payableDays.value = 0;
  document.financing.stockDays.value = 45;
  document.chambers[0].age.value = 0;
  document.pumps[0].age.value = 0;
  for (const pump of document.pumps) pump.failuresPerYear = { value: 0, unit: '1/year', origin: 'guess' };
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
