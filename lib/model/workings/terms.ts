import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { isRawObject, valueAt } from '../../plan/raw-value.ts';
import type { SourceKey } from '../../sources.ts';
import { toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';
import type { Term, Working } from './working.ts';

const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

/** A letter with its number, such as b₁₂. */
export function numbered(letter: string, index: number): string {
  return letter + [...String(index)].map((digit) => SUBSCRIPTS[Number(digit)]).join('');
}

/** Name of the thing in the plan's lists that a path leads into, such as a product's; empty for what the shop has one of. */
export function thingAt(plan: Plan, path: string): string {
  const [part = '', place = ''] = path.split('.');
  const thing = valueAt(plan, [part, place]);
  return isRawObject(thing) && typeof thing.name === 'string' ? thing.name : '';
}

function inputValue(plan: Plan, path: string): { value: number; dimension: Dimension; label: string } {
  const field = fieldAtPath(path);
  const raw = valueAt(plan, path.split('.'));
  if (!field || (field.kind !== 'quantity' && field.kind !== 'number')) throw new RangeError(`no figure at ${path}`);
  const { dimension, label } = field;
  const value = typeof raw === 'number' ? toBase(raw, dimension, field.unit) : inBase(raw as Quantity, dimension);
  return { value, dimension, label };
}

/** A value of the plan as a term. Throws RangeError when the path leads to no figure. */
export function inputTerm(plan: Plan, path: string, symbol: string): Term {
  const { value, dimension, label } = inputValue(plan, path);
  const thing = thingAt(plan, path);
  const isScenario = path.startsWith('scenarios.');
  return {
    label: thing === '' || isScenario ? label : `${label}: ${thing}`,
    symbol,
    value,
    dimension,
    origin: { kind: 'input', path },
  };
}

interface Named {
  readonly label: string;
  readonly symbol: string;
  readonly value: number;
  readonly dimension: Dimension;
}

/** What a count hangs on. */
interface Counted {
  readonly what: string;
  readonly sources?: readonly SourceKey[];
  readonly inputs?: readonly string[];
}

/** A number read off the simulated week. */
export function countedTerm(named: Named, { what, sources = [], inputs = [] }: Counted): Term {
  return { ...named, origin: { kind: 'counted', where: 'week', what, sources, inputs } };
}

/** A number booked month by month in the projection. */
export function bookedTerm(named: Named, { what, sources = [], inputs = [] }: Counted): Term {
  return { ...named, origin: { kind: 'counted', where: 'months', what, sources, inputs } };
}

/** A number with a working of its own. */
export function workedTerm(named: Named, work: () => Working): Term {
  return { ...named, origin: { kind: 'worked', work } };
}

/** A number that the model sets. */
export function fixedTerm(named: Named, why: string): Term {
  return { ...named, origin: { kind: 'fixed', why } };
}

/** A number that follows from others by `compute`. */
export function worked(
  formula: string,
  symbols: string,
  terms: readonly Term[],
  compute: (values: readonly number[]) => number,
): Working {
  return { kind: 'worked', formula, symbols, terms, compute };
}

export function addUp(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Sums longer than this are written with a sum sign. */
const LONGEST_SUM = 7;

/** The letters of some terms with a sign between them, in full or as a sum. */
export function summed(terms: readonly Term[]): string {
  const first = terms[0]?.symbol ?? '';
  const last = terms.at(-1)?.symbol ?? '';
  if (terms.length <= LONGEST_SUM) return terms.map((term) => term.symbol).join(' + ');
  return `${first} + … + ${last}`;
}

/** A plain sum. */
export function sumWorking(formula: string, terms: readonly Term[]): Working {
  return worked(formula, terms.length === 0 ? '0' : summed(terms), terms, addUp);
}

/** The largest of some numbers; 0 for none. */
export function mostWorking(formula: string, terms: readonly Term[]): Working {
  const symbols = `largest of ${terms.map((term) => term.symbol).join(', ')}`;
  return worked(formula, terms.length === 0 ? '0' : symbols, terms, (values) => Math.max(0, ...values));
}
