import { defaultValues } from '../inputs/default-values.ts';
import type { Section } from '../inputs/register.ts';
import { freshId } from './commands/fresh-id.ts';

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
  'financing.loans.#': { noun: 'loan', name: 'New loan', beside: {} },
};

const PLAIN: EntryKind = { noun: 'line', name: null, beside: {} };

function kindAt(at: string): EntryKind {
  return KINDS[at] ?? PLAIN;
}

/** What one entry of a list is called: "shift", "loan". @param at its place, such as `crew.patterns.#.shifts.#` */
export function entryNoun(at: string): string {
  return kindAt(at).noun;
}

/** A new entry of a list with the usual values, with a name and id of its own where its kind has them. */
export function freshEntry(at: string, section: Section | null, taken: readonly unknown[]): Fields {
  const { name, beside } = kindAt(at);
  const values = { ...(section === null ? {} : defaultValues(section)), ...beside };
  if (name === null) return values;
  return { ...values, id: freshId(taken as readonly { readonly id: string }[], name), name };
}
