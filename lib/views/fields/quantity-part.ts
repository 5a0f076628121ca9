import { quantityProblems } from '../../inputs/field-check.ts';
import type { QuantityField } from '../../inputs/input-field.ts';
import { ORIGINS, type Quantity } from '../../inputs/quantity.ts';
import { applyCommand } from '../../plan/commands/apply-command.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import { type Place, pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { readFieldCell } from '../../plan/read-cell.ts';
import { fail, type Result, succeed } from '../../result.ts';
import { shownAs } from '../entry-columns.ts';
import type { ShownAs } from '../format-quantity.ts';
import type { TextFault } from '../mix-text.ts';
import { type Gesture, performState, presentState, type SheetHistory } from '../sheet-history.ts';
import { entryUnit } from './entry-unit.ts';
import { inHeldUnit } from './quantity-look.ts';

/** What stands beside the value of a quantity. */
export type QuantityPart = 'origin' | 'low' | 'high' | 'source' | 'note';

const LABELS: Readonly<Record<QuantityPart, string>> = {
  origin: 'where it came from',
  low: 'low',
  high: 'high',
  source: 'source',
  note: 'note',
};

/** Room in the plan for source and note. */
const LONGEST = { source: 300, note: 2000 } as const;

function boundIn(field: QuantityField, held: Quantity, text: string, shown: ShownAs): Result<number | null, TextFault> {
  if (text.trim() === '') return succeed(null);
  const unit = entryUnit(field, shown.system);
  const read = readFieldCell(text, { field, path: field.id, shown: unit, currency: shown.currency });
  if (!read.ok) return fail({ problem: read.error.problem, remedy: read.error.remedy });
  return succeed(read.value === null ? null : inHeldUnit(field, read.value.value, read.value.unit, held));
}

function withBound(
  field: QuantityField,
  held: Quantity,
  side: 'low' | 'high',
  text: string,
  shown: ShownAs,
): Result<Quantity, TextFault> {
  const bound = boundIn(field, held, text, shown);
  if (!bound.ok) return bound;
  const { [side]: _, ...others } = held;
  const quantity = bound.value === null ? others : { ...held, [side]: bound.value };
  const [problem] = quantityProblems(field, quantity);
  return problem ? fail({ problem: problem.problem, remedy: problem.remedy }) : succeed(quantity);
}

function withWords(held: Quantity, part: 'source' | 'note', text: string): Result<Quantity, TextFault> {
  const { [part]: _, ...others } = held;
  if (text.trim() === '') return succeed(others);
  const most = LONGEST[part];
  if (text.length > most) return fail({ problem: 'The text is too long.', remedy: `Use ${most} letters at most.` });
  return succeed({ ...held, [part]: text.trim() });
}

/** The quantity with one of its parts replaced by what a text means; an empty text removes the part. */
export function withPart(
  field: QuantityField,
  held: Quantity,
  part: QuantityPart,
  text: string,
  shown: ShownAs,
): Result<Quantity, TextFault> {
  if (part === 'low' || part === 'high') return withBound(field, held, part, text, shown);
  if (part === 'source' || part === 'note') return withWords(held, part, text);
  const origin = ORIGINS.find((candidate) => candidate === text);
  return origin
    ? succeed({ ...held, origin })
    : fail({ problem: `"${text}" is no origin.`, remedy: `Choose ${ORIGINS.join(', ')}.` });
}

function heldAt(plan: Plan, place: Place): { field: QuantityField; held: Quantity; path: string } | null {
  const path = pathOfPlace(plan, place);
  const field = path === null ? undefined : fieldAtPath(path);
  const held = valueAtPlace(plan, place) as Quantity | null | undefined;
  return path !== null && field?.kind === 'quantity' && held ? { field, held, path } : null;
}

/** One part of a quantity replaced, as a step of the history. */
export function editPart(place: Place, part: QuantityPart, text: string): (sheet: SheetHistory) => Gesture {
  return (sheet) => {
    const before = presentState(sheet);
    const found = heldAt(before.plan, place);
    if (!found) return { sheet, said: 'There is no such field any more.', done: false };
    const next = withPart(found.field, found.held, part, text, shownAs(before.plan));
    if (!next.ok) return { sheet, said: `${next.error.problem} ${next.error.remedy}`, done: false };
    const changes = [{ path: found.path, value: next.value }];
    const outcome = applyCommand(before.plan, { kind: 'setValues', changes });
    if (!outcome.ok) return { sheet, said: outcome.error[0]?.problem ?? 'That cannot be.', done: false };
    const said = `${found.field.label}: ${LABELS[part]} ${text.trim() === '' ? 'removed' : 'kept'}.`;
    return performState(sheet, { ...before, plan: outcome.value }, `change ${LABELS[part]}`, said);
  };
}
