import { describe, expect, it } from 'vitest';
import { inBase } from '../../lib/inputs/quantity.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { mendOf } from '../../lib/views/mend.ts';

function scenarioOf(id: string): Scenario {
  const found = DEMO_PLAN.scenarios.find((scenario) => scenario.id === id);
  if (!found) throw new Error(id);
  return found;
}

function priceOf(list: 'pumps' | 'hoses', id: string): number {
  const found = DEMO_PLAN[list].find((item) => item.id === id);
  return found ? inBase(found.price, 'money') : Number.NaN;
}

describe('mendOf', () => {
  const today = scenarioOf('today');
  const six = scenarioOf('six-shared');

  it('takes the cheapest pump that is a quarter faster, once for every pump', () => {
    expect(mendOf(DEMO_PLAN, today, 'pump')).toEqual({
      words: expect.stringMatching(/^2 × /),
      once: 2 * priceOf('pumps', 'good'),
      weekly: null,
    });
  });

  it('says when the list has no faster one, and prices a second', () => {
    const plan: Plan = { ...DEMO_PLAN, pumps: DEMO_PLAN.pumps.filter((pump) => pump.id === 'good') };
    const mend = mendOf(plan, six, 'pump');
    expect(mend.words).toContain('No faster pump');
    expect(mend.once).toBe(priceOf('pumps', 'good'));
  });

  it('takes wider hoses for every chamber', () => {
    expect(mendOf(DEMO_PLAN, today, 'hose').once).toBe(2 * priceOf('hoses', 'wide'));
    const plan: Plan = { ...DEMO_PLAN, hoses: DEMO_PLAN.hoses.filter((hose) => hose.id === 'wide') };
    expect(mendOf(plan, six, 'hose').once).toBeNull();
  });

  it('prices a chamber with its installation', () => {
    const [mid] = DEMO_PLAN.chambers;
    if (!mid) throw new Error('no chamber');
    expect(mendOf(DEMO_PLAN, six, 'chambers').once).toBe(
      inBase(mid.price, 'money') + inBase(mid.installation, 'money'),
    );
  });

  it('counts longer shifts by the week, and nothing where only hours worked are paid', () => {
    const paid: Plan = { ...DEMO_PLAN, crew: { ...DEMO_PLAN.crew, guaranteed: true } };
    const { weekly, once, words } = mendOf(paid, today, 'crew');
    const hours = Number(/(\d+) h/.exec(words)?.[1]);
    const wage = inBase(DEMO_PLAN.crew.wage, 'moneyPerTime') * (1 + inBase(DEMO_PLAN.crew.onCost, 'fraction'));
    expect(once).toBeNull();
    expect((weekly ?? 0) / wage).toBeCloseTo(hours, 0);
    const flexible: Plan = { ...DEMO_PLAN, crew: { ...DEMO_PLAN.crew, guaranteed: false } };
    expect(mendOf(flexible, today, 'crew').weekly).toBeNull();
  });

  it('gives no price for what no list holds', () => {
    expect(mendOf(DEMO_PLAN, six, 'demand').once).toBeNull();
    expect(mendOf(DEMO_PLAN, six, 'power').once).toBeNull();
  });
});
