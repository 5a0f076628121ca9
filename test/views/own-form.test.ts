import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { OWN_HOURS } from '../../lib/plan/own/own-answers.ts';
import { ownPlan } from '../../lib/plan/own/own-plan.ts';
import { OWN_FOODS, OWN_START, OWN_TIMES, type OwnForm, ownUnit, readOwnForm } from '../../lib/views/own-form.ts';

const US = { system: 'us', currency: 'USD' } as const;
const SI = { system: 'si', currency: 'EUR' } as const;
const FILLED: OwnForm = {
  ...OWN_START,
  foods: ['apple'],
  chambers: '2',
  shelfArea: '4*4',
  price: '$30',
  weeklyDemand: '',
};

describe('the five questions', () => {
  it('give answers in the units they were asked in', () => {
    expect(readOwnForm(FILLED, US)).toMatchObject({
      ok: true,
      value: {
        chambers: 2,
        shelfArea: { value: 16, unit: 'ft²' },
        price: { value: 30, unit: 'money/lb' },
        weeklyDemand: null,
      },
    });
    expect(readOwnForm({ ...FILLED, price: '30', weeklyDemand: '50 lb' }, SI).ok).toBe(false);
    expect(readOwnForm({ ...FILLED, price: '30', weeklyDemand: '50 lb/week' }, SI)).toMatchObject({
      value: { shelfArea: { unit: 'm²' }, price: { unit: 'money/kg' }, weeklyDemand: { value: 50, unit: 'lb/week' } },
    });
    expect(ownUnit('price', SI)).toBe('€/kg');
  });

  it('say where something is missing or wrong', () => {
    const read = readOwnForm({ ...OWN_START, chambers: '0', weeklyDemand: 'lots' }, US);
    expect(read.ok ? [] : Object.keys(read.error)).toEqual(['foods', 'chambers', 'shelfArea', 'price', 'weeklyDemand']);
    const many = readOwnForm({ ...FILLED, foods: OWN_FOODS.map((food) => food.key) }, US);
    expect(many).toMatchObject({ ok: false, error: { foods: { problem: `${OWN_FOODS.length} are chosen.` } } });
  });

  it('offer every pattern there is', () => {
    expect(OWN_TIMES.map((time) => time.value)).toEqual(OWN_HOURS);
  });

  it.each(OWN_FOODS)('make a valid plan for $label', ({ key }) => {
    const read = readOwnForm({ ...FILLED, foods: [key] }, US);
    expect(read.ok && checkPlan(ownPlan(read.value)).ok).toBe(true);
  });
});
