import { describe, expect, it } from 'vitest';
import { chosenScenarios } from '../../lib/headless/chosen-scenarios.ts';
import { findingLines } from '../../lib/headless/finding-lines.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { smallPlan } from '../model/edited-plan.ts';

function chosen(plan: Plan, wanted: string | null): readonly string[] {
  const scenarios = chosenScenarios(plan, wanted);
  return scenarios.ok ? scenarios.value.map(({ id }) => id) : findingLines(scenarios.error);
}

describe('chosenScenarios', () => {
  it('are all when none is asked for, else the one of that id or name', () => {
    expect(chosen(smallPlan(), null)).toEqual(['today', 'two']);
    expect(chosen(smallPlan(), 'two')).toEqual(['two']);
    expect(chosen(smallPlan(), 'Two on one pump')).toEqual(['two']);
  });

  it('prefer an id to a name, and are all of one name', () => {
    const named = smallPlan((document) => {
      document.scenarios[0].name = 'two';
      document.scenarios.push({ ...document.scenarios[0], id: 'three', name: 'Alike' });
      document.scenarios.push({ ...document.scenarios[0], id: 'four', name: 'Alike' });
    });
    expect(chosen(named, 'two')).toEqual(['two']);
    expect(chosen(named, 'Alike')).toEqual(['three', 'four']);
  });

  it('are named when the one asked for is not there', () => {
    expect(chosen(smallPlan(), 'Seven')).toEqual([
      '--scenario (Seven): The plan has no scenario "Seven". Name one of "Today", "Two on one pump".',
    ]);
  });

  it('are listed a dozen at most', () => {
    const many = smallPlan((document) => {
      for (let i = 0; i < 20; i += 1) document.scenarios.push({ ...document.scenarios[0], id: `copy-${i}` });
    });
    expect(chosen(many, 'Seven')[0]).toMatch(/ and 10 more\.$/);
  });
});
