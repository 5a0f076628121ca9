import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../lib/plan/check-plan.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { anyPlan } from '../../model/any-money-plan.ts';
import { fakeSimulation } from '../../model/fake-plant.ts';
import { rowOf } from './read-workbook.ts';
import { workbookFaults } from './workbook-faults.ts';
import { workbookOf } from './workbook-of.ts';

/*
 * The figures kept beside the formulas are the formulas' own, so that they can be held against the engine without a
 * spreadsheet. Weeks are made up, plans are any.
 */

/** The last two purchases in order, so that one may come after the other, and within the first year of the plan. */
function inOrder(plan: Plan): Plan {
  const months = plan.scenarios.map((_, k) => 4 * k);
  return { ...plan, scenarios: plan.scenarios.map((one, k) => ({ ...one, purchaseMonth: months[k] ?? 0 })) };
}

describe('the lender’s workbook of any plan', () => {
  const simulate = fakeSimulation();
  const seen = { worked: 0, stages: 0, tables: 0, kept: 0 };

  it('comes to the figures of the engine, line by line and month by month', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => {
        const checked = checkPlan(inOrder(anyPlan(seed)));
        if (!checked.ok) return;
        const { scenarios, financing, products } = checked.value;
        const { id } = scenarios.at(-1) ?? { id: '' };
        const made = workbookOf(checked.value, id, simulate);
        if (!made) return;
        seen.worked += 1;
        if (scenarios.at(-1)?.after) seen.stages += 1;
        if (financing.depreciationMethod !== 'straightLine') seen.tables += 1;
        if (products.some((product) => product.unsold === 'keep')) seen.kept += 1;
        const { book, result } = made;
        expect(workbookFaults(book, result)).toEqual([]);
        expect(rowOf(book, 'Checks', 'All together').get(1)).toBe('all in order');
      }),
      { seed: 8, numRuns: 12, endOnFailure: true },
    );
  });

  it('and stages, tables and stores were among them', () => {
    expect(seen.worked).toBeGreaterThan(4);
    expect(Math.min(seen.stages, seen.tables, seen.kept)).toBeGreaterThan(0);
  });
});
