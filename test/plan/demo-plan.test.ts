import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inBase } from '../../lib/inputs/quantity.ts';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { Product } from '../../lib/plan/plan-types.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';

const DOCUMENT = new URL('../documents/v1-demo.json', import.meta.url);

function product(id: string): Product {
  const found = DEMO_PLAN.products.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`the demo has no ${id}`);
  return found;
}

describe('the demo plan', () => {
  it('is a plan', () => {
    expect(checkPlan(DEMO_PLAN)).toEqual({ ok: true, value: DEMO_PLAN });
  });

  it('has six scenarios, the first being today', () => {
    expect(DEMO_PLAN.scenarios.map((scenario) => scenario.id)).toEqual([
      'today',
      'three-shared',
      'four-shared',
      'six-shared',
      'six-groups',
      'four-candy',
    ]);
  });

  it('is what the saved document of version 1 holds', async () => {
    await expect(serialisePlan(DEMO_PLAN)).toMatchFileSnapshot(DOCUMENT.pathname);
  });

  it('shows all forms of load and all ways to lie in a tray', () => {
    expect(new Set(DEMO_PLAN.products.map((item) => item.form))).toEqual(new Set(['pieces', 'poured', 'bound']));
  });

  // USDA SR28 [usda-sr28], g per 100 g: water, and carbohydrate by difference with fibre in it. The first and third rows
  // were read in a public copy of the table; carbohydrate of the second and fourth is from memory. 0.02 for its rounding.
  it.each([
    ['strawberries', 89.97, 9.13],
    ['sweetcorn', 76.05, 18.7],
    ['bean-soup', 78.63, 11.16],
    ['puffed-candy', 4.85, 91.56],
  ])('%s leaves as much carbohydrate as the food table prints', (id, water, carbohydrate) => {
    const { water: wet, protein, fat, ash } = product(id);
    expect(wet.value).toBe(water);
    const left = 1 - [wet, protein, fat, ash].reduce((sum, part) => sum + inBase(part, 'fraction'), 0);
    expect(Math.abs(100 * left - carbohydrate)).toBeLessThanOrEqual(0.02);
  });
});

describe('saved documents of past versions', () => {
  it('still open and are written as they were read', () => {
    const text = readFileSync(DOCUMENT, 'utf8');
    const result = parsePlan(text);
    expect(result.ok && serialisePlan(result.value)).toBe(text);
  });
});
