import type { FitOption } from './option-types.ts';

/** Doing nothing costs nothing and brings nothing: what does no better is not worth showing. */
const NOTHING = { money: 0, yearlyCash: 0 } as const;

interface Worth {
  readonly money: number;
  readonly yearlyCash: number;
}

/** True when one thing is at least as cheap and brings at least as much as another, and is better in one of the two. */
function beats(one: Worth, other: Worth): boolean {
  if (one.money > other.money || one.yearlyCash < other.yearlyCash) return false;
  return one.money < other.money || one.yearlyCash > other.yearlyCash;
}

function isSame(one: Worth, other: Worth): boolean {
  return one.money === other.money && one.yearlyCash === other.yearlyCash;
}

/**
 * The options of which no other is both cheaper and better, cheapest first, with one more taken in. Of equals the one that comes
 * first in its space stands, so that the frontier does not hang on the order in which options are worked out.
 */
export function withOption(frontier: readonly FitOption[], option: FitOption): readonly FitOption[] {
  const { figures } = option;
  if (beats(NOTHING, figures) || isSame(NOTHING, figures)) return frontier;
  const stands = (other: FitOption) =>
    beats(other.figures, figures) || (isSame(other.figures, figures) && other.place < option.place);
  if (frontier.some(stands)) return frontier;
  const kept = frontier.filter((other) => !beats(figures, other.figures) && !isSame(figures, other.figures));
  return [...kept, option].sort((a, b) => a.figures.money - b.figures.money);
}

/**
 * True when an option that costs at least `money` and brings at most `ceiling` can no longer be on the frontier: something there is
 * no dearer and brings at least as much, or it brings nothing at all.
 */
export function isOutclassed(frontier: readonly FitOption[], money: number, ceiling: number): boolean {
  if (ceiling <= 0 && money >= 0) return true;
  return frontier.some(({ figures }) => figures.money <= money && figures.yearlyCash > ceiling);
}
