import { describe, expect, it } from 'vitest';
import { floorNeed } from '../../lib/model/floor-need.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { planWith } from './edited-plan.ts';

const PLAN = planWith((document) => {
  document.chambers[0].floorSpace = { value: 2, unit: 'm²', origin: 'guess' };
  document.chambers[1].floorSpace = { value: 5, unit: 'm²', origin: 'guess' };
  document.pumps[0].floorSpace = { value: 0.25, unit: 'm²', origin: 'guess' };
  document.pumps[1].floorSpace = { value: 1, unit: 'm²', origin: 'guess' };
  document.freezer.floorSpace = { value: 1.5, unit: 'm²', origin: 'guess' };
});

function like(plan: Plan, change: Partial<Scenario>): Scenario {
  return { ...(plan.scenarios[0] as Scenario), ...change };
}

describe('floor that machines take up', () => {
  const mixed = [
    { chamber: 'mid', count: 2 },
    { chamber: 'large', count: 1 },
  ];

  it('is chambers, pumps and freezers by number', () => {
    expect(floorNeed(PLAN, like(PLAN, { chambers: mixed, pumpArrangement: 'own', pump: 'good', freezers: 2 }))).toBe(
      2 * 2 + 5 + 3 * 1 + 2 * 1.5,
    );
  });

  it('counts a shared pump once, a roughing pump too and a spare on the shelf not at all', () => {
    const shared = like(PLAN, {
      chambers: mixed,
      pumpArrangement: 'shared',
      pump: 'good',
      freezers: 1,
      startPractice: 'roughing',
      roughingPump: 'small',
      sparePump: 'onShelf',
    });
    expect(floorNeed(PLAN, shared)).toBe(2 * 2 + 5 + 1 + 0.25 + 1.5);
  });

  it('counts no freezers where the plan has none', () => {
    const plan = { ...PLAN, freezer: null };
    expect(floorNeed(plan, like(plan, { chambers: [{ chamber: 'mid', count: 1 }], freezers: 3 }))).toBe(2.25);
  });
});
