import { fieldsOf, type Section } from '../../inputs/register.ts';
import { type SubList, subListsAt } from '../../plan/field-at-path.ts';
import { entryNoun } from '../../plan/fresh-entry.ts';
import { type Place, valueAtPlace } from '../../plan/place.ts';
import { shownAs } from '../entry-columns.ts';
import type { ShownAs } from '../format-quantity.ts';
import type { SheetState } from '../sheet-state.ts';
import { type FieldCell, type FieldGrid, type GridOwner, ownersAcross, ownersDown } from './field-grid.ts';
import type { FieldLook } from './field-look.ts';
import { lookOf } from './plain-looks.ts';
import { currencyLook, nameLook, weekdaysLook, wordsLook } from './text-looks.ts';

/** A list of the plan that a block shows, and whose entries can be added and taken away. */
export interface BlockList {
  readonly place: Place;
  /** Where its entries live, positions as #. */
  readonly at: string;
  /** Null for entries that the register has no rows for, such as shift patterns. */
  readonly section: Section | null;
  readonly noun: string;
  readonly entriesAre: 'rows' | 'columns';
}

/** A part of the plan as one grid of fields with a heading. */
export interface FieldBlock {
  readonly id: Place;
  readonly title: string;
  /** What it means that the list is empty. */
  readonly whenEmpty: string;
  readonly list: BlockList | null;
  readonly owners: readonly GridOwner[];
  readonly grid: FieldGrid;
}

/** A list with more fields than this reads better with its entries as columns. */
const WIDEST = 7;

/** Titles of lists inside a part; any other list is called by the group of its fields. */
const TITLES: Readonly<Record<string, string>> = {
  'pumps.#.speedTable.#': 'Speed curve',
  'crew.patterns.#.shifts.#': 'Shifts',
  'site.priceBands.#': 'Hours with another price of electricity',
  'financing.loans.#': 'Loans',
};

/** What it means that a list is empty. */
const WHEN_EMPTY: Readonly<Record<string, string>> = {
  'pumps.#.speedTable.#': 'No curve: the rated speed and the lowest pressure tell all.',
  'crew.patterns.#.shifts.#': 'Nobody is ever there.',
  'site.priceBands.#': 'One price round the clock.',
  'financing.loans.#': 'No loan: all is paid with your own money.',
};

const NAME = nameLook({ key: 'name', label: 'Name', meaning: 'What you call it.', group: '' });

/** Words of the shop that stand beside the register's rows of the site. */
const SITE_LOOKS: readonly FieldLook[] = [
  nameLook({ key: 'shopName', label: 'Shop', meaning: 'What the business is called.', group: 'The shop' }),
  wordsLook({ key: 'place', label: 'Place', meaning: 'Where it is; only for you to read.', group: 'The shop' }),
  currencyLook({
    key: 'currency',
    label: 'Currency',
    meaning: 'What all amounts are in, as a three-letter code. Amounts are not converted when it is changed.',
    group: 'The shop',
  }),
];

function registerLooks(section: Section | null, shown: ShownAs): readonly FieldLook[] {
  return section === null ? [] : fieldsOf(section).map((field) => lookOf(field, shown));
}

interface RawEntry {
  readonly id?: string;
  readonly name?: string;
  readonly weekdays?: readonly number[];
}

/** The fields of a list's entries: name and weekdays where they have them, then the rows of the register. */
function entryLooks(sample: RawEntry | undefined, section: Section | null, shown: ShownAs): readonly FieldLook[] {
  const looks = registerLooks(section, shown);
  return [
    ...(sample?.name === undefined ? [] : [NAME]),
    ...(sample?.weekdays === undefined ? [] : [weekdaysLook(looks[0]?.group ?? '')]),
    ...looks,
  ];
}

function ownersIn(entries: readonly RawEntry[], place: Place, noun: string): readonly GridOwner[] {
  return entries.map(({ id, name }, position) => ({
    place: id === undefined ? `${place}.${position}` : `${place}.@${id}`,
    name: name ?? `${noun} ${position + 1}`,
  }));
}

interface ListSpec {
  readonly place: Place;
  readonly at: string;
  readonly section: Section | null;
  readonly title: string;
  readonly isWide: boolean;
}

function listBlock(state: SheetState, { place, at, section, title, isWide }: ListSpec): FieldBlock {
  const entries = valueAtPlace(state.plan, place) as readonly RawEntry[];
  const noun = entryNoun(at);
  const owners = ownersIn(entries, place, noun);
  const looks = entryLooks(entries[0], section, shownAs(state.plan));
  const across = isWide || looks.length > WIDEST;
  const list: BlockList = { place, at, section, noun, entriesAre: across ? 'columns' : 'rows' };
  const grid = across ? ownersAcross(state, owners, looks) : ownersDown(state, owners, looks);
  return { id: place, title, whenEmpty: WHEN_EMPTY[at] ?? 'None.', list, owners, grid };
}

/** A catalogue of the plan, its items as columns. */
export function catalogueBlock(state: SheetState, key: string, section: Section | null, title: string): FieldBlock {
  return listBlock(state, { place: key, at: `${key}.#`, section, title, isWide: section !== null });
}

/** A part of which the plan has one, such as the site. */
export function singleBlock(
  state: SheetState,
  section: 'site' | 'crew' | 'freezer' | 'financing',
  title: string,
): FieldBlock {
  const owners: readonly GridOwner[] = [{ place: section, name: '' }];
  const looks = [...(section === 'site' ? SITE_LOOKS : []), ...registerLooks(section, shownAs(state.plan))];
  return { id: section, title, whenEmpty: '', list: null, owners, grid: ownersAcross(state, owners, looks) };
}

function titleOf({ at, section }: SubList, owner: GridOwner): string {
  const title = TITLES[at] ?? fieldsOf(section)[0]?.group ?? entryNoun(at);
  return owner.name === '' ? title : `${title}: ${owner.name}`;
}

/** The lists inside each owner of a block, such as every pump's speed curve. @param at the owners' place, positions as # */
export function innerBlocks(state: SheetState, owners: readonly GridOwner[], at: string): readonly FieldBlock[] {
  return owners.flatMap((owner) =>
    subListsAt(at).map((list) =>
      listBlock(state, {
        place: `${owner.place}.${list.key}`,
        at: list.at,
        section: list.section,
        title: titleOf(list, owner),
        isWide: false,
      }),
    ),
  );
}

/** The cell of a place among some blocks; null when none of them shows it. */
export function cellOfPlace(blocks: readonly FieldBlock[], place: Place): FieldCell | null {
  for (const block of blocks) {
    for (const row of block.grid.cells) {
      const cell = row.find((candidate) => candidate.place === place);
      if (cell) return cell;
    }
  }
  return null;
}
