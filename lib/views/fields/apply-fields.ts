import { applyCommand } from '../../plan/commands/apply-command.ts';
import type { ValueChange } from '../../plan/commands/command.ts';
import { type Place, pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { Finding } from '../../result.ts';
import { countOf } from '../format-number.ts';
import { withUnit } from '../format-quantity.ts';
import type { MisreadField, SheetState } from '../sheet-state.ts';
import type { FieldLook } from './field-look.ts';

/** A text for one field. */
export interface FieldEntry {
  readonly place: Place;
  readonly look: FieldLook;
  /** Whose field it is, for what is said. */
  readonly owner: string;
  readonly text: string;
}

/** What a gesture over fields comes to. */
export interface AppliedFields {
  readonly state: SheetState;
  readonly taken: number;
  readonly refused: number;
  /** What the gesture did, in one sentence. */
  readonly said: string;
}

interface ReadEntry extends FieldEntry {
  readonly value: unknown;
  readonly understood: string;
}

function isSame(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function changeFor(plan: Plan, entry: ReadEntry): ValueChange[] {
  const path = pathOfPlace(plan, entry.place);
  if (path === null || isSame(valueAtPlace(plan, entry.place), entry.value)) return [];
  return [{ path, value: entry.value }];
}

interface Taken {
  readonly plan: Plan;
  readonly refused: readonly MisreadField[];
}

function refusal({ place, text }: FieldEntry, findings: readonly Finding[]): MisreadField {
  const [first] = findings;
  return {
    place,
    text,
    problem: first?.problem ?? 'That cannot be.',
    remedy: first?.remedy ?? 'Choose something else.',
  };
}

function takeOneByOne(plan: Plan, entries: readonly ReadEntry[]): Taken {
  let current = plan;
  const refused: MisreadField[] = [];
  for (const entry of entries) {
    const outcome = applyCommand(current, { kind: 'setValues', changes: changeFor(current, entry) });
    if (outcome.ok) current = outcome.value;
    else refused.push(refusal(entry, outcome.error));
  }
  return { plan: current, refused };
}

/** All at once, since values may only be possible together; one after the other when that fails. */
function take(plan: Plan, entries: readonly ReadEntry[]): Taken {
  const changes = entries.flatMap((entry) => changeFor(plan, entry));
  if (changes.length === 0) return { plan, refused: [] };
  const outcome = applyCommand(plan, { kind: 'setValues', changes });
  return outcome.ok ? { plan: outcome.value, refused: [] } : takeOneByOne(plan, entries);
}

/** "Small pump, rated speed: 7 cfm", and how the text was understood when the cell shows it in another way. */
function saidOfOne(plan: Plan, entry: ReadEntry): string {
  const { look, owner, understood, text } = entry;
  const shown = look.text(valueAtPlace(plan, entry.place));
  const typed = text.trim();
  const isPlain = understood === '' || shown === typed || [understood, withUnit(shown, look.unit)].includes(typed);
  const how = isPlain ? '' : ` (understood from "${typed}": ${understood})`;
  const label = owner === '' ? look.label : `${owner}, ${look.label.toLowerCase()}`;
  return `${label}: ${withUnit(shown, look.unit)}${how}.`;
}

function saidOf(plan: Plan, read: readonly ReadEntry[], refused: readonly MisreadField[], all: number): string {
  const [fault] = refused;
  const [only] = read;
  if (all === 1 && fault) return `${fault.problem} ${fault.remedy}`;
  if (all === 1 && only) return saidOfOne(plan, only);
  const taken = `${countOf(all - refused.length, 'cell')} changed`;
  return refused.length === 0 ? `${taken}.` : `${taken}, ${refused.length} not understood: they are marked.`;
}

/**
 * Takes up texts for fields, all in one gesture. A text that is not understood, or that the plan cannot hold, stays in its
 * cell with what is wrong and what mends it; the others are taken up all the same.
 */
export function applyFields(state: SheetState, entries: readonly FieldEntry[]): AppliedFields {
  const read: ReadEntry[] = [];
  const unread: MisreadField[] = [];
  for (const entry of entries) {
    const reading = entry.look.read(entry.text, valueAtPlace(state.plan, entry.place));
    if (reading.ok) read.push({ ...entry, ...reading.value });
    else unread.push({ place: entry.place, text: entry.text, ...reading.error });
  }
  const { plan, refused: impossible } = take(state.plan, read);
  const refused = [...unread, ...impossible];
  return {
    state: { ...state, plan, misread: misreadAfter(state, entries, refused) },
    taken: entries.length - refused.length,
    refused: refused.length,
    said: saidOf(plan, read, refused, entries.length),
  };
}

function misreadAfter(
  state: SheetState,
  touched: readonly { readonly place: Place }[],
  refused: readonly MisreadField[],
): readonly MisreadField[] {
  const places = new Set(touched.map((entry) => entry.place));
  const left = state.misread.filter((entry) => !places.has(entry.place));
  return left.length === state.misread.length && refused.length === 0 ? state.misread : [...left, ...refused];
}

/** Empties fields: a text that was not understood is dropped, anything else goes back to its usual value. */
export function emptyFields(state: SheetState, fields: readonly Omit<FieldEntry, 'text'>[]): AppliedFields {
  const faulty = fields.filter((field) => state.misread.some((entry) => entry.place === field.place));
  const usual = fields
    .filter((field) => !faulty.includes(field) && field.look.usual !== undefined)
    .map((field) => ({ ...field, text: '', value: field.look.usual, understood: '' }));
  const { plan, refused } = take(state.plan, usual);
  const kept = fields.length - faulty.length - usual.length + refused.length;
  const dropped = faulty.length === 0 ? '' : `${countOf(faulty.length, 'cell')} as before. `;
  const back = usual.length - refused.length;
  const set = `${dropped}${back === 0 ? '' : `${countOf(back, 'cell')} set back to what is usual. `}`;
  return {
    state: { ...state, plan, misread: misreadAfter(state, faulty, []) },
    taken: fields.length - kept,
    refused: 0,
    said: `${set}${kept === 0 ? '' : `${countOf(kept, 'cell')} cannot be empty.`}`.trim(),
  };
}
