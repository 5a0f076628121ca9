import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { scenarioKey } from '../../lib/views/scenario-key.ts';
import { scenarioOf } from './sheet-of-demo.ts';

function keyOf(plan: Plan, id: string): string {
  return scenarioKey(plan, scenarioOf(plan, id));
}

function withScenario(id: string, change: Partial<Scenario>): Plan {
  const scenarios = DEMO_PLAN.scenarios.map((scenario) => (scenario.id === id ? { ...scenario, ...change } : scenario));
  return { ...DEMO_PLAN, scenarios };
}

describe('scenarioKey', () => {
  const before = keyOf(DEMO_PLAN, 'six-shared');

  it('changes with the scenario, and not with another one', () => {
    expect(keyOf(withScenario('six-shared', { purchaseMonth: 9 }), 'six-shared')).not.toBe(before);
    expect(keyOf(withScenario('four-shared', { purchaseMonth: 9 }), 'six-shared')).toBe(before);
  });

  it('changes with today, against which all are judged', () => {
    expect(keyOf(withScenario('today', { pattern: 'two-shifts' }), 'six-shared')).not.toBe(before);
  });

  it('changes with anything in the catalogue', () => {
    const [first, ...rest] = DEMO_PLAN.pumps;
    if (!first) throw new Error('the demo has no pump');
    const faster = { ...first, speed: { ...first.speed, value: first.speed.value * 2 } };
    expect(keyOf({ ...DEMO_PLAN, pumps: [faster, ...rest] }, 'six-shared')).not.toBe(before);
  });

  it('does not hang on names, notes, units shown or the order of the other rows', () => {
    const [today, ...others] = withScenario('six-shared', {
      name: 'Half a dozen',
      note: 'see mail',
      notes: { pump: 'ask' },
    }).scenarios;
    const plan: Plan = {
      ...DEMO_PLAN,
      name: 'Other',
      site: { ...DEMO_PLAN.site, unitSystem: 'si', shopName: 'Other' },
      scenarios: today ? [today, ...others.reverse()] : [],
    };
    expect(keyOf(plan, 'six-shared')).toBe(before);
  });

  it('tells today from its copy, which has a return and today has none', () => {
    const today = scenarioOf(DEMO_PLAN, 'today');
    const plan = { ...DEMO_PLAN, scenarios: [...DEMO_PLAN.scenarios, { ...today, id: 'copy' }] };
    expect(keyOf(plan, 'copy')).not.toBe(keyOf(plan, 'today'));
  });
});
