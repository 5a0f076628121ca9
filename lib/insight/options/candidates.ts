import type { Candidate, EarlyLimit } from './option-types.ts';

/** What is left of a space once everything is ruled out that no week needs to be run for. */
export interface Candidates {
  readonly candidates: readonly Candidate[];
  /** Options of the space. */
  readonly all: number;
  /** How many break which limit, each counted under the first it breaks. */
  readonly ruledOut: Readonly<Record<EarlyLimit, number>>;
}

/** What was found in slices of a space, put together as if the space had been gone through in one go. */
export function joinCandidates(parts: readonly Candidates[]): Candidates {
  const sum = (limit: EarlyLimit) => parts.reduce((total, { ruledOut }) => total + ruledOut[limit], 0);
  return {
    candidates: parts.flatMap(({ candidates }) => candidates).sort((a, b) => a.place - b.place),
    all: parts.reduce((total, { all }) => total + all, 0),
    ruledOut: {
      budget: sum('budget'),
      supplyCurrent: sum('supplyCurrent'),
      circuits: sum('circuits'),
      floorSpace: sum('floorSpace'),
    },
  };
}
