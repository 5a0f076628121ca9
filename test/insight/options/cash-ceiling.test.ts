import { describe, expect, it } from 'vitest';
import { findOptions } from '../../../lib/insight/options/find-options.ts';
import { listCandidates } from '../../../lib/insight/options/list-candidates.ts';
import { optionChoices } from '../../../lib/insight/options/option-choices.ts';
import { withOption } from '../../../lib/insight/options/option-frontier.ts';
import { workedOut } from '../../../lib/insight/options/option-search.ts';
import type { FitOption, OptionSpace } from '../../../lib/insight/options/option-types.ts';
import { workOutOption } from '../../../lib/insight/options/work-out-option.ts';
import { contextOf, NO_LIMITS, quickMemory, TINY_SPACE, tinyPlan } from './tiny-search.ts';

const { simulate } = quickMemory();

const SPACE: OptionSpace = { ...TINY_SPACE, spares: ['none'], patterns: ['two-shifts'] };

describe('the ceiling on what an option brings', () => {
  it.each([
    ['as it is', tinyPlan()],
    [
      'a market that is soon full, with goods kept in store',
      tinyPlan((document) => {
        const [fruit] = document.products;
        fruit.weeklyDemand = { value: 5, unit: 'kg/week', origin: 'guess' };
        fruit.unsold = 'keep';
        fruit.mostKept = { value: 10, unit: 'kg', origin: 'guess' };
        fruit.seasonDec = 200;
      }),
    ],
    [
      'few hands, paid for whole shifts, and a horizon of 31 months',
      tinyPlan((document) => {
        document.crew.guaranteed = true;
        document.financing.horizon.value = 31;
        document.crew.patterns[1].shifts = [{ weekdays: [0, 3], start: 8, end: 12, people: 1 }];
      }),
    ],
  ])('is never below what it does bring: %s', (_, plan) => {
    const own = contextOf(plan, simulate);
    const { candidates } = listCandidates(own, SPACE, NO_LIMITS, simulate);
    let looked = 0;
    for (const candidate of candidates) {
      const outcome = workOutOption(own, SPACE, NO_LIMITS, candidate, simulate);
      if (outcome.kind !== 'fit') continue;
      looked += 1;
      expect(outcome.figures.yearlyCash).toBeLessThanOrEqual(candidate.ceiling);
      expect(outcome.figures.capital).toBe(candidate.capital);
    }
    expect(looked).toBeGreaterThan(8);
  });

  it('rules chambers out that a small market cannot feed, without running them', () => {
    const plan = tinyPlan((document) => {
      const [fruit] = document.products;
      fruit.weeklyDemand = { value: 2, unit: 'kg/week', origin: 'guess' };
      document.chambers[0].maintenance = { value: 6000, unit: 'money/year', origin: 'quoted' };
      document.crew.wage.value = 8;
    });
    const context = contextOf(plan, simulate);
    const search = findOptions(context, SPACE, NO_LIMITS, simulate);
    const all = [...optionChoices(SPACE)].map((choice, place) =>
      workOutOption(context, SPACE, NO_LIMITS, { choice, place }, simulate),
    );
    const unpruned = all
      .flatMap((one) => (one.kind === 'fit' ? [one] : []))
      .reduce<readonly FitOption[]>(withOption, []);
    expect(search.frontier).toEqual(unpruned);
    expect(search.outclassed).toBeGreaterThan(SPACE.mostChambers);
    expect(search.outclassed + workedOut(search)).toBe(search.all);
  });
});
