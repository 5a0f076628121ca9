import { applyCommand } from '../../plan/commands/apply-command.ts';
import type { Command } from '../../plan/commands/command.ts';
import { copyIdentity } from '../../plan/commands/fresh-id.ts';
import { withFreshEntry, withoutEntry } from '../../plan/fresh-entry.ts';
import { CATALOGUES, type CatalogueName } from '../../plan/mentions.ts';
import { pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { type Gesture, performState, presentState, type SheetHistory } from '../sheet-history.ts';
import type { MisreadField } from '../sheet-state.ts';
import type { BlockList } from './field-block.ts';

interface RawEntry {
  readonly id?: string;
  readonly name?: string;
}

/** One thing done to a list of the plan, as a step of the history. */
export type EntryGesture = (sheet: SheetHistory) => Gesture;

function entriesOf(plan: Plan, list: BlockList): readonly RawEntry[] {
  return valueAtPlace(plan, list.place) as readonly RawEntry[];
}

function catalogueName(list: BlockList): CatalogueName | undefined {
  return CATALOGUES.find((name) => list.place === name || list.place === `crew.${name}`);
}

/** Entries without ids are told apart by position, so texts that wait in their cells cannot be kept when those change. */
function misreadAfter(misread: readonly MisreadField[], list: BlockList): readonly MisreadField[] {
  const isNumbered = new RegExp(`^${list.place.replace(/[.@]/g, '\\$&')}\\.\\d`);
  return misread.filter((entry) => !isNumbered.test(entry.place));
}

function change(list: BlockList, command: (plan: Plan) => Command, label: string, said: string): EntryGesture {
  return (sheet) => {
    const before = presentState(sheet);
    const outcome = applyCommand(before.plan, command(before.plan));
    if (!outcome.ok) {
      const [first] = outcome.error;
      return { sheet, said: first ? `${first.problem} ${first.remedy}` : 'That could not be done.', done: false };
    }
    const misread = misreadAfter(before.misread, list);
    return performState(sheet, { ...before, plan: outcome.value, misread }, label, said);
  };
}

function setEntries(list: BlockList, next: (entries: readonly RawEntry[]) => readonly RawEntry[]) {
  return (plan: Plan): Command => {
    const path = pathOfPlace(plan, list.place) ?? list.place;
    return { kind: 'setValues', changes: [{ path, value: next(entriesOf(plan, list)) }] };
  };
}

/** The item, or the part of the plan, that a list belongs to. */
function ownerOf(plan: Plan, list: BlockList): Readonly<Record<string, unknown>> {
  const owner = list.place.split('.').slice(0, -1).join('.');
  return (owner === '' ? plan : valueAtPlace(plan, owner)) as Readonly<Record<string, unknown>>;
}

/** A new entry with the usual values at the end of the list. */
export function addEntry(list: BlockList): EntryGesture {
  const { noun, at, section } = list;
  const said = `A new ${noun} with the usual values. Change what differs.`;
  const command = (plan: Plan) =>
    setEntries(list, (entries) => {
      const held = entries as readonly Readonly<Record<string, unknown>>[];
      return withFreshEntry(at, section, held, ownerOf(plan, list)) as readonly RawEntry[];
    })(plan);
  return change(list, command, `add ${noun}`, said);
}

/** A copy of an entry right after it. */
export function duplicateEntry(list: BlockList, position: number): EntryGesture {
  const command = setEntries(list, (entries) => {
    const original = entries[position];
    if (!original) return entries;
    const named = entries as readonly { readonly id: string; readonly name: string }[];
    const { id, name } = original;
    const copy =
      id !== undefined && name !== undefined ? { ...original, ...copyIdentity(named, { id, name }) } : original;
    return entries.toSpliced(position + 1, 0, copy);
  });
  return change(list, command, `copy ${list.noun}`, `A copy of the ${list.noun} stands beside it.`);
}

/** An entry taken out of its list, unless something uses it. */
export function removeEntry(list: BlockList, position: number): EntryGesture {
  const { noun } = list;
  const catalogue = catalogueName(list);
  const said = `The ${noun} is gone. Undo brings it back.`;
  const remove = (plan: Plan): Command => {
    const id = entriesOf(plan, list)[position]?.id;
    if (catalogue && id !== undefined) return { kind: 'removeItem', list: catalogue, id };
    return setEntries(list, (entries) => withoutEntry(list.at, entries, position))(plan);
  };
  return (sheet) => {
    const isLast = catalogue !== undefined && entriesOf(presentState(sheet).plan, list).length === 1;
    if (!isLast) return change(list, remove, `remove ${noun}`, said)(sheet);
    return {
      sheet,
      said: `The plan needs at least one ${noun}. Add another before you take this one out.`,
      done: false,
    };
  };
}
