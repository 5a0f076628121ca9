import { describe, expect, it } from 'vitest';
import { findOptions } from '../../../lib/insight/options/find-options.ts';
import { optionChoices } from '../../../lib/insight/options/option-choices.ts';
import { optionPlan } from '../../../lib/insight/options/option-plan.ts';
import { openOptions, workedOut } from '../../../lib/insight/options/option-search.ts';
import type { FitOption, OptionLimits } from '../../../lib/insight/options/option-types.ts';
import { workOutOption } from '../../../lib/insight/options/work-out-option.ts';
import { evaluateScenario } from '../../../lib/model/evaluate-scenario.ts';
import { bruteFrontier, everyOption } from './brute-force.ts';
import { contextOf, NO_LIMITS, quickMemory, TINY_SPACE, tinyPlan } from './tiny-search.ts';

const memory = quickMemory();
const { simulate } = memory;

const context = contextOf(tinyPlan(), simulate);
const all = everyOption(context, TINY_SPACE, simulate);
const dearest = Math.max(...all.map((one) => one.figures.money));
const mostFloor = Math.max(...all.map((one) => one.figures.needs.floorSpace));

const LIMITS: readonly (readonly [string, Partial<OptionLimits>])[] = [
  ['no limits', {}],
  ['a small budget', { budget: 0.4 * dearest }],
  ['a budget that the working capital breaks', { budget: Math.max(...all.map((one) => one.figures.capital)) }],
  ['a small supply', { supplyCurrent: 50 }],
  ['few circuits', { circuits: 4 }],
  ['little floor', { floorSpace: 0.8 * mostFloor }],
  ['a lender who asks for much', { dscrLine: 4 }],
  ['all at once', { budget: 0.7 * dearest, dscrLine: 2, supplyCurrent: 75, circuits: 5, floorSpace: mostFloor }],
];

describe('a search to the end', () => {
  it('is tried on a space that can run', () => {
    expect(all.length).toBeGreaterThan(40);
    expect(bruteFrontier(all, NO_LIMITS).length).toBeGreaterThan(2);
  });

  it.each(LIMITS)(
    'finds the frontier that comparing everything finds and accounts for every option, with %s',
    (_, change) => {
      const limits = { ...NO_LIMITS, ...change };
      const search = findOptions(context, TINY_SPACE, limits, simulate);
      expect(search.frontier).toEqual(
        bruteFrontier(all, limits).map((one) => ({ ...one, figures: { ...one.figures, binds: expect.anything() } })),
      );
      const before = Object.values(search.ruledOut).reduce((sum, count) => sum + count, 0);
      expect(before + search.outclassed + workedOut(search)).toBe(search.all);
      expect(openOptions(search)).toEqual({ count: 0, ceiling: null, estimate: null });
    },
  );

  it('keeps all that is said to fit within the limits', () => {
    const limits = { budget: 0.7 * dearest, dscrLine: 2, supplyCurrent: 75, circuits: 5, floorSpace: mostFloor };
    for (const { figures } of findOptions(context, TINY_SPACE, limits, simulate).fit) {
      expect(figures.money).toBeLessThanOrEqual(limits.budget);
      expect(figures.lowestCover ?? 99).toBeGreaterThanOrEqual(limits.dscrLine);
      expect(figures.needs.supplyCurrent).toBeLessThanOrEqual(limits.supplyCurrent);
      expect(figures.needs.circuits).toBeLessThanOrEqual(limits.circuits);
      expect(figures.needs.floorSpace).toBeLessThanOrEqual(limits.floorSpace);
    }
  });

  it('says the same of an option as the sheet does', () => {
    const [best] = bruteFrontier(all, NO_LIMITS).slice(-1) as [FitOption];
    const { plan, scenario } = optionPlan(context.plan, 'two', best.choice);
    const outcome = evaluateScenario(plan, scenario.id, { ok: true, value: context.week }, simulate);
    if (outcome.kind !== 'computed') throw new Error('refused');
    expect(best.figures.capital).toBe(outcome.result.capitalTotal);
    expect(best.figures.netPresentValue).toBe(outcome.result.finance.versusToday?.netPresentValue);
    const { payback } = outcome.result.finance.versusToday ?? {};
    expect(best.figures.payback).toBe(payback?.kind === 'crossed' ? payback.months : null);
  });

  it('runs a week once for options that differ in a spare pump alone', () => {
    const own = quickMemory();
    const fresh = contextOf(tinyPlan(), own.simulate);
    for (const choice of optionChoices({ ...TINY_SPACE, chambers: [{ chamber: 'mid', least: 2, most: 2 }] }))
      workOutOption(fresh, TINY_SPACE, NO_LIMITS, { choice, place: 0 }, own.simulate);
    // Two ways to tie, two pumps, two patterns, and today.
    expect(own.runs()).toBe(2 * 2 * 2 + 1);
  });
});
