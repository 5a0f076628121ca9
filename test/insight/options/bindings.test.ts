import { describe, expect, it } from 'vitest';
import { bindings } from '../../../lib/insight/options/bindings.ts';
import { optionNeeds } from '../../../lib/insight/options/option-needs.ts';
import { optionPlan } from '../../../lib/insight/options/option-plan.ts';
import type { OptionChoice, OptionLimits } from '../../../lib/insight/options/option-types.ts';
import { fakeSimulation } from '../../model/fake-plant.ts';
import { contextOf, NO_LIMITS, TINY_SPACE, tinyPlan } from './tiny-search.ts';

const context = contextOf(tinyPlan(), fakeSimulation());

const TWO: OptionChoice = {
  chambers: [{ chamber: 'mid', count: 2 }],
  pumpArrangement: 'shared',
  groupSize: 2,
  pump: 'good',
  hose: 'wide',
  pattern: 'days',
  startPractice: 'isolate',
  roughingPump: null,
  sparePump: 'none',
  freezers: 0,
};

const needs = optionNeeds(optionPlan(context.plan, 'two', TWO));

function bound(limits: Partial<OptionLimits>, demand: number | null = 0.5, most = 3) {
  return bindings(context, { ...TINY_SPACE, mostChambers: most }, { ...NO_LIMITS, ...limits }, TWO, demand);
}

describe('what keeps an option from growing', () => {
  it('is what one chamber more would break', () => {
    expect(bound({ budget: needs.capital + 1 })).toEqual(['budget']);
    expect(bound({ floorSpace: needs.floorSpace, circuits: needs.circuits })).toEqual(['circuits', 'floorSpace']);
    expect(bound({ supplyCurrent: needs.supplyCurrent })).toEqual(['supplyCurrent']);
  });

  it('is nothing where one more would do', () => {
    expect(bound({ budget: 10 * needs.capital })).toEqual([]);
  });

  it('is the number of chambers allowed, beside whatever else is in the way', () => {
    expect(bound({}, 0.5, 2)).toEqual(['mostChambers']);
    expect(bound({ budget: needs.capital }, 0.5, 2)).toEqual(['budget', 'mostChambers']);
  });

  it('is the market where the week takes all of it', () => {
    expect(bound({}, 0.99)).toEqual(['market']);
    expect(bound({}, null)).toEqual([]);
  });
});
