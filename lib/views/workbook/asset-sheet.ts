import type { BasisHolding, BasisPath } from '../../model/lender-basis-types.ts';
import {
  allOf,
  type CellRange,
  cents,
  type Expression,
  either,
  isAtMost,
  isBelow,
  minus,
  over,
  plus,
  reference,
  smallest,
  sumOf,
  sumWhere,
  times,
} from './expression.ts';
import { columnOf, type MonthRow, MonthSheet } from './month-sheet.ts';
import { type PurchaseSheet, unitCost } from './purchase-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { WrittenOff } from './written-off.ts';

/** Equipment by month, all positive but the gain. */
export interface AssetRows {
  readonly sheet: MonthSheet;
  readonly bought: MonthRow;
  readonly sold: MonthRow;
  readonly gain: MonthRow;
  readonly depreciation: MonthRow;
  /** With the value before the first month. */
  readonly bookValue: MonthRow;
  /** What is still held would fetch after the last month. */
  readonly marketValue: Expression;
}

/** A holding with its cells. Months count from 1. */
interface HoldingCells {
  readonly holding: BasisHolding;
  readonly from: Expression;
  readonly until: Expression;
  readonly cost: Expression;
  readonly salvage: Expression;
  readonly proceeds: Expression;
  readonly worth: Expression;
}

const HEADS = [
  'Thing',
  'Pieces',
  'From month',
  'Until month',
  'Life, months',
  'Cost',
  'Fetches at the end',
  'Received',
  'Worth at the end',
];

const ZERO = reference('0', 0);

class AssetSheet {
  readonly sheet: MonthSheet;
  readonly #context: WorkbookContext;
  readonly #purchases: PurchaseSheet;
  readonly #writtenOff: WrittenOff;
  readonly #cells: readonly HoldingCells[];
  readonly #firstRow: number;

  constructor(
    context: WorkbookContext,
    path: BasisPath,
    purchases: PurchaseSheet,
    writtenOff: WrittenOff,
    name: string,
  ) {
    const { basis } = context;
    this.#context = context;
    this.#purchases = purchases;
    this.#writtenOff = writtenOff;
    this.sheet = new MonthSheet(
      `${name} assets`,
      `${name}: machines and works on the books`,
      basis.horizonMonths,
      basis.startMonth,
    );
    this.sheet.heading(
      'What is owned and bought; a thing without an end within the plan goes the month after its last',
    );
    const head = this.sheet.draft.takeRow();
    HEADS.forEach((words, column) => {
      this.sheet.draft.text(head, column, words, column === 0 ? 'head' : 'figureHead');
    });
    this.#firstRow = head + 1;
    this.#cells = path.holdings.map((holding) => this.#holding(holding));
  }

  rows(): AssetRows {
    const { sheet } = this;
    const written = this.#block('Written off so far', 'Written off', (cells, row) => this.#fillWritten(cells, row));
    const books = this.#block('Book value', 'Book value', (cells, row, k) => this.#fillBook(cells, row, written[k]));
    const shares = this.#block('Depreciation', 'Depreciation', (cells, row, k) =>
      this.#fillShare(cells, row, written[k]),
    );
    sheet.heading('All things');
    const column = (
      label: string,
      values: (cells: HoldingCells) => Expression,
      months: (cells: HoldingCells) => Expression,
      at: readonly [number, number],
    ) =>
      this.#total(label, (month) =>
        sumWhere(this.#column(at[0], values), this.#column(at[1], months), sheet.month.at(month)),
      );
    const bought = column(
      'Bought',
      (cells) => cells.cost,
      (cells) => cells.from,
      [5, 2],
    );
    const sold = column(
      'Received for what goes',
      (cells) => cells.proceeds,
      (cells) => cells.until,
      [7, 3],
    );
    const bookValue = this.#total('Book value', (month) => this.#columnSum(books, month));
    bookValue.set(-1, this.#columnSum(books, -1));
    const gain = this.#total('Received less book value', (month) => {
      const gone =
        books.length === 0
          ? ZERO
          : sumWhere(
              columnOf(sheet, books, month - 1),
              this.#column(3, (cells) => cells.until),
              sheet.month.at(month),
            );
      return minus(sold.at(month), gone);
    });
    const depreciation = this.#total('Depreciation', (month) => this.#columnSum(shares, month));
    return { sheet, bought, sold, gain, depreciation, bookValue, marketValue: this.#marketValue() };
  }

  #total(label: string, cell: (month: number) => Expression): MonthRow {
    const isEmpty = this.#cells.length === 0;
    const row = this.sheet.row(label, this.#context.money, 'cents', 'total');
    return row.fill(this.sheet.horizon, (month) => (isEmpty ? ZERO : cell(month)));
  }

  #columnSum(rows: readonly MonthRow[], month: number): Expression {
    return rows.length === 0 ? ZERO : sumOf(columnOf(this.sheet, rows, month));
  }

  #column(column: number, pick: (cells: HoldingCells) => Expression): CellRange {
    const last = this.#firstRow + this.#cells.length - 1;
    return this.sheet.draft.range(
      [this.#firstRow, column],
      [last, column],
      this.#cells.map((cells) => pick(cells).value),
    );
  }

  #marketValue(): Expression {
    return this.#cells.length === 0 ? ZERO : sumOf(this.#column(8, (cells) => cells.worth));
  }

  #holding(holding: BasisHolding): HoldingCells {
    const { draft, horizon } = this.sheet;
    const row = draft.takeRow();
    draft.text(row, 0, holding.name);
    const pieces = draft.number(row, 1, holding.count, 'label', 'count');
    const from = draft.number(row, 2, holding.from + 1, 'label', 'count');
    const until = draft.number(row, 3, (holding.until ?? horizon) + 1, 'label', 'count');
    const life = draft.number(row, 4, holding.life, 'label', 'count');
    const price = this.#price(holding);
    const cost = draft.formula(row, 5, cents(times(pieces, price.whole)), 'cents');
    const salvage = draft.formula(row, 6, cents(times(pieces, price.salvage)), 'cents');
    const received = { kept: ZERO, worn: salvage, given: this.#given(holding) }[holding.end];
    const proceeds = draft.formula(row, 7, received, 'cents');
    const age = over(minus(horizon + 1, from), life);
    const fetched = cents(minus(cost, times(minus(cost, salvage), smallest(1, age))));
    const worth = draft.formula(row, 8, either(isBelow(horizon, until), fetched, 0), 'cents');
    return { holding, from, until, cost, salvage, proceeds, worth };
  }

  #stageOf({ stageMonth }: BasisHolding) {
    const place = this.#purchases.stages.findIndex((stage) => stage.month === stageMonth);
    return { priced: this.#purchases.stages[place], stage: this.#context.basis.stages[place] };
  }

  #price(holding: BasisHolding): { readonly whole: Expression; readonly salvage: Expression } {
    if (holding.key === null) return { whole: ZERO, salvage: ZERO };
    const { priced, stage } = this.#stageOf(holding);
    if (holding.key === 'delivery') return { whole: priced?.extras ?? ZERO, salvage: ZERO };
    const { price, installation, salvage } = unitCost(this.#context, holding.key, stage);
    return { whole: plus(price, installation), salvage };
  }

  /** What is received for a thing that is given up: nothing by itself, all of it under the entry for old equipment. */
  #given({ key, until }: BasisHolding): Expression {
    if (key !== null) return ZERO;
    return cents(this.#purchases.stages.find((stage) => stage.month === until)?.given ?? ZERO);
  }

  #block(heading: string, label: string, fill: (cells: HoldingCells, row: MonthRow, k: number) => void): MonthRow[] {
    this.sheet.heading(heading);
    return this.#cells.map((cells, k) => {
      const row = this.sheet.row(`${label}: ${cells.holding.name}`, this.#context.money);
      fill(cells, row, k);
      return row;
    });
  }

  #months(fill: (month: number) => void): void {
    for (let month = -1; month < this.sheet.horizon; month += 1) fill(month);
  }

  #fillWritten({ from, cost, salvage }: HoldingCells, row: MonthRow): void {
    this.#months((month) => {
      const age = plus(minus(this.sheet.month.at(month), from), 1);
      row.set(month, either(isBelow(this.sheet.month.at(month), from), 0, this.#writtenOff(cost, salvage, age, from)));
    });
  }

  #isHeld({ from, until }: HoldingCells, month: number): Expression {
    const now = this.sheet.month.at(month);
    return allOf(isAtMost(from, now), isBelow(now, until));
  }

  #fillBook(cells: HoldingCells, row: MonthRow, written: MonthRow | undefined): void {
    this.#months((month) => {
      row.set(month, either(this.#isHeld(cells, month), minus(cells.cost, written?.at(month) ?? ZERO), 0));
    });
  }

  #fillShare(cells: HoldingCells, row: MonthRow, written: MonthRow | undefined): void {
    for (let month = 0; month < this.sheet.horizon; month += 1) {
      const change = minus(written?.at(month) ?? ZERO, written?.at(month - 1) ?? ZERO);
      row.set(month, either(this.#isHeld(cells, month), change, 0));
    }
  }
}

/** Equipment of the shop run one way. @param name of the way, which heads its sheets */
export function assetRows(
  context: WorkbookContext,
  path: BasisPath,
  purchases: PurchaseSheet,
  writtenOff: WrittenOff,
  name: string,
): AssetRows {
  return new AssetSheet(context, path, purchases, writtenOff, name).rows();
}
