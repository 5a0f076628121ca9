import { inBase, type Quantity } from '../../../lib/inputs/quantity.ts';
import { recompute, type Term, type WorkContext, type Working } from '../../../lib/model/workings/working.ts';
import { fieldAtPath } from '../../../lib/plan/field-at-path.ts';
import { valueAt } from '../../../lib/plan/raw-value.ts';
import { SOURCES } from '../../../lib/sources.ts';
import { toBase } from '../../../lib/units/convert.ts';

/** How deep a tree is followed; a working that never ends would be a mistake of its own. */
const DEEPEST = 25;

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-12);
}

/** What the plan itself says at a path, read without the help of the code under test. */
function planValue({ plan }: WorkContext, path: string): number {
  const raw = valueAt(plan, path.split('.'));
  const field = fieldAtPath(path);
  if (!field || !('dimension' in field)) throw new Error(`no figure at ${path}`);
  return typeof raw === 'number' ? toBase(raw, field.dimension, field.unit) : inBase(raw as Quantity, field.dimension);
}

/** What has been looked at already: the same number of the same name comes up in many figures. */
export type Seen = Set<string>;

function termFaults(context: WorkContext, term: Term, trail: string, depth: number, seen: Seen): string[] {
  const { origin } = term;
  const at = `${trail} > ${term.label}`;
  const name = JSON.stringify([term.label, term.value, term.dimension, origin.kind]);
  if (seen.has(name)) return [];
  seen.add(name);
  if (!Number.isFinite(term.value)) return [`${at}: ${term.value}`];
  switch (origin.kind) {
    case 'input':
      return isSame(planValue(context, origin.path), term.value) ? [] : [`${at}: not what ${origin.path} says`];
    case 'counted':
      return [
        ...origin.inputs.filter((path) => !fieldAtPath(path)).map((path) => `${at}: no input at ${path}`),
        ...origin.sources.filter((key) => !(key in SOURCES)).map((key) => `${at}: no source ${key}`),
      ];
    case 'fixed':
      return origin.why === '' ? [`${at}: no reason given`] : [];
    case 'worked':
      return workingFaults(context, origin.work(), term.value, at, seen, depth + 1);
  }
}

/** Everything in a working, at any depth, that does not give the number it is said to give. */
export function workingFaults(
  context: WorkContext,
  working: Working,
  value: number,
  trail: string,
  seen: Seen,
  depth = 0,
): string[] {
  if (depth > DEEPEST) return [`${trail}: goes on for ever`];
  const found = recompute(working);
  const own = isSame(found, value) ? [] : [`${trail}: ${value}, but its working gives ${found}`];
  return [...own, ...working.terms.flatMap((term) => termFaults(context, term, trail, depth, seen))];
}
