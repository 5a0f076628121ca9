import { describe, expect, it } from 'vitest';
import { countChoices } from '../../../lib/insight/options/option-choices.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import {
  formFor,
  limitUnit,
  readSearchForm,
  type SearchForm,
  startForm,
} from '../../../lib/views/search/search-form.ts';

const US = { system: 'us', currency: 'USD' } as const;
const SI = { system: 'si', currency: 'USD' } as const;
const START = startForm(DEMO_PLAN, 'three-shared', US);

function asked(change: Partial<SearchForm> = {}) {
  const read = readSearchForm({ ...START, ...change }, DEMO_PLAN, US);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

function faults(change: Partial<SearchForm>): string[] {
  const read = readSearchForm({ ...START, ...change }, DEMO_PLAN, US);
  return read.ok ? [] : Object.keys(read.error);
}

describe('the form of a search', () => {
  it('begins with what the plan has and knows', () => {
    const { space, limits, baseId } = asked();
    expect(baseId).toBe('three-shared');
    expect(space.chambers).toEqual([
      { chamber: 'mid', least: 2, most: 6 },
      { chamber: 'large', least: 0, most: 2 },
    ]);
    expect(space).toMatchObject({ mostChambers: 6, hoses: ['wide'], practices: ['isolate'], spares: ['none'] });
    expect(limits).toMatchObject({ budget: null, dscrLine: 1.25, supplyCurrent: 125, circuits: 8 });
    // 22 m² are 236.8 ft², shown as 237.
    expect(limits.floorSpace).toBeCloseTo(237 * 0.09290304, 9);
    expect(countChoices(space, 10_000)).toBeGreaterThan(100);
  });

  it('takes sums and units, and nothing for no limit', () => {
    const limits = {
      budget: '$50,000 + 2*5000',
      dscrLine: '',
      supplyCurrent: '100 A',
      circuits: ' ',
      floorSpace: '20 m²',
    };
    expect(asked({ limits }).limits).toEqual({
      budget: 60_000,
      dscrLine: null,
      supplyCurrent: 100,
      circuits: null,
      floorSpace: 20,
    });
  });

  it('takes cover as so many times the payments', () => {
    expect(asked({ limits: { ...START.limits, dscrLine: '1.4' } }).limits.dscrLine).toBe(1.4);
    expect(faults({ limits: { ...START.limits, dscrLine: '40' } })).toEqual(['limit dscrLine']);
  });

  it.each<[string, Partial<SearchForm>, string[]]>([
    ['a budget that cannot be read', { limits: { ...START.limits, budget: 'a lot' } }, ['limit budget']],
    ['a budget below nothing', { limits: { ...START.limits, budget: '-5' } }, ['limit budget']],
    ['half a chamber', { mostChambers: '2.5' }, ['mostChambers']],
    ['fewer chambers in all than asked for', { mostChambers: '1' }, ['mostChambers']],
    ['no chamber at all', { mostChambers: '0', chambers: {} }, ['mostChambers']],
    ['at most less than at least', { freezers: { least: '2', most: '1' } }, ['freezers']],
    ['no pump', { choices: { ...START.choices, pumps: [] } }, ['pumps']],
    [
      'a roughing pump that is not named',
      { choices: { ...START.choices, practices: ['roughing'], roughingPumps: [] } },
      ['roughingPumps'],
    ],
  ])('marks %s', (_, change, places) => {
    expect(faults(change)).toEqual(places);
  });

  it('follows a plan that has changed meanwhile', () => {
    const plan = { ...DEMO_PLAN, pumps: DEMO_PLAN.pumps.slice(0, 1), chambers: DEMO_PLAN.chambers.slice(0, 1) };
    const form = formFor(plan, { ...START, mostChambers: '9' }, US);
    expect(form.choices.pumps).toEqual(['small']);
    expect(Object.keys(form.chambers)).toEqual(['mid']);
    expect(form.mostChambers).toBe('9');
  });

  it('names its units', () => {
    expect(limitUnit('floorSpace', US)).toBe('ft²');
    expect(limitUnit('floorSpace', SI)).toBe('m²');
    expect(limitUnit('budget', SI)).toBe('USD');
  });
});
