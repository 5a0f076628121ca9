import { type CellRange, type Expression, minus, over, plus, remainder, wholePart } from './expression.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { CellFormat, CellLook, WorkbookSheet } from './workbook-types.ts';

/** Columns: what the row is, its unit, the moment before the first month, then one for each month. */
const OPENING = 2;

const MONTH_NAMES = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A row of months. Month 0 is the first of the plan; −1 stands for the moment before it. */
export class MonthRow {
  readonly #sheet: SheetDraft;
  readonly #row: number;
  readonly #format: CellFormat;
  readonly #look: CellLook;
  readonly #cells: Expression[] = [];

  constructor(sheet: SheetDraft, row: number, format: CellFormat, look: CellLook) {
    this.#sheet = sheet;
    this.#row = row;
    this.#format = format;
    this.#look = look;
  }

  get row(): number {
    return this.#row;
  }

  /** A reference to the cell of a month. Throws RangeError when it has not been filled. */
  at(month: number): Expression {
    const cell = this.#cells[month + 1];
    if (!cell) throw new RangeError(`row ${this.#row + 1} of "${this.#sheet.name}" has nothing in month ${month}`);
    return cell;
  }

  set(month: number, expression: Expression): Expression {
    const cell = this.#sheet.formula(this.#row, OPENING + 1 + month, expression, this.#format, this.#look);
    this.#cells[month + 1] = cell;
    return cell;
  }

  /** A figure that follows from nothing else in the workbook. */
  count(month: number, value: number): void {
    const look = this.#look === 'worked' ? 'counted' : this.#look;
    this.#cells[month + 1] = this.#sheet.number(this.#row, OPENING + 1 + month, value, look, this.#format);
  }

  /** Fills the months from the first to before the horizon. */
  fill(horizon: number, cell: (month: number) => Expression): this {
    for (let month = 0; month < horizon; month += 1) this.set(month, cell(month));
    return this;
  }

  /** Months from one to another, both included. */
  range(from: number, to: number): CellRange {
    const values = this.#cells.slice(from + 1, to + 2).map((cell) => cell.value);
    return this.#sheet.range([this.#row, OPENING + 1 + from], [this.#row, OPENING + 1 + to], values);
  }
}

/** Cells of one month over rows that follow each other. */
export function columnOf(sheet: MonthSheet, rows: readonly MonthRow[], month: number): CellRange {
  const values = rows.map((row) => row.at(month).value);
  const [first, last] = [rows[0]?.row ?? 0, rows.at(-1)?.row ?? 0];
  const column = OPENING + 1 + month;
  return sheet.draft.range([first, column], [last, column], values);
}

/** A sheet with a column for every month. */
export class MonthSheet {
  readonly draft: SheetDraft;
  readonly horizon: number;
  /** 1 for the first month, 0 for the moment before it. */
  readonly month: MonthRow;
  /** 1 for January. */
  readonly calendar: MonthRow;
  readonly year: MonthRow;

  /** @param months columns beyond the moment before the first @param startMonth 0 = January */
  constructor(name: string, title: string, months: number, startMonth: number) {
    this.draft = new SheetDraft(name);
    this.horizon = months;
    this.draft.text(this.draft.takeRow(), 0, title, 'title');
    const names = this.draft.takeRow();
    this.draft.text(names, 0, 'Calendar', 'head');
    this.draft.text(names, OPENING, 'before', 'figureHead');
    for (let month = 0; month < months; month += 1) {
      this.draft.text(names, OPENING + 1 + month, MONTH_NAMES[(startMonth + month) % 12] ?? '', 'figureHead');
    }
    this.month = this.row('Month of the plan', '', 'count', 'head');
    this.month.count(-1, 0);
    this.month.fill(months, (month) => plus(this.month.at(month - 1), 1));
    this.calendar = this.row('Calendar month', '1 = January', 'count', 'head');
    this.calendar.fill(months, (month) => plus(remainder(plus(this.month.at(month), startMonth - 1), 12), 1));
    this.year = this.row('Year of the plan', '', 'count', 'head');
    this.year.fill(months, (month) => plus(wholePart(over(minus(this.month.at(month), 1), 12)), 1));
  }

  heading(text: string): void {
    this.draft.text(this.draft.takeRow(1), 0, text, 'heading');
  }

  row(label: string, unit: string, format: CellFormat = 'cents', look: CellLook = 'worked'): MonthRow {
    const row = this.draft.takeRow();
    this.draft.text(row, 0, label, look === 'total' || look === 'head' ? look : 'label');
    this.draft.text(row, 1, unit, 'note');
    return new MonthRow(this.draft, row, format, look);
  }

  finish(): WorkbookSheet {
    return this.draft.finish([44, 12, 13], { rows: 5, columns: 2 }, Math.ceil(this.horizon / 12));
  }
}
