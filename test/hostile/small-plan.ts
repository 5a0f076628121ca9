import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { editedDemo, type Loose, textOf } from '../plan/edited-demo.ts';

/** The invented shop with one of everything: every kind of field is there, and reading it takes a millisecond. */
export function smallPlan(): Loose {
  return editedDemo((plan) => {
    const [today] = plan.scenarios;
    plan.scenarios = [{ ...today, mix: [{ ...today.mix[0], share: 100 }] }];
    plan.products = plan.products.filter((product: Loose) => product.id === today.mix[0].product);
    const used = [today.chambers[0].chamber];
    today.chambers = today.chambers.slice(0, 1);
    plan.scenarios[0].chambers = today.chambers;
    plan.chambers = plan.chambers.filter((chamber: Loose) => used.includes(chamber.id));
    plan.batchLog = plan.batchLog
      .filter(
        (entry: Loose) => used.includes(entry.chamber) && (!entry.product || entry.product === plan.products[0].id),
      )
      .slice(0, 2);
  });
}

/** The text of the small plan; throws when it is no plan, which would make every test of it empty. */
export function smallPlanText(): string {
  const text = textOf(smallPlan());
  const parsed = parsePlan(text);
  if (!parsed.ok) throw new Error(`the small plan is no plan: ${JSON.stringify(parsed.error)}`);
  return text;
}
