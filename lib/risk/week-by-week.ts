import type { Simulate } from '../model/scenario-week.ts';
import { fail } from '../result.ts';
import type { PlantMemory } from './plant-memory.ts';

/** What a search over many weeks has come to: its answer, or that it must be begun again, a week having been run meanwhile. */
export type WeekByWeek<Value> = { readonly isWhole: true; readonly value: Value } | { readonly isWhole: false };

/** Stands for a week that has not been run yet; whatever is made of it is thrown away. */
const NOT_YET = fail({ kind: 'cannotFollow', pump: '' } as const);

/**
 * Goes on with a search until it has run one more week: each time it is begun anew, and the weeks run before are remembered. An engine can so
 * leave a long search at any week for something more urgent.
 * @param memory that keeps every week of the search; a smaller one would never see its end
 * @param search what is looked for; the same weeks must always give the same answer
 */
export function weekByWeek<Value>(memory: PlantMemory, search: (simulate: Simulate) => Value): WeekByWeek<Value> {
  const before = memory.runs();
  let isWhole = true;
  const simulate: Simulate = (spec) => {
    if (memory.runs() === before || memory.knows(spec)) return memory.simulate(spec);
    isWhole = false;
    return NOT_YET;
  };
  const value = search(simulate);
  return isWhole ? { isWhole, value } : { isWhole };
}
