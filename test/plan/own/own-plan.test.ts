import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOD_COMPOSITIONS } from '../../../lib/inputs/presets/food-compositions.ts';
import { inBase } from '../../../lib/inputs/quantity.ts';
import { checkPlan } from '../../../lib/plan/check-plan.ts';
import { OWN_HOURS, type OwnAnswers } from '../../../lib/plan/own/own-answers.ts';
import { ownPlan } from '../../../lib/plan/own/own-plan.ts';
import { parsePlan } from '../../../lib/plan/parse-plan.ts';
import { serialisePlan } from '../../../lib/plan/serialise-plan.ts';

const told = (units: readonly string[]) =>
  fc.record({ value: fc.double({ min: 0, max: 1e5, noNaN: true }), unit: fc.constantFrom(...units) });

const anyAnswers: fc.Arbitrary<OwnAnswers> = fc.record({
  foods: fc.array(fc.constantFrom(...FOOD_COMPOSITIONS.map((food) => food.key), 'unheard-of'), { maxLength: 9 }),
  chambers: fc.oneof(fc.integer({ min: 1, max: 24 }), fc.double({ min: -5, max: 500, noNaN: true })),
  shelfArea: told(['m²', 'ft²', 'in²']),
  pump: fc.constantFrom('own', 'shared'),
  hours: fc.constantFrom(...OWN_HOURS),
  price: told(['money/kg', 'money/lb']),
  weeklyDemand: fc.option(told(['kg/week', 'lb/week'])),
  currency: fc.constantFrom('USD', 'EUR', 'JPY'),
  unitSystem: fc.constantFrom('us', 'si'),
});

const ANSWERS: OwnAnswers = {
  foods: ['apple', 'taffy', 'milk'],
  chambers: 2,
  shelfArea: { value: 16, unit: 'ft²' },
  pump: 'own',
  hours: 'days',
  price: { value: 30, unit: 'money/lb' },
  weeklyDemand: { value: 90, unit: 'lb/week' },
  currency: 'USD',
  unitSystem: 'us',
};

describe('a plan of one’s own', () => {
  it('is valid, whatever the answers', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const plan = ownPlan(answers);
        const checked = checkPlan(plan);
        expect(checked.ok ? [] : checked.error).toEqual([]);
        expect(parsePlan(serialisePlan(plan))).toMatchObject({ ok: true });
      }),
      { numRuns: 150 },
    );
  });

  it('keeps what was told, in the units it was told in', () => {
    const { chambers, products, scenarios } = ownPlan(ANSWERS);
    expect(chambers[0]?.shelfArea).toMatchObject({ value: 16, unit: 'ft²', origin: 'measured' });
    expect(products.map((product) => product.name)).toEqual(['Apples', 'Taffy candy', 'Milk']);
    expect(products[1]?.price).toMatchObject({ value: 30, unit: 'money/lb', origin: 'measured' });
    expect(products.map((product) => product.weeklyDemand?.value)).toEqual([30, 30, 30]);
    expect(scenarios[0]).toMatchObject({ chambers: [{ count: 2 }], pumpArrangement: 'own', pattern: 'days' });
    expect(scenarios.map((scenario) => scenario.chambers[0]?.count)).toEqual([2, 3, 4]);
  });

  it('marks as guesses what was not told', () => {
    const { chambers, pumps } = ownPlan(ANSWERS);
    expect(chambers[0]?.trapCapacity.origin).toBe('guess');
    expect(pumps[0]?.speed.origin).toBe('guess');
  });

  it('sizes a shared pump for all chambers', () => {
    const speed = (pump: OwnAnswers['pump']) => {
      const [first] = ownPlan({ ...ANSWERS, pump }).pumps;
      return first ? inBase(first.speed, 'pumpingSpeed') : 0;
    };
    // Speeds are rounded to three figures.
    expect(speed('shared') / speed('own')).toBeCloseTo(2, 1);
  });
});
