import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { drawPlan, drawValues, planWithValues } from '../../lib/risk/draw-plan.ts';
import { pertQuantile } from '../../lib/risk/pert.ts';
import { triangularQuantile } from '../../lib/risk/triangular.ts';
import { uncertainInputs } from '../../lib/risk/uncertain-inputs.ts';
import { planWith } from '../model/edited-plan.ts';
import { certainPlan, uncertainFruit, uncertainPrice } from './uncertain-plan.ts';

describe('uncertainInputs', () => {
  it('lists what is given with a low or a high, and nothing that no scenario uses', () => {
    const inputs = uncertainInputs(DEMO_PLAN);
    const keys = inputs.map((input) => input.key);
    expect(keys).toContain('products.strawberries.price');
    expect(keys).toContain('chambers.mid.leak');
    expect(keys).toContain('site.electricityPrice');
    expect(keys).toContain('financing.loans.bank.rate');
    expect(keys.filter((key) => key.startsWith('chambers.large'))).toEqual([]);
    expect(new Set(keys).size).toBe(keys.length);
    const price = inputs.find((input) => input.key === 'products.bean-soup.price');
    expect(price).toEqual({
      path: 'products.2.price',
      key: 'products.bean-soup.price',
      fieldId: 'product.price',
      unit: 'money/kg',
      points: { low: 64, likely: 74, high: 82 },
    });
  });

  it('finds every pair of low and high there is in the text of the plan', () => {
    const used = { ...DEMO_PLAN, chambers: DEMO_PLAN.chambers.filter((chamber) => chamber.id === 'mid') };
    const lows = JSON.stringify(used).split('"low":').length - 1;
    expect(uncertainInputs(DEMO_PLAN)).toHaveLength(lows);
  });

  it('takes the likely value for an end that is not given, and skips what has no width', () => {
    const plan = certainPlan((document) => {
      document.site.electricityPrice = { value: 0.1, unit: 'money/kWh', origin: 'guess', high: 0.2 };
      document.site.delivery = { value: 5, unit: 'money', origin: 'guess', low: 5, high: 5 };
      document.crew.wage = { value: 18, unit: 'money/h', origin: 'guess', low: 12 };
    });
    expect(uncertainInputs(plan).map(({ key, points }) => [key, points])).toEqual([
      ['crew.wage', { low: 12, likely: 18, high: 18 }],
      ['site.electricityPrice', { low: 0.1, likely: 0.1, high: 0.2 }],
    ]);
  });

  it('keeps its order when scenarios and catalogue are put in another order', () => {
    const shuffled = planWith((document) => {
      document.products.reverse();
      document.pumps.reverse();
      document.scenarios = [document.scenarios[0], ...document.scenarios.slice(1).reverse()];
    });
    const about = ({ key, points }: ReturnType<typeof uncertainInputs>[number]) => ({ key, points });
    expect(uncertainInputs(shuffled).map(about)).toEqual(uncertainInputs(DEMO_PLAN).map(about));
  });
});

describe('drawPlan', () => {
  const plan = certainPlan((document) => {
    uncertainPrice(document);
    uncertainFruit(document);
  });
  const inputs = uncertainInputs(plan);

  it('puts each input at its share of the distribution and leaves the rest alone', () => {
    const points = { low: 70, likely: 112, high: 130 };
    for (const [shape, quantile] of [['pert', pertQuantile] as const, ['triangular', triangularQuantile] as const]) {
      const drawn = drawPlan(plan, inputs, [0.2, 0.7], shape);
      const [product] = drawn.products;
      expect(product?.price).toEqual({ ...plan.products[0]?.price, value: quantile(0.2, points) });
      expect(product?.wetCost.value).toBe(quantile(0.7, { low: 3, likely: 4.2, high: 8 }));
      const restored = planWithValues(drawn, inputs, [112, 4.2]);
      expect(restored).toEqual(plan);
    }
    expect(drawPlan(plan, inputs, [0.5, 0.5])).toEqual(drawPlan(plan, inputs, [0.5, 0.5], 'pert'));
  });

  it('refuses points and inputs that do not fit', () => {
    expect(() => drawValues(inputs, [0.5])).toThrow(RangeError);
    expect(() => drawValues(inputs, [0.5, 1.5])).toThrow(RangeError);
    expect(() => planWithValues(plan, inputs, [1])).toThrow(RangeError);
    const elsewhere = inputs.map((input) => ({ ...input, path: 'products.9.price' }));
    expect(() => planWithValues(plan, elsewhere, [1, 2])).toThrow(RangeError);
  });
});
