import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withOption } from '../../lib/insight/options/option-frontier.ts';
import { openOptions, workedOut } from '../../lib/insight/options/option-search.ts';
import type { Candidate, FitOption, OptionOutcome, OptionSpace } from '../../lib/insight/options/option-types.ts';
import { JobBoard } from '../../lib/io/job-board.ts';
import { SearchDesk, type SearchEngine } from '../../lib/io/search-desk.ts';

/** A space of three mixtures of chambers, over which the made-up options are spread. */
const SPACE = {
  chambers: [{ chamber: 'mid', least: 1, most: 3 }],
  mostChambers: 3,
  arrangements: ['own'],
  pumps: [],
} as unknown as OptionSpace;

const ASKED = { plan: {}, baseId: '', space: SPACE, limits: {} } as unknown as Parameters<SearchDesk['start']>[0];

/** An option of a made-up space: what it is thought to be and what it turns out to be. */
interface Made {
  readonly capital: number;
  readonly tied: number;
  readonly cash: number;
  readonly room: number;
  readonly fits: boolean;
  readonly family: number;
}

const anyMade: fc.Arbitrary<Made[]> = fc.array(
  fc.record({
    capital: fc.integer({ min: 0, max: 30 }),
    tied: fc.integer({ min: 0, max: 3 }),
    cash: fc.integer({ min: -5, max: 30 }),
    // What the ceiling is above the truth: often nothing, so that pruning has its way.
    room: fc.constantFrom(0, 0, 1, 5, 20),
    fits: fc.constantFrom(true, true, true, false),
    family: fc.integer({ min: 0, max: 12 }),
  }),
  { maxLength: 40 },
);

function candidatesOf(made: readonly Made[]): Candidate[] {
  return made.map(({ capital, cash, room, family }, place) => ({
    choice: {} as Candidate['choice'],
    place,
    family: String(family),
    capital,
    ceiling: cash + room,
    estimate: cash * 2 - room,
  }));
}

function outcomeOf(made: readonly Made[], place: number): OptionOutcome {
  const one = made[place] as Made;
  if (!one.fits) return { kind: 'unfit', place, reason: 'cover' };
  const figures = { capital: one.capital, money: one.capital + one.tied, yearlyCash: one.cash };
  return { kind: 'fit', place, choice: {} as FitOption['choice'], figures: figures as FitOption['figures'] };
}

/** A desk on some engines that answer when they are asked to, in whatever order. */
function deskOn(made: readonly Made[] | null, engines: number) {
  const ends: (() => void)[] = [];
  const later = <Value>(value: Value) => new Promise<Value>((resolve) => ends.push(() => resolve(value)));
  const ruledOut = { budget: 0, supplyCurrent: 0, circuits: 0, floorSpace: 0 };
  const engine: SearchEngine = {
    list: (_, { space }) => {
      const part = (space.chambers[0]?.least ?? 0) % 3;
      const own = made && candidatesOf(made).filter(({ place }) => place % 3 === part);
      return later(own && { candidates: own, all: own.length, ruledOut });
    },
    workOut: (_, members) => later(members.map((member) => outcomeOf(made ?? [], member.place))),
  };
  const desk = new SearchDesk(
    (report) => new JobBoard(engines, () => ({ engine, stop: () => {} }), report),
    engines + 1,
  );
  /** Lets the engine answer that was asked at this place among those that wait. */
  const answer = async (which: number) => {
    ends.splice(which % Math.max(1, ends.length), 1)[0]?.();
    for (let tick = 0; tick < 8; tick += 1) await Promise.resolve();
  };
  return { desk, answer, waiting: () => ends.length };
}

describe('a search on several engines', () => {
  it('ends with the true frontier, however many engines there are and in whatever order they answer', async () => {
    await fc.assert(
      fc.asyncProperty(anyMade, fc.integer({ min: 1, max: 3 }), fc.array(fc.nat(9)), async (made, engines, order) => {
        const { desk, answer, waiting } = deskOn(made, engines);
        desk.start(ASKED);
        for (let k = 0; waiting() > 0; k += 1) await answer(order[k] ?? 0);
        const { status, search } = desk.state();
        const all = made.map((_, place) => outcomeOf(made, place)).flatMap((one) => (one.kind === 'fit' ? [one] : []));
        expect(status).toBe('done');
        expect(search?.frontier).toEqual(all.reduce<readonly FitOption[]>(withOption, []));
        expect(search && openOptions(search).count).toBe(0);
        expect(search && workedOut(search) + search.outclassed).toBe(made.length);
      }),
    );
  });

  it('counts what is not looked at when it is stopped, and keeps what was found', async () => {
    const made = [10, 20, 30].map((capital, k) => ({
      capital,
      tied: 0,
      cash: capital,
      room: 3,
      fits: true,
      family: k,
    }));
    const { desk, answer } = deskOn(made, 1);
    desk.start(ASKED);
    for (let k = 0; k < 3; k += 1) await answer(0);
    await answer(0);
    desk.stop();
    const { status, search } = desk.state();
    expect(status).toBe('stopped');
    expect(search?.frontier).toHaveLength(1);
    expect(search && openOptions(search).count).toBe(2);
    await answer(0);
    expect(desk.state().search).toBe(search);
  });

  it('tells how much of the space has been gone through', async () => {
    const { desk, answer } = deskOn([], 1);
    desk.start(ASKED);
    await answer(0);
    expect(desk.state()).toMatchObject({ status: 'listing', listed: 1 / 3 });
  });

  it('says so when today cannot run', async () => {
    const { desk, answer } = deskOn(null, 1);
    desk.start(ASKED);
    await answer(0);
    expect(desk.state().status).toBe('noToday');
  });

  it('forgets a search when a new one begins', async () => {
    const { desk, answer, waiting } = deskOn([{ capital: 1, tied: 0, cash: 1, room: 0, fits: true, family: 0 }], 1);
    desk.start(ASKED);
    desk.start(ASKED);
    expect(desk.state().request?.serial).toBe(2);
    while (waiting() > 0) await answer(0);
    expect(desk.state().search?.fit).toHaveLength(1);
  });

  it('says so when an engine breaks down', async () => {
    const engine: SearchEngine = {
      list: () => Promise.reject(new Error('broken')),
      workOut: () => Promise.resolve([]),
    };
    const desk = new SearchDesk((report) => new JobBoard(1, () => ({ engine, stop: () => {} }), report), 2);
    desk.start(ASKED);
    for (let tick = 0; tick < 8; tick += 1) await Promise.resolve();
    expect(desk.state().status).toBe('failed');
  });
});
