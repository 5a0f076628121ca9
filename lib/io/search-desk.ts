import { type Candidates, joinCandidates } from '../insight/options/candidates.ts';
import { countChoices, type SpaceSlice, spaceSlices } from '../insight/options/option-choices.ts';
import {
  nextFamily,
  type OpenOptions,
  type OptionSearch,
  openOptions,
  startSearch,
  withOutcomes,
  workedOut,
} from '../insight/options/option-search.ts';
import type { Candidate, OptionLimits, OptionOutcome, OptionSpace } from '../insight/options/option-types.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { Board, Job, JobReport } from './job-board.ts';

/** A search as it is sent to an engine. */
export interface SearchRequest {
  /** Counts the searches of a page, so that an engine knows when a new one begins. */
  readonly serial: number;
  readonly plan: Plan;
  /** Scenario from which everything is taken that the search does not choose. */
  readonly baseId: string;
  readonly space: OptionSpace;
  readonly limits: OptionLimits;
}

/** What a search asks of an engine; across threads every answer is a promise. */
export interface SearchEngine {
  readonly list: (request: SearchRequest, slice: SpaceSlice) => Promise<Candidates | null>;
  readonly workOut: (request: SearchRequest, members: readonly Candidate[]) => Promise<OptionOutcome[]>;
}

export type SearchStatus =
  | 'idle'
  /** The space is gone through and held against the limits that need no week. */
  | 'listing'
  | 'running'
  /** Nothing is left to look at: what was found is the best there is. */
  | 'done'
  /** Stopped by the owner; what was found stays. */
  | 'stopped'
  /** Today's shop, against which everything is judged, cannot run. */
  | 'noToday'
  /** An engine broke down. */
  | 'failed';

/** How a search stands. */
export interface SearchState {
  readonly status: SearchStatus;
  /** What was asked for last; null before the first search. */
  readonly request: SearchRequest | null;
  /** What has been found; null until the space has been gone through. */
  readonly search: OptionSearch | null;
  /** Share of the space that has been gone through, 0–1. */
  readonly listed: number;
  /** Options worked out so far. */
  readonly worked: number;
  /** What has not been looked at. */
  readonly open: OpenOptions;
}

const NOTHING_OPEN: OpenOptions = { count: 0, ceiling: null, estimate: null };

/** Larger spaces take hours; who asks for one has not yet said what matters. */
export const MOST_WAYS = 20_000;

/** Options of a space, counted no further than one more than may be searched. */
export function countWays(space: OptionSpace): number {
  return countChoices(space, MOST_WAYS + 1);
}

type Asked = Omit<SearchRequest, 'serial'>;

/** Looks for options on a board of engines, one search at a time; the latest wins. */
export class SearchDesk {
  readonly #board: Board<SearchEngine>;
  readonly #atOnce: number;
  readonly #listeners = new Set<() => void>();
  #serial = 0;
  /** What is out with the engines, by key. */
  #out: ReadonlyMap<string, Job<SearchEngine>> = new Map();
  /** What slices of the space have given, as long as not all have. */
  #lists: readonly Candidates[] = [];
  #state: SearchState = { status: 'idle', request: null, search: null, listed: 0, worked: 0, open: NOTHING_OPEN };

  /** @param atOnce families out at a time, ≥ 1 */
  constructor(makeBoard: (report: JobReport) => Board<SearchEngine>, atOnce: number) {
    this.#board = makeBoard({
      onDone: (key, value) => this.#take(key, value),
      onFailed: (key) => {
        if (this.#out.has(key)) this.#end('failed');
      },
    });
    this.#atOnce = atOnce;
  }

  readonly state = (): SearchState => this.#state;

  /** @returns how to stop listening */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Begins a search; one that runs gives way to it. */
  start(asked: Asked): void {
    this.#serial += 1;
    const request = { ...asked, serial: this.#serial };
    const slices = spaceSlices(request.space);
    this.#lists = [];
    this.#out = new Map(
      slices.map((slice, k) => {
        const key = `${request.serial} list ${k}`;
        return [key, { key, slow: false, start: (engine) => engine.list(request, slice) }];
      }),
    );
    this.#board.want([...this.#out.values()]);
    this.#set({ status: 'listing', request, search: null, listed: 0, worked: 0, open: NOTHING_OPEN });
    if (slices.length === 0) this.#goOn(startSearch(joinCandidates([])));
  }

  /** Stops the search; what has been found stays. */
  stop(): void {
    if (this.#state.status === 'listing' || this.#state.status === 'running') this.#end('stopped');
  }

  #take(key: string, value: unknown): void {
    if (!this.#out.has(key)) return;
    this.#out = new Map([...this.#out].filter(([other]) => other !== key));
    if (this.#state.status === 'listing') this.#takeList(value as Candidates | null);
    else if (this.#state.search) this.#goOn(withOutcomes(this.#state.search, value as OptionOutcome[]));
  }

  #takeList(candidates: Candidates | null): void {
    if (!candidates) {
      this.#end('noToday');
      return;
    }
    this.#lists = [...this.#lists, candidates];
    const parts = this.#lists.length + this.#out.size;
    if (this.#out.size === 0) this.#goOn(startSearch(joinCandidates(this.#lists)));
    else this.#set({ listed: this.#lists.length / parts });
  }

  /** Hands out what the engines have room for, and ends the search when nothing is out and nothing is left. */
  #goOn(search: OptionSearch): void {
    let now = search;
    while (this.#out.size < this.#atOnce) {
      const next = nextFamily(now);
      now = next.search;
      if (!next.members) break;
      this.#handOut(next.members);
    }
    const isDone = this.#out.size === 0;
    this.#board.want([...this.#out.values()]);
    const status = isDone ? 'done' : 'running';
    this.#set({ status, search: now, worked: workedOut(now), open: openOptions(now) });
  }

  #handOut(members: readonly Candidate[]): void {
    const { request } = this.#state;
    if (!request) return;
    const key = `${request.serial} ${members.map((member) => member.place).join(' ')}`;
    const job: Job<SearchEngine> = { key, slow: false, start: (engine) => engine.workOut(request, members) };
    this.#out = new Map(this.#out).set(key, job);
  }

  #end(status: SearchStatus): void {
    this.#out = new Map();
    this.#board.want([]);
    this.#set({ status });
  }

  #set(change: Partial<SearchState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}
