import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { InputField } from '../../lib/inputs/input-field.ts';
import { fieldsOf, keyOf, type Section } from '../../lib/inputs/register.ts';
import { scenarioCost } from '../../lib/model/scenario-cost.ts';
import { shopSpec } from '../../lib/model/shop-spec.ts';
import { seededRandom } from '../../lib/numeric/seeded-random.ts';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';

/*
 * Plans with some entries anywhere in their allowed range, ends included: whatever a user may type, the engine gives
 * figures or a named problem, never a NaN and never an exception.
 */

/** Parts of a composition are left alone: most random ones do not sum to a food. */
const KEPT = ['water', 'protein', 'fat', 'fibre', 'ash'];

type Values = Readonly<Record<string, unknown>>;

function valueWithin(field: Extract<InputField, { kind: 'quantity' }>, place: number): number {
  const { min, max } = field;
  if (place < 0.1) return min;
  if (place > 0.9) return max;
  return min > 0 && max / min > 50 ? min * (max / min) ** place : min + place * (max - min);
}

/** A section with about one entry in twenty moved. */
function moved<Item extends object>(section: Section, item: Item, dice: () => number): Item {
  const changed: Record<string, unknown> = { ...(item as Values) };
  for (const field of fieldsOf(section)) {
    const key = keyOf(field);
    if (field.kind !== 'quantity' || changed[key] === null || KEPT.includes(key) || dice() > 0.05) continue;
    changed[key] = { value: valueWithin(field, dice()), unit: field.unit, origin: 'guess' };
  }
  return changed as Item;
}

function anyPlan(seed: number): Plan {
  const dice = seededRandom(seed).uniform;
  return {
    ...DEMO_PLAN,
    crew: moved('crew', DEMO_PLAN.crew, dice),
    freezer: DEMO_PLAN.freezer && moved('freezer', DEMO_PLAN.freezer, dice),
    products: DEMO_PLAN.products.map((product) => moved('product', product, dice)),
    chambers: DEMO_PLAN.chambers.map((chamber) => moved('chamber', chamber, dice)),
    pumps: DEMO_PLAN.pumps.map((pump) => moved('pump', pump, dice)),
    hoses: DEMO_PLAN.hoses.map((hose) => moved('hose', hose, dice)),
  };
}

/** Path of the first number in a result that is not finite; null when all are. */
function notFinite(value: unknown, path = 'result'): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path;
  if (value === null || typeof value !== 'object') return null;
  for (const [key, part] of Object.entries(value)) {
    const found = notFinite(part, `${path}.${key}`);
    if (found) return found;
  }
  return null;
}

describe('any plan that passes the check', () => {
  const seen = { computed: 0, named: 0, refused: 0 };

  it('gives finite figures or a named problem', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2 ** 31 }),
        fc.integer({ min: 0, max: DEMO_PLAN.scenarios.length - 1 }),
        (seed, place) => {
          const checked = checkPlan(JSON.parse(JSON.stringify(anyPlan(seed))));
          if (!checked.ok) {
            seen.refused += 1;
            expect(checked.error.length).toBeGreaterThan(0);
            return;
          }
          const scenario = checked.value.scenarios[place] as Plan['scenarios'][number];
          const outcome = simulateShop({ ...shopSpec(checked.value, scenario), warmUpWeeks: 1, measuredWeeks: 1 });
          if (!outcome.ok) {
            seen.named += 1;
            expect(notFinite(outcome.error)).toBeNull();
            return;
          }
          seen.computed += 1;
          expect(notFinite(outcome.value)).toBeNull();
          expect(notFinite(scenarioCost(checked.value, scenario, outcome.value).shown)).toBeNull();
        },
      ),
      { numRuns: 120, endOnFailure: true },
    );
  });

  it('and both ends of it were met', () => {
    expect(seen.computed).toBeGreaterThan(5);
    expect(seen.named).toBeGreaterThan(5);
  });
});
