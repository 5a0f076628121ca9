import type { Candidates } from './candidates.ts';
import { isOutclassed, withOption } from './option-frontier.ts';
import type { Candidate, EarlyLimit, FitOption, OptionOutcome, Unfit } from './option-types.ts';

/** Options that share their weeks, worked out together. */
export interface Family {
  readonly members: readonly Candidate[];
  /** The cheapest of them [money]. */
  readonly capital: number;
  /** The best guess among them [money/year]. */
  readonly estimate: number;
}

/** How a search stands. Plain data: nothing in it is ever changed. */
export interface OptionSearch {
  /** Options of the space. */
  readonly all: number;
  /** Families by what they cost, cheap bands first; within a band the most promising first. What is begun is taken out. */
  readonly bands: readonly (readonly Family[])[];
  /** Band whose turn it is. */
  readonly turn: number;
  /** The best that has been found: no other is both cheaper and better; cheapest first. */
  readonly frontier: readonly FitOption[];
  /** Everything that was worked out and keeps to the limits, in the order it came. */
  readonly fit: readonly FitOption[];
  /** Options ruled out without running a week, by the first limit they break. */
  readonly ruledOut: Readonly<Record<EarlyLimit, number>>;
  /** Options worked out that break a limit or cannot run. */
  readonly unfit: Readonly<Record<Unfit, number>>;
  /** Options not worked out because even at their very best something found is no dearer and brings more. */
  readonly outclassed: number;
  /** Options handed out and not yet back. */
  readonly begun: number;
}

/** Bands of cost that take turns, so that cheap and dear answers come early. */
const BANDS = 12;

function familiesOf(candidates: readonly Candidate[]): Family[] {
  const members = new Map<string, Candidate[]>();
  for (const candidate of candidates) {
    const family = members.get(candidate.family);
    if (family) family.push(candidate);
    else members.set(candidate.family, [candidate]);
  }
  return [...members.values()].map((family) => ({
    members: family,
    capital: Math.min(...family.map((member) => member.capital)),
    estimate: Math.max(...family.map((member) => member.estimate)),
  }));
}

function inBands(families: readonly Family[]): Family[][] {
  const byCost = families.toSorted((a, b) => a.capital - b.capital);
  const size = Math.max(1, Math.ceil(byCost.length / BANDS));
  const count = Math.ceil(byCost.length / size);
  return Array.from({ length: count }, (_, k) =>
    byCost.slice(k * size, (k + 1) * size).sort((a, b) => b.estimate - a.estimate),
  );
}

/** A search that is about to begin. */
export function startSearch({ candidates, all, ruledOut }: Candidates): OptionSearch {
  return {
    all,
    bands: inBands(familiesOf(candidates)),
    turn: 0,
    frontier: [],
    fit: [],
    ruledOut,
    unfit: { budget: 0, supplyCurrent: 0, circuits: 0, floorSpace: 0, workingCapital: 0, cover: 0, cannotRun: 0 },
    outclassed: 0,
    begun: 0,
  };
}

/** What is to be worked out next, and the search without it. */
export interface NextFamily {
  readonly members: readonly Candidate[];
  readonly search: OptionSearch;
}

/** Takes the first family of the band whose turn it is; null when no band has any. */
function takeFirst(search: OptionSearch): { readonly family: Family; readonly search: OptionSearch } | null {
  const { bands, turn } = search;
  for (let step = 0; step < bands.length; step += 1) {
    const at = (turn + step) % bands.length;
    const [family, ...rest] = bands[at] ?? [];
    if (family) return { family, search: { ...search, bands: bands.with(at, rest), turn: (at + 1) % bands.length } };
  }
  return null;
}

/**
 * The family to work out next: one of each band of cost in turn, in each band the most promising first. Members that can no longer be
 * on the frontier are counted and left out. Null when nothing is left to begin.
 */
export function nextFamily(
  search: OptionSearch,
): NextFamily | { readonly members: null; readonly search: OptionSearch } {
  let now = search;
  for (;;) {
    const taken = takeFirst(now);
    if (!taken) return { members: null, search: now };
    const { family } = taken;
    const members = family.members.filter(({ capital, ceiling }) => !isOutclassed(now.frontier, capital, ceiling));
    const outclassed = now.outclassed + family.members.length - members.length;
    now = { ...taken.search, outclassed, begun: now.begun + members.length };
    if (members.length > 0) return { members, search: now };
  }
}

function withOutcome(search: OptionSearch, outcome: OptionOutcome): OptionSearch {
  const begun = search.begun - 1;
  if (outcome.kind === 'unfit') {
    const { reason } = outcome;
    return { ...search, begun, unfit: { ...search.unfit, [reason]: search.unfit[reason] + 1 } };
  }
  return { ...search, begun, fit: [...search.fit, outcome], frontier: withOption(search.frontier, outcome) };
}

/** The search with the answers for a family. */
export function withOutcomes(search: OptionSearch, outcomes: readonly OptionOutcome[]): OptionSearch {
  return outcomes.reduce(withOutcome, search);
}

/** How many options have been worked out. */
export function workedOut({ fit, unfit }: OptionSearch): number {
  return fit.length + Object.values(unfit).reduce((sum, count) => sum + count, 0);
}

/** What has not been looked at. */
export interface OpenOptions {
  /** Not begun, or begun and not back. */
  readonly count: number;
  /** No option not yet begun can bring more than this [money/year]; null when none is left. */
  readonly ceiling: number | null;
  /** The best of them looks like bringing this [money/year]; a guess. */
  readonly estimate: number | null;
}

/** What is left of a search: nothing, when its frontier is proven. */
export function openOptions(search: OptionSearch): OpenOptions {
  const left = search.bands.flat().flatMap((family) => family.members);
  const open = left.filter(({ capital, ceiling }) => !isOutclassed(search.frontier, capital, ceiling));
  const most = (pick: (candidate: Candidate) => number) =>
    open.length > 0 ? open.reduce((best, one) => Math.max(best, pick(one)), Number.NEGATIVE_INFINITY) : null;
  return {
    count: open.length + search.begun,
    ceiling: most((one) => one.ceiling),
    estimate: most((one) => one.estimate),
  };
}
