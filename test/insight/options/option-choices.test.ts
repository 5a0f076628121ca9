import { describe, expect, it } from 'vitest';
import { countChoices, optionChoices, spaceSlices } from '../../../lib/insight/options/option-choices.ts';
import type { OptionSpace } from '../../../lib/insight/options/option-types.ts';
import { TINY_SPACE } from './tiny-search.ts';

const TWO_TYPES: OptionSpace = {
  ...TINY_SPACE,
  chambers: [
    { chamber: 'mid', least: 1, most: 4 },
    { chamber: 'large', least: 0, most: 2 },
  ],
  mostChambers: 5,
};

function counts(space: OptionSpace): string[] {
  const mixes = [...optionChoices(space)].map(({ chambers }) => chambers.map((e) => `${e.count} ${e.chamber}`).join());
  return [...new Set(mixes)];
}

describe('the options of a space', () => {
  it('hold every mixture of chambers within the ranges and the number in all', () => {
    // 1–4 mid with 0–2 large, no more than 5: 4 × 3 less (4 + 2).
    expect(counts(TWO_TYPES)).toHaveLength(11);
    expect(counts(TWO_TYPES)).not.toContain('4 mid,2 large');
    expect(counts(TWO_TYPES)).toContain('3 mid,2 large');
  });

  it('tie three chambers to pumps in three ways, two in two and one in one', () => {
    const ways = (count: number) => {
      const space = { ...TINY_SPACE, chambers: [{ chamber: 'mid', least: count, most: count }] };
      return new Set([...optionChoices(space)].map((one) => `${one.pumpArrangement} ${one.groupSize}`)).size;
    };
    expect([1, 2, 3].map(ways)).toEqual([1, 2, 3]);
  });

  it('are as many as the product of what can be combined', () => {
    // (1 + 2 + 3) ways to tie, 2 pumps, 2 patterns, 2 ways with spares.
    expect(countChoices(TINY_SPACE, 1000)).toBe(6 * 2 * 2 * 2);
    expect(countChoices(TINY_SPACE, 10)).toBe(10);
  });

  it('are all different', () => {
    const all = [
      ...optionChoices({ ...TWO_TYPES, practices: ['isolate', 'allOpen', 'roughing'], roughingPumps: ['small'] }),
    ];
    expect(new Set(all.map((choice) => JSON.stringify(choice))).size).toBe(all.length);
  });

  it('name a way of starting once where no chamber has a neighbour', () => {
    const space: OptionSpace = { ...TINY_SPACE, arrangements: ['own'], practices: ['isolate', 'allOpen'] };
    expect(new Set([...optionChoices(space)].map((one) => one.startPractice))).toEqual(new Set(['isolate']));
  });

  it('leave the roughing pump out where there is none to take', () => {
    expect(countChoices({ ...TINY_SPACE, practices: ['roughing'] }, 10)).toBe(0);
  });

  it('are made one at a time, however large the space', () => {
    const endless = {
      ...TWO_TYPES,
      chambers: TWO_TYPES.chambers.map((range) => ({ ...range, most: 1e6 })),
      mostChambers: 1e6,
    };
    const some = optionChoices(endless);
    expect(Array.from({ length: 3 }, () => some.next().done)).toEqual([false, false, false]);
  });

  it('fall into slices that together hold each once, in its place', () => {
    const all = [...optionChoices(TWO_TYPES)];
    const slices = spaceSlices({ ...TWO_TYPES, chambers: TWO_TYPES.chambers });
    const joined = slices.flatMap(({ space, firstPlace }) =>
      [...optionChoices(space)].map((choice, k) => [firstPlace + k, choice] as const),
    );
    expect(joined).toEqual(all.map((choice, place) => [place, choice]));
    expect(slices).toHaveLength(11);
  });
});
