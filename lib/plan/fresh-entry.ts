import { defaultValues } from '../inputs/default-values.ts';
import { inBase } from '../inputs/quantity.ts';
import type { Section } from '../inputs/register.ts';
import { fromBase } from '../units/convert.ts';
import { freshId } from './commands/fresh-id.ts';
import type { PumpType } from './plan-types.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A kind of entry that users add to a list of the plan. */
interface EntryKind {
  /** What one is called in a message. */
  readonly noun: string;
  /** Name of a new one; null for entries that have neither name nor id. */
  readonly name: string | null;
  /** What it holds beside its rows of the register. */
  readonly beside: Fields;
}

/** Entries that come and go together, or that follow from the ones before. */
interface EntryHabit {
  /** The first entries of an empty list. @param owner what the list is part of */
  readonly first: (owner: Fields) => readonly Fields[];
  readonly next: (last: Fields) => Fields;
  /** Fewer than this make no sense, so that the last ones go together. */
  readonly least: number;
}

/** The lowest and the highest pressure of a new speed curve against the pump's lowest, and the highest there is [Pa]. */
const CURVE_FOOT = 4;
const CURVE_HEAD = 1000;
const ATMOSPHERE = 101325;

/** A curve like that of the rated speed and the lowest pressure: it falls to nothing towards the latter. */
const SPEED_CURVE: EntryHabit = {
  first: (owner) => {
    const pump = owner as unknown as PumpType;
    const [speed, ultimate] = [inBase(pump.speed, 'pumpingSpeed'), inBase(pump.ultimate, 'pressure')];
    const [foot, head] = [ultimate * CURVE_FOOT, Math.min(ATMOSPHERE, Math.max(CURVE_HEAD, ultimate * 10))];
    const at = (pressure: number) => ({
      pressure: round(pressure),
      speed: round(fromBase(speed * (1 - ultimate / pressure), 'pumpingSpeed', 'm³/h')),
    });
    return [at(foot), at(head)];
  },
  next: (last) => ({ ...last, pressure: round(Math.min(ATMOSPHERE, 2 * Number(last.pressure))) }),
  least: 2,
};

const HABITS: Readonly<Record<string, EntryHabit>> = { 'pumps.#.speedTable.#': SPEED_CURVE };

/** Three figures are enough for a value that is there to be typed over. */
function round(value: number): number {
  return Number(value.toPrecision(3));
}

const WORKDAYS = [0, 1, 2, 3, 4];

/** By the place of the entries in the plan, positions as #. */
const KINDS: Readonly<Record<string, EntryKind>> = {
  'products.#': { noun: 'product', name: 'New product', beside: {} },
  'chambers.#': { noun: 'chamber type', name: 'New chamber', beside: {} },
  'pumps.#': { noun: 'pump type', name: 'New pump', beside: { speedTable: [] } },
  'hoses.#': { noun: 'hose', name: 'New hose', beside: {} },
  'crew.patterns.#': { noun: 'shift pattern', name: 'New pattern', beside: { shifts: [] } },
  'crew.patterns.#.shifts.#': { noun: 'shift', name: null, beside: { weekdays: WORKDAYS } },
  'pumps.#.speedTable.#': { noun: 'point', name: null, beside: {} },
  'site.priceBands.#': { noun: 'price band', name: 'Dear hours', beside: { weekdays: WORKDAYS } },
  // A second share of every purchase would often make more than the whole; a fixed sum of nothing never does.
  'financing.loans.#': { noun: 'loan', name: 'New loan', beside: { basis: 'amount' } },
};

const PLAIN: EntryKind = { noun: 'line', name: null, beside: {} };

function kindAt(at: string): EntryKind {
  return KINDS[at] ?? PLAIN;
}

/** What one entry of a list is called: "shift", "loan". @param at its place, such as `crew.patterns.#.shifts.#` */
export function entryNoun(at: string): string {
  return kindAt(at).noun;
}

function freshEntry(at: string, section: Section | null, taken: readonly Fields[]): Fields {
  const { name, beside } = kindAt(at);
  const values = { ...(section === null ? {} : defaultValues(section)), ...beside };
  if (name === null) return values;
  const named = taken as readonly { readonly id: string }[];
  return { ...values, id: freshId(named, name), name };
}

/**
 * The entries of a list with a new one at the end: with the usual values, or as follows from the ones before, and with a
 * name and id of its own where its kind has them. An empty list may get several at once, such as the ends of a curve.
 * @param at place of the entries, such as `pumps.#.speedTable.#`
 * @param section of the register that describes them; null when it has no rows for them
 * @param owner what the list is part of
 */
export function withFreshEntry(
  at: string,
  section: Section | null,
  entries: readonly Fields[],
  owner: Fields,
): readonly Fields[] {
  const habit = HABITS[at];
  const last = entries.at(-1);
  if (!habit) return [...entries, freshEntry(at, section, entries)];
  return last === undefined ? habit.first(owner) : [...entries, habit.next(last)];
}

/** The entries of a list without one; all of them go when what is left would make no sense. */
export function withoutEntry<Entry>(at: string, entries: readonly Entry[], position: number): readonly Entry[] {
  const left = entries.toSpliced(position, 1);
  return left.length < (HABITS[at]?.least ?? 0) ? [] : left;
}
