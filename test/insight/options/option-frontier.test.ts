import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOutclassed, withOption } from '../../../lib/insight/options/option-frontier.ts';
import type { FitOption, OptionFigures } from '../../../lib/insight/options/option-types.ts';

function option(place: number, money: number, yearlyCash: number): FitOption {
  return { kind: 'fit', place, choice: {} as FitOption['choice'], figures: { money, yearlyCash } as OptionFigures };
}

// Whole numbers in a small range, so that equals and ties come up often.
const anyOptions = fc
  .array(fc.tuple(fc.integer({ min: -3, max: 12 }), fc.integer({ min: -3, max: 12 })), { maxLength: 40 })
  .map((worths) => worths.map(([money, cash], place) => option(place, money, cash)));

function frontierOf(options: readonly FitOption[]): readonly FitOption[] {
  return options.reduce<readonly FitOption[]>(withOption, []);
}

const NOTHING = option(-1, 0, 0);

function isBetter({ figures: a }: FitOption, { figures: b }: FitOption): boolean {
  const noWorse = a.money <= b.money && a.yearlyCash >= b.yearlyCash;
  return noWorse && (a.money < b.money || a.yearlyCash > b.yearlyCash);
}

describe('the frontier', () => {
  it('holds nothing that another option, or doing nothing, is better than', () => {
    fc.assert(
      fc.property(anyOptions, (options) => {
        const all = [...options, NOTHING];
        for (const one of frontierOf(options)) expect(all.some((other) => isBetter(other, one))).toBe(false);
      }),
    );
  });

  it('is complete: whatever is not on it is worse than something, or the same', () => {
    fc.assert(
      fc.property(anyOptions, (options) => {
        const found = [...frontierOf(options), NOTHING];
        for (const one of options) {
          const { money, yearlyCash } = one.figures;
          const isThere = found.some(({ figures }) => figures.money === money && figures.yearlyCash === yearlyCash);
          expect(isThere || found.some((other) => isBetter(other, one))).toBe(true);
        }
      }),
    );
  });

  it('is the same in whatever order options come in', () => {
    fc.assert(
      fc.property(anyOptions, fc.array(fc.nat(), { minLength: 40, maxLength: 40 }), (options, keys) => {
        const shuffled = options.toSorted((a, b) => (keys[a.place] ?? 0) - (keys[b.place] ?? 0));
        expect(frontierOf(shuffled)).toEqual(frontierOf(options));
      }),
    );
  });

  it('goes from cheap to dear, and each step brings more', () => {
    fc.assert(
      fc.property(anyOptions, (options) => {
        const found = frontierOf(options);
        found.slice(1).forEach((one, k) => {
          expect(one.figures.money).toBeGreaterThan(found[k]?.figures.money ?? Number.NaN);
          expect(one.figures.yearlyCash).toBeGreaterThan(found[k]?.figures.yearlyCash ?? Number.NaN);
        });
      }),
    );
  });

  it('never counts one out that would have been on it', () => {
    fc.assert(
      fc.property(
        anyOptions,
        fc.integer({ min: -3, max: 12 }),
        fc.integer({ min: -3, max: 12 }),
        fc.nat(3),
        fc.nat(3),
        (options, money, cash, dearer, less) => {
          const found = frontierOf(options);
          // It costs at least `money` and brings at most `cash`; in truth a little more and a little less.
          if (!isOutclassed(found, money, cash)) return;
          expect(withOption(found, option(99, money + dearer, cash - less))).toBe(found);
        },
      ),
    );
  });
});
