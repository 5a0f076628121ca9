import type { InputField } from '../../inputs/input-field.ts';
import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { keyOf } from '../../inputs/register.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { isRawObject, valueAt } from '../../plan/raw-value.ts';
import { fromBase, toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';
import { type ShownAs, shownValue, unitSign, unitText } from '../format-quantity.ts';
import { inputNote } from '../input-note.ts';
import type { Expression } from './expression.ts';
import { type NameBook, nameFor } from './name-book.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { CellFormat, CellLook, WorkbookSheet } from './workbook-types.ts';

const HEADS = ['', 'What', 'Value', 'Unit', 'Origin', 'From low to high', 'Source and note'];

/** Column of the values. */
const VALUE = 2;

/** Dimensions kept as fractions and written in percent. */
const SHARES: readonly Dimension[] = ['fraction', 'ratePerYear'];

interface Shown {
  readonly value: number;
  readonly unit: string;
  readonly format: CellFormat;
}

function lookOf(origin: string): CellLook {
  return origin === 'guess' || origin === 'handbook' ? origin : 'input';
}

/** The sheet of assumptions: every value that may be changed, with its unit and where it comes from. */
export class AssumptionSheet {
  readonly draft = new SheetDraft('Assumptions');
  readonly #plan: Plan;
  readonly #names: NameBook;
  readonly #shown: ShownAs;
  readonly #given = new Map<string, Expression>();

  constructor(plan: Plan, names: NameBook) {
    this.#plan = plan;
    this.#names = names;
    this.#shown = { system: plan.site.unitSystem, currency: plan.site.currency };
    this.draft.text(this.draft.takeRow(), 0, 'Assumptions', 'title');
    const words = 'Change a value and everything that hangs on it follows. Guesses are marked: replace them first.';
    this.draft.text(this.draft.takeRow(), 0, words, 'note');
    const row = this.draft.takeRow();
    HEADS.forEach((head, column) => {
      this.draft.text(row, column, head, column === VALUE ? 'figureHead' : 'head');
    });
  }

  heading(text: string): void {
    this.draft.text(this.draft.takeRow(1), 0, text, 'heading');
  }

  /** A reference to an assumption by its path in the plan. Throws RangeError when the sheet does not hold it. */
  at(path: string): Expression {
    const given = this.#given.get(path);
    if (!given) throw new RangeError(`no assumption ${path}`);
    return given;
  }

  has(path: string): boolean {
    return this.#given.has(path);
  }

  /** Puts values of one part of the plan on the sheet. @param id of the thing they are of, for their names; '' for none */
  put(parent: string, keys: readonly string[], id = ''): void {
    for (const key of keys) this.#input(`${parent}.${key}`, id);
  }

  /** A value that is fixed, such as the weeks in a month. */
  constant(name: string, label: string, formula: Expression, unit: string): Expression {
    const row = this.draft.takeRow();
    this.draft.text(row, 1, label);
    this.draft.text(row, 3, unit, 'note');
    this.draft.text(row, 4, 'fixed', 'note');
    this.draft.formula(row, VALUE, formula, 'figure');
    return this.#names.give(name, this.draft.placeOf(row, VALUE), formula.value);
  }

  /** A number that stands for a choice of the plan. */
  choice(path: string, name: string, value: number, words: string): void {
    const row = this.draft.takeRow();
    const note = inputNote(this.#plan, path, this.#shown);
    this.draft.text(row, 1, note.label);
    this.draft.number(row, VALUE, value, 'input', 'count');
    this.draft.text(row, 3, words, 'note');
    this.draft.text(row, 4, note.origin, 'note');
    this.#given.set(path, this.#names.give(name, this.draft.placeOf(row, VALUE), value));
  }

  finish(): WorkbookSheet {
    return this.draft.finish([26, 32, 13, 12, 11, 26, 46], { rows: 3, columns: 0 });
  }

  #input(path: string, id: string): void {
    const field = fieldAtPath(path);
    if (!field) throw new RangeError(`no input at ${path}`);
    const row = this.draft.takeRow();
    const note = inputNote(this.#plan, path, this.#shown);
    this.draft.text(row, 0, note.thing, 'note');
    this.draft.text(row, 1, note.label);
    this.draft.text(row, 4, note.origin, note.origin === 'guess' ? 'guess' : 'note');
    this.draft.text(row, 5, note.range, 'note');
    this.draft.text(row, 6, [note.source, note.note].filter((words) => words !== '').join(' '), 'wrapped');
    const figure = this.#figure(path, field);
    if (figure) this.#value(path, row, figure, lookOf(note.origin), nameFor(keyOf(field), id));
    else this.draft.text(row, VALUE, note.value, 'note');
  }

  #value(path: string, row: number, { value, unit, format }: Shown, look: CellLook, name: string): void {
    this.draft.number(row, VALUE, value, look, format);
    this.draft.text(row, 3, unit, 'note');
    this.#given.set(path, this.#names.give(name, this.draft.placeOf(row, VALUE), value));
  }

  /** The value of a field as the workbook reckons with it; null when it is words or there is none. */
  #figure(path: string, field: InputField): Shown | null {
    const raw = valueAt(this.#plan, path.split('.'));
    if (raw === null || raw === undefined || field.kind === 'flag' || field.kind === 'choice') return null;
    const isQuantity = field.kind === 'quantity' && isRawObject(raw);
    const base = isQuantity
      ? inBase(raw as unknown as Quantity, field.dimension)
      : toBase(Number(raw), field.dimension, field.unit);
    return this.#shownFigure(base, field.dimension, field.unit);
  }

  #shownFigure(base: number, dimension: Dimension, unit: string): Shown {
    // A plain factor such as a lender's line of 1.25 is no percentage to its reader.
    if (SHARES.includes(dimension) && unit === '1') return { value: base, unit: '', format: 'ratio' };
    if (SHARES.includes(dimension))
      return { value: base, unit: dimension === 'fraction' ? '' : 'a year', format: 'share' };
    // Times of the accounts are days and weeks, not hours.
    if (dimension === 'time')
      return { value: fromBase(base, 'time', unit), unit: unitSign(unit, this.#shown.currency), format: 'figure' };
    // The engine counts whole months.
    const value = dimension === 'months' ? Math.round(base) : shownValue(base, dimension, this.#shown);
    return { value, unit: unitText(dimension, this.#shown), format: dimension === 'months' ? 'count' : 'figure' };
  }
}
