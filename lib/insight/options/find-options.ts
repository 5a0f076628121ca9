import type { Simulate } from '../../model/scenario-week.ts';
import { listCandidates } from './list-candidates.ts';
import type { OptionContext } from './option-context.ts';
import { nextFamily, type OptionSearch, startSearch, withOutcomes } from './option-search.ts';
import type { OptionLimits, OptionSpace } from './option-types.ts';
import { workOutOption } from './work-out-option.ts';

/**
 * The whole search on one thread, to its end: its frontier is then proven. The page does the same in parts, on several threads; the
 * frontier does not hang on that.
 * @param simulate best one that remembers
 */
export function findOptions(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  simulate: Simulate,
): OptionSearch {
  let search = startSearch(listCandidates(context, space, limits, simulate));
  for (;;) {
    const next = nextFamily(search);
    if (!next.members) return next.search;
    const outcomes = next.members.map((member) => workOutOption(context, space, limits, member, simulate));
    search = withOutcomes(next.search, outcomes);
  }
}
