import { describe, expect, it } from 'vitest';
import { startSearch, withOutcomes } from '../../../lib/insight/options/option-search.ts';
import type { FitOption, OptionChoice, OptionSpace } from '../../../lib/insight/options/option-types.ts';
import { applyCommand } from '../../../lib/plan/commands/apply-command.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { LIMITS } from '../../../lib/plan/limits.ts';
import { frontierView, orderedRows } from '../../../lib/views/search/frontier-view.ts';
import {
  fallenOut,
  proofWords,
  safetyWords,
  searchProgress,
  statusWords,
} from '../../../lib/views/search/search-words.ts';
import { isOvertaken, sendOption } from '../../../lib/views/search/send-option.ts';

const US = { system: 'us', currency: 'USD' } as const;

const SPACE = { practices: ['isolate'], hoses: ['wide'], freezers: { least: 1, most: 1 } } as unknown as OptionSpace;

function choice(count: number): OptionChoice {
  return {
    chambers: [
      { chamber: 'mid', count },
      { chamber: 'large', count: 1 },
    ],
    pumpArrangement: 'groups',
    groupSize: 2,
    pump: 'good',
    hose: 'wide',
    pattern: 'two-shifts',
    startPractice: 'isolate',
    roughingPump: null,
    sparePump: 'onShelf',
    freezers: 1,
  };
}

function found(place: number, money: number, yearlyCash: number, payback: number | null, worth: number): FitOption {
  const needs = { capital: money, supplyCurrent: 90, circuits: 5, floorSpace: 12 };
  return {
    kind: 'fit',
    place,
    choice: choice(place + 1),
    figures: {
      capital: money - 1000,
      workingCapital: 1000,
      money,
      yearlyCash,
      payback,
      netPresentValue: worth,
      lowestCover: place === 0 ? null : 2.345,
      dryOut: 50,
      needs,
      binds: place === 0 ? [] : ['budget', 'floorSpace'],
      busiest: { resource: 'crew', use: 0.81 },
    },
  };
}

const OPTIONS = [
  found(0, 10_000, 5000, 24, 9000),
  found(1, 30_000, 9000, 40, 4000),
  found(2, 35_000, 8000, null, -500),
];

const NONE = { candidates: [], all: 9, ruledOut: { budget: 2, supplyCurrent: 0, circuits: 0, floorSpace: 3 } };
const SEARCH = withOutcomes({ ...startSearch(NONE), begun: 4 }, [
  ...OPTIONS,
  { kind: 'unfit', place: 3, reason: 'cover' },
]);

const VIEW = frontierView(DEMO_PLAN, SPACE, SEARCH, US);

describe('what a search has found', () => {
  it('is told by the option that is worth most', () => {
    expect(VIEW.finding).toBe(
      'Worth most: 1 × Mid-size chamber and 1 × Large chamber, Good pump with gas ballast for every 2, a spare on the shelf – $10,000 brings $5,000 a year',
    );
    expect(VIEW.worthMost).toBe(0);
    const nothing = frontierView(DEMO_PLAN, SPACE, startSearch(NONE), US);
    expect(nothing.finding).toContain('Nothing within these limits');
  });

  it('stands as a line and as dots off it', () => {
    expect(VIEW.line.map(({ place }) => place)).toEqual([0, 1]);
    expect(VIEW.others.map(({ place }) => place)).toEqual([2]);
    expect(VIEW.series.rows.map(([onLine]) => onLine)).toEqual(['yes', 'yes', 'no']);
    expect(VIEW.moneyTicks.at(-1)).toBeGreaterThanOrEqual(35_000);
  });

  it('has a row for each way on the line', () => {
    expect(VIEW.rows[0]).toMatchObject({ lowestCover: 'no loans', binds: 'nothing you set', payback: '24' });
    expect(VIEW.rows[1]).toMatchObject({
      lowestCover: '2.35',
      binds: 'budget, floor space',
      rest: 'Two shifts and Saturday',
    });
    expect(VIEW.table.rows).toHaveLength(2);
    for (const row of VIEW.table.rows) expect(row).toHaveLength(VIEW.table.head.length);
    for (const row of VIEW.series.rows) expect(row).toHaveLength(VIEW.series.head.length);
  });

  it('can be put in another order', () => {
    expect(orderedRows(VIEW.rows, 'cash').map(({ place }) => place)).toEqual([1, 0]);
    expect(orderedRows(VIEW.rows, 'payback').map(({ place }) => place)).toEqual([0, 1]);
    expect(orderedRows(VIEW.rows, 'worth').map(({ place }) => place)).toEqual([0, 1]);
  });
});

describe('what was left out without running its weeks', () => {
  it('is said with the reason why nothing is lost by it', () => {
    expect(safetyWords({ ...SEARCH, outclassed: 2 })).toBe(
      '7 ways left out without running the weeks, which is safe: what 5 ways would need, known from your lists, is beyond a limit above; for 2 even a ceiling that no week can pass – every batch as quick as heat can make it, people always there, no current to pay – is below something no dearer that was worked out.',
    );
    expect(safetyWords(SEARCH)).not.toContain('ceiling');
    const { ruledOut } = startSearch({
      ...NONE,
      ruledOut: { budget: 0, supplyCurrent: 0, circuits: 0, floorSpace: 0 },
    });
    expect(safetyWords({ ...SEARCH, ruledOut })).toBe('');
  });
});

describe('how a search stands', () => {
  const standing = {
    status: 'running',
    search: SEARCH,
    listed: 1,
    worked: 4,
    open: { count: 4, ceiling: 61_234, estimate: 40_987 },
  } as const;

  it('says what has fallen out and why, the most frequent reason first', () => {
    expect(fallenOut(SEARCH)).toEqual([
      '3 do not fit on the floor',
      '2 cost more than the budget',
      '1 fall below the lender’s line',
    ]);
  });

  it('says how far it is and whether it is proven', () => {
    expect(statusWords(standing)).toBe('4 of 9 ways worked out so far, the promising ones first.');
    expect(searchProgress(standing)).toBe(0.5);
    expect(proofWords(standing, US)).toContain('4 ways not looked at');
    expect(proofWords(standing, US)).toContain('none can bring more than $61,200 a year');
    const done = { ...standing, status: 'done', open: { count: 0, ceiling: null, estimate: null } } as const;
    expect(proofWords(done, US)).toContain('Nothing is left to look at');
    expect(searchProgress(done)).toBe(1);
    expect(searchProgress({ ...standing, status: 'listing', listed: 0.25 })).toBe(0.25);
  });
});

describe('sending an option to the sheet', () => {
  const gesture = sendOption(DEMO_PLAN, 'three-shared', choice(2));

  it('makes a scenario of it in one step, with all else as in the one the search began from', () => {
    if (!gesture) throw new Error('no gesture');
    const applied = applyCommand(DEMO_PLAN, gesture.command);
    if (!applied.ok) throw new Error(JSON.stringify(applied.error));
    const base = DEMO_PLAN.scenarios.find(({ id }) => id === 'three-shared');
    const sent = applied.value.scenarios.at(-1);
    expect(sent).toMatchObject({ ...choice(2), id: gesture.goTo, mix: base?.mix, purchaseMonth: base?.purchaseMonth });
    expect(sent?.name.length).toBeLessThanOrEqual(LIMITS.name);
    const again = sendOption(applied.value, 'three-shared', choice(2));
    expect(again?.goTo).not.toBe(gesture.goTo);
    expect(again && applyCommand(applied.value, again.command).ok).toBe(true);
  });

  it('cannot be done without that scenario', () => {
    expect(sendOption(DEMO_PLAN, 'gone', choice(2))).toBeNull();
  });

  it('does not itself make the search out of date', () => {
    if (!gesture) throw new Error('no gesture');
    const applied = applyCommand(DEMO_PLAN, gesture.command);
    expect(applied.ok && isOvertaken(applied.value, DEMO_PLAN, 'three-shared')).toBe(false);
    const dearer = { ...DEMO_PLAN, chambers: DEMO_PLAN.chambers.slice(1) };
    expect(isOvertaken(dearer, DEMO_PLAN, 'three-shared')).toBe(true);
  });
});
