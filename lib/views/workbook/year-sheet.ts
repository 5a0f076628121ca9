import { cellAddress } from './cell-address.ts';
import { type Expression, either, isBelow, NOTHING, over, sumOf } from './expression.ts';
import type { MonthRow } from './month-sheet.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { StatementRows, Statements } from './statement-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { CellLook, WorkbookSheet } from './workbook-types.ts';

type Line = readonly [keyof StatementRows, string, 'worked' | 'total'];

const INCOME: readonly Line[] = [
  ['revenue', 'Sales', 'worked'],
  ['variableCosts', 'Running cost of what leaves', 'worked'],
  ['fixedCosts', 'Standing cost and failing pumps', 'worked'],
  ['ebitda', 'Earnings before interest, tax and depreciation', 'total'],
  ['depreciation', 'Depreciation', 'worked'],
  ['disposalGain', 'Equipment sold, less book value', 'worked'],
  ['interest', 'Interest', 'worked'],
  ['loanFees', 'Loan fees', 'worked'],
  ['profitBeforeTax', 'Profit before tax', 'total'],
  ['tax', 'Tax', 'worked'],
  ['netProfit', 'Net profit', 'total'],
];

const CASH: readonly Line[] = [
  ['operations', 'Cash from operations', 'worked'],
  ['investment', 'Cash from investment', 'worked'],
  ['loansDrawn', 'Loans drawn', 'worked'],
  ['principalRepaid', 'Principal paid back', 'worked'],
  ['ownerPaidIn', 'Paid in by the owner', 'worked'],
  ['net', 'Change of cash', 'total'],
];

const BALANCE: readonly Line[] = [
  ['cash', 'Cash in the bank', 'worked'],
  ['receivables', 'Owed by customers', 'worked'],
  ['inventory', 'Stock', 'worked'],
  ['equipment', 'Equipment at book value', 'worked'],
  ['totalAssets', 'Assets', 'total'],
  ['payables', 'Owed to suppliers', 'worked'],
  ['taxPayable', 'Tax owed', 'worked'],
  ['loans', 'Loans', 'worked'],
  ['totalLiabilities', 'Debts', 'total'],
  ['ownerCapital', 'Paid in by the owner', 'worked'],
  ['retainedProfit', 'Profit kept', 'worked'],
  ['totalEquity', 'Equity', 'total'],
];

/** First column of the years; before it the name of the line and its unit. */
const FIRST = 2;

class YearSheet {
  readonly draft = new SheetDraft('Years');
  readonly #context: WorkbookContext;
  readonly #plan: Statements;
  readonly #spans: readonly (readonly [number, number])[];

  constructor(context: WorkbookContext, plan: Statements) {
    this.#context = context;
    this.#plan = plan;
    const { horizonMonths } = context.basis;
    this.#spans = Array.from({ length: Math.ceil(horizonMonths / 12) }, (_, year) => [
      12 * year,
      Math.min(horizonMonths, 12 * year + 12) - 1,
    ]);
  }

  sheet(title: string): WorkbookSheet {
    this.draft.text(this.draft.takeRow(), 0, title, 'title');
    const head = this.draft.takeRow();
    this.#spans.forEach(([from, to], year) => {
      const months = to - from + 1;
      this.draft.text(
        head,
        FIRST + year,
        months === 12 ? `Year ${year + 1}` : `Year ${year + 1}, ${months} months`,
        'figureHead',
      );
    });
    this.#sums('Income statement', INCOME);
    this.#sums('Cash flow', CASH);
    this.#ends('Balance sheet, at the end of the year', BALANCE);
    this.#cover();
    return this.draft.finish([46, 8, 15], { rows: 2, columns: 2 });
  }

  #row(label: string, look: CellLook): number {
    const row = this.draft.takeRow();
    this.draft.text(row, 0, label, look === 'total' ? 'total' : 'label');
    return row;
  }

  #line(label: string, look: CellLook, cell: (from: number, to: number) => Expression): number {
    const row = this.#row(label, look);
    this.draft.text(row, 1, this.#context.money, 'note');
    this.#spans.forEach(([from, to], year) => {
      this.draft.formula(row, FIRST + year, cell(from, to), 'cents', look);
    });
    return row;
  }

  #sums(heading: string, lines: readonly Line[]): void {
    this.draft.text(this.draft.takeRow(1), 0, heading, 'heading');
    for (const [id, label, look] of lines) {
      const months: MonthRow = this.#plan.rows[id];
      this.#line(label, look, (from, to) => sumOf(months.range(from, to)));
    }
  }

  #ends(heading: string, lines: readonly Line[]): void {
    this.draft.text(this.draft.takeRow(1), 0, heading, 'heading');
    for (const [id, label, look] of lines) this.#line(label, look, (_, to) => this.#plan.rows[id].at(to));
  }

  #cover(): void {
    this.draft.text(this.draft.takeRow(1), 0, 'Debt service and cover', 'heading');
    const { rows, payments } = this.#plan;
    const due = this.#line('Interest and principal', 'worked', (from, to) => sumOf(payments.range(from, to)));
    const row = this.#row('Earnings over payments', 'total');
    this.#spans.forEach(([from, to], year) => {
      const service = sumOf(payments.range(from, to));
      const cell = { ...service, text: cellAddress(due, FIRST + year) };
      const isFull = to - from === 11;
      const cover = either(isBelow(0, cell), over(sumOf(rows.ebitda.range(from, to)), cell), NOTHING);
      if (isFull) this.draft.formula(row, FIRST + year, cover, 'ratio', 'total');
    });
  }
}

/** Sums of the plan's months by year, and the balance at the end of each. */
export function yearSheet(context: WorkbookContext, plan: Statements, title: string): WorkbookSheet {
  return new YearSheet(context, plan).sheet(title);
}
