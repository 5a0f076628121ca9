import type { AssetRows } from './asset-sheet.ts';
import { type CoverRows, coverRows } from './cover-rows.ts';
import {
  cents,
  centsDown,
  type Expression,
  largest,
  minus,
  negative,
  plus,
  reference,
  smallest,
  sumWhere,
  times,
} from './expression.ts';
import { inMonths, lastDays } from './last-days.ts';
import type { DebtRows } from './loan-sheet.ts';
import { type MonthRow, MonthSheet } from './month-sheet.ts';
import type { PurchaseSheet } from './purchase-sheet.ts';
import type { SalesRows } from './sales-sheet.ts';
import { type TaxRows, taxRows } from './tax-rows.ts';
import type { WorkbookContext } from './workbook-context.ts';

/** Rows by the name that the engine's statements have for them; money out is negative. */
export type StatementRows = Readonly<Record<IncomeLine | CashLine | BalanceLine, MonthRow>>;

type IncomeLine =
  | 'revenue'
  | 'variableCosts'
  | 'fixedCosts'
  | 'ebitda'
  | 'depreciation'
  | 'disposalGain'
  | 'interest'
  | 'loanFees'
  | 'profitBeforeTax'
  | 'tax'
  | 'netProfit';

type CashLine =
  | 'depreciationBack'
  | 'disposalGainOut'
  | 'interestAdded'
  | 'receivablesChange'
  | 'inventoryChange'
  | 'payablesChange'
  | 'taxPayableChange'
  | 'operations'
  | 'purchases'
  | 'disposals'
  | 'investment'
  | 'loansDrawn'
  | 'principalRepaid'
  | 'ownerPaidIn'
  | 'financing'
  | 'net';

type BalanceLine =
  | 'cash'
  | 'receivables'
  | 'inventory'
  | 'equipment'
  | 'totalAssets'
  | 'payables'
  | 'taxPayable'
  | 'loans'
  | 'totalLiabilities'
  | 'ownerCapital'
  | 'retainedProfit'
  | 'totalEquity';

/** What the statements of one way to run the shop are made of. */
export interface StatementSources {
  readonly sales: SalesRows;
  readonly assets: AssetRows;
  readonly debt: DebtRows;
  /** Null for today, which buys nothing. */
  readonly purchases: PurchaseSheet | null;
  /** Today's statements, from whose first month the months before the plan are taken; null for today itself. */
  readonly today: Statements | null;
}

export interface Statements extends CoverRows {
  readonly sheet: MonthSheet;
  readonly rows: StatementRows;
  readonly payments: MonthRow;
  readonly tax: TaxRows;
  readonly taxWithoutLoans: TaxRows;
  /** Assets less debts and equity: 0 in every month. */
  readonly balanceCheck: MonthRow;
  /** What winding up at the end would bring. */
  readonly left: Readonly<Record<'equipment' | 'workingCapital' | 'loans' | 'tax' | 'taxWithoutLoans', Expression>>;
}

const ZERO = reference('0', 0);

/** A line that is filled later, when all that it needs is there. */
type ReservedLine = readonly [id: string, label: string, isTotal: boolean];

const CASH_LINES: readonly ReservedLine[] = [
  ['depreciationBack', 'Depreciation, which no money left for', false],
  ['disposalGainOut', 'Equipment sold less book value, shown below', false],
  ['interestAdded', 'Interest added to the debt', false],
  ['receivablesChange', 'Customers pay later', false],
  ['inventoryChange', 'Stock', false],
  ['payablesChange', 'Suppliers are paid later', false],
  ['taxPayableChange', 'Tax is paid later', false],
  ['operations', 'Cash from operations, net profit included', true],
  ['purchases', 'Equipment bought', false],
  ['disposals', 'Received for equipment', false],
  ['investment', 'Cash from investment', true],
  ['loansDrawn', 'Loans drawn', false],
  ['principalRepaid', 'Principal paid back', false],
  ['ownerPaidIn', 'Paid in by the owner', false],
  ['financing', 'Cash from financing', true],
  ['net', 'Change of cash', true],
];

const BALANCE_LINES: readonly ReservedLine[] = [
  ['cash', 'Cash in the bank', false],
  ['receivables', 'Owed by customers', false],
  ['inventory', 'Stock', false],
  ['equipment', 'Equipment at book value', false],
  ['totalAssets', 'Assets', true],
  ['payables', 'Owed to suppliers', false],
  ['taxPayable', 'Tax owed', false],
  ['loans', 'Loans', false],
  ['totalLiabilities', 'Debts', true],
  ['ownerCapital', 'Paid in by the owner', false],
  ['retainedProfit', 'Profit kept', false],
  ['totalEquity', 'Equity', true],
];

/** Three statements of the shop run one way, with tax, working capital and debt cover. */
class StatementSheet {
  readonly sheet: MonthSheet;
  readonly #context: WorkbookContext;
  readonly #sources: StatementSources;
  readonly #rows = new Map<string, MonthRow>();

  constructor(context: WorkbookContext, sources: StatementSources, name: string, title: string) {
    const { basis } = context;
    this.#context = context;
    this.#sources = sources;
    this.sheet = new MonthSheet(name, title, basis.horizonMonths, basis.startMonth);
  }

  statements(): Statements {
    const last = this.sheet.horizon - 1;
    this.sheet.heading('Income statement');
    this.#earnings();
    this.#afterLoans();
    // The tax reckoning stands further down, so its rows are kept free here and filled when it is done.
    const taxLines = { tax: this.#reserve('tax', 'Tax'), netProfit: this.#reserve('netProfit', 'Net profit', 'total') };
    this.#reserveLines('Cash flow', CASH_LINES);
    this.#reserveLines('Balance sheet, at the end of the month', BALANCE_LINES);
    const check = this.sheet.row('Check: assets less debts and equity', this.#context.money, 'cents', 'check');
    const tax = taxRows(this.#context, this.sheet, 'Tax', (month) => this.#at('profitBeforeTax', month));
    const taxWithoutLoans = taxRows(this.#context, this.sheet, 'Tax if there were no loans', (month) =>
      plus(this.#at('ebitda', month), this.#at('depreciation', month), this.#at('disposalGain', month)),
    );
    taxLines.tax.fill(this.sheet.horizon, (month) => negative(tax.expense.at(month)));
    taxLines.netProfit.fill(this.sheet.horizon, (month) =>
      plus(this.#at('profitBeforeTax', month), this.#at('tax', month)),
    );
    this.#fillWorkingCapital();
    this.#fillCash(tax);
    this.#fillBalance(tax);
    check.fill(this.sheet.horizon, (month) => this.#imbalance(month));
    check.set(-1, this.#imbalance(-1));
    return {
      sheet: this.sheet,
      rows: Object.fromEntries(this.#rows) as StatementRows,
      payments: this.#sources.debt.payments,
      tax,
      taxWithoutLoans,
      balanceCheck: check,
      ...coverRows(this.#context, this.sheet, this.#row('ebitda'), this.#sources.debt.payments),
      left: this.#left(last, tax, taxWithoutLoans),
    };
  }

  #reserve(id: string, label: string, look: 'worked' | 'total' = 'worked'): MonthRow {
    const row = this.sheet.row(label, this.#context.money, 'cents', look);
    this.#rows.set(id, row);
    return row;
  }

  #reserveLines(heading: string, lines: readonly ReservedLine[]): void {
    this.sheet.heading(heading);
    for (const [id, label, isTotal] of lines) this.#reserve(id, label, isTotal ? 'total' : 'worked');
  }

  #line(id: string, label: string, cell: (month: number) => Expression, look: 'worked' | 'total' = 'worked'): MonthRow {
    return this.#reserve(id, label, look).fill(this.sheet.horizon, cell);
  }

  #row(id: string): MonthRow {
    const row = this.#rows.get(id);
    if (!row) throw new RangeError(`no line ${id}`);
    return row;
  }

  #at(id: string, month: number): Expression {
    return this.#row(id).at(month);
  }

  #sum(ids: readonly string[], month: number): Expression {
    return cents(plus(...ids.map((id) => this.#at(id, month))));
  }

  #earnings(): void {
    const { sales } = this.#sources;
    this.#line('revenue', 'Sales', (month) => cents(sales.revenue.at(month)));
    this.#line('variableCosts', 'Running cost of what leaves', (month) =>
      negative(cents(sales.variableCosts.at(month))),
    );
    this.#line('fixedCosts', 'Standing cost and failing pumps', (month) => negative(cents(sales.fixedCosts.at(month))));
    const lines = ['revenue', 'variableCosts', 'fixedCosts'];
    this.#line('ebitda', 'Earnings before interest, tax and depreciation', (month) => this.#sum(lines, month), 'total');
  }

  #afterLoans(): void {
    const { assets, debt } = this.#sources;
    this.#line('depreciation', 'Depreciation', (month) => negative(assets.depreciation.at(month)));
    this.#line('disposalGain', 'Equipment sold, less book value', (month) => assets.gain.at(month));
    this.#line('interest', 'Interest', (month) => negative(debt.interest.at(month)));
    this.#line('loanFees', 'Loan fees', (month) => negative(debt.fees.at(month)));
    const lines = ['ebitda', 'depreciation', 'disposalGain', 'interest', 'loanFees'];
    this.#line('profitBeforeTax', 'Profit before tax', (month) => this.#sum(lines, month), 'total');
  }

  #fillWorkingCapital(): void {
    const { assumptions, money } = this.#context;
    const { horizon } = this.sheet;
    this.sheet.heading('Working capital');
    const soFar = (label: string, amount: (month: number) => Expression) => {
      const row = this.sheet.row(label, money);
      row.count(-1, 0);
      return row.fill(horizon, (month) => plus(row.at(month - 1), amount(month)));
    };
    const costs = this.sheet
      .row('Running cost', money)
      .fill(horizon, (month) => negative(this.#at('variableCosts', month)));
    const salesSoFar = soFar('Sales so far', (month) => this.#at('revenue', month));
    const costsSoFar = soFar('Running cost so far', (month) => costs.at(month));
    const before = this.#sources.today?.rows;
    const days = (key: string) => inMonths(this.#context, assumptions.at(`financing.${key}`));
    const salesBefore = before ? before.revenue.at(0) : this.#at('revenue', 0);
    const costsBefore = before ? negative(before.variableCosts.at(0)) : costs.at(0);
    const put = (
      id: BalanceLine,
      months: Expression,
      amounts: MonthRow,
      total: MonthRow,
      earlier: Expression,
      more: (month: number) => Expression,
    ) => {
      this.#row(id).set(-1, cents(times(earlier, months)));
      this.#row(id).fill(horizon, (month) =>
        plus(lastDays(this.sheet, amounts, total, months, earlier, month), more(month)),
      );
    };
    const stock = (month: number) => cents(this.#sources.sales.stockValue.at(month));
    put('receivables', days('receivableDays'), this.#row('revenue'), salesSoFar, salesBefore, () => ZERO);
    put('inventory', days('stockDays'), costs, costsSoFar, costsBefore, stock);
    put('payables', days('payableDays'), costs, costsSoFar, costsBefore, () => ZERO);
  }

  #change(id: BalanceLine, month: number): Expression {
    return minus(this.#at(id, month), this.#at(id, month - 1));
  }

  /** What the owner puts in: what no loan of the month pays for, and the fees. */
  #ownMoney(month: number): Expression {
    const { purchases, debt } = this.#sources;
    if (!purchases || purchases.stages.length === 0) return ZERO;
    const bought = sumWhere(purchases.capitals, purchases.months, this.sheet.month.at(month));
    return cents(plus(largest(0, minus(bought, debt.drawn.at(month))), debt.fees.at(month)));
  }

  #fillCash(tax: TaxRows): void {
    const { assets, debt } = this.#sources;
    const { horizon } = this.sheet;
    const put = (id: CashLine, cell: (month: number) => Expression) => this.#row(id).fill(horizon, cell);
    put('depreciationBack', (month) => negative(this.#at('depreciation', month)));
    put('disposalGainOut', (month) => negative(this.#at('disposalGain', month)));
    put('interestAdded', (month) => debt.interestAdded.at(month));
    put('receivablesChange', (month) => negative(this.#change('receivables', month)));
    put('inventoryChange', (month) => negative(this.#change('inventory', month)));
    put('payablesChange', (month) => this.#change('payables', month));
    put('taxPayableChange', (month) => minus(tax.payable.at(month), tax.payable.at(month - 1)));
    const operations = [
      'netProfit',
      'depreciationBack',
      'disposalGainOut',
      'interestAdded',
      'receivablesChange',
      'inventoryChange',
      'payablesChange',
      'taxPayableChange',
    ];
    put('operations', (month) => this.#sum(operations, month));
    put('purchases', (month) => negative(assets.bought.at(month)));
    put('disposals', (month) => assets.sold.at(month));
    put('investment', (month) => this.#sum(['purchases', 'disposals'], month));
    put('loansDrawn', (month) => debt.drawn.at(month));
    put('principalRepaid', (month) => negative(debt.principal.at(month)));
    put('ownerPaidIn', (month) => this.#ownMoney(month));
    put('financing', (month) => this.#sum(['loansDrawn', 'principalRepaid', 'ownerPaidIn'], month));
    put('net', (month) => this.#sum(['operations', 'investment', 'financing'], month));
  }

  #fillBalance(tax: TaxRows): void {
    const { assets, debt } = this.#sources;
    const both = (id: BalanceLine, cell: (month: number) => Expression) => {
      for (let month = -1; month < this.sheet.horizon; month += 1) this.#row(id).set(month, cell(month));
    };
    both('cash', (month) =>
      month < 0
        ? cents(this.#context.assumptions.at('financing.openingCash'))
        : cents(plus(this.#at('cash', month - 1), this.#at('net', month))),
    );
    both('equipment', (month) => assets.bookValue.at(month));
    both('totalAssets', (month) => this.#sum(['cash', 'receivables', 'inventory', 'equipment'], month));
    both('taxPayable', (month) => tax.payable.at(month));
    both('loans', (month) => (month < 0 ? debt.opening : debt.owed.at(month)));
    both('totalLiabilities', (month) => this.#sum(['payables', 'taxPayable', 'loans'], month));
    both('ownerCapital', (month) =>
      month < 0
        ? minus(this.#at('totalAssets', -1), this.#at('totalLiabilities', -1))
        : plus(this.#at('ownerCapital', month - 1), this.#at('ownerPaidIn', month)),
    );
    both('retainedProfit', (month) =>
      month < 0 ? ZERO : cents(plus(this.#at('retainedProfit', month - 1), this.#at('netProfit', month))),
    );
    both('totalEquity', (month) => this.#sum(['ownerCapital', 'retainedProfit'], month));
  }

  #imbalance(month: number): Expression {
    return cents(
      minus(minus(this.#at('totalAssets', month), this.#at('totalLiabilities', month)), this.#at('totalEquity', month)),
    );
  }

  #left(last: number, tax: TaxRows, taxWithoutLoans: TaxRows): Statements['left'] {
    const { assumptions, money } = this.#context;
    const { assets, debt } = this.#sources;
    this.sheet.heading('If it were wound up at the end of the plan');
    const line = (label: string, expression: Expression) => {
      const row = this.sheet.draft.takeRow();
      this.sheet.draft.text(row, 0, label);
      this.sheet.draft.text(row, 1, money, 'note');
      return this.sheet.draft.formula(row, 2, expression, 'cents');
    };
    const equipment = line('Equipment at what it fetches', assets.marketValue);
    const gain = line('Above its book value', largest(0, minus(equipment, assets.bookValue.at(last))));
    const final = (rows: TaxRows) => {
      const offset = smallest(rows.lossCarried, centsDown(times(gain, assumptions.at('financing.lossOffset'))));
      const due = cents(times(minus(gain, offset), assumptions.at('financing.taxRate')));
      return minus(negative(rows.payable.at(last)), due);
    };
    const tied = minus(plus(this.#at('receivables', last), this.#at('inventory', last)), this.#at('payables', last));
    return {
      equipment,
      workingCapital: line('Working capital', tied),
      loans: line('Loans paid off', negative(debt.owed.at(last))),
      tax: line('Tax', final(tax)),
      taxWithoutLoans: line('Tax if there were no loans', final(taxWithoutLoans)),
    };
  }
}

/** Statements of the shop run one way. */
export function statementSheet(
  context: WorkbookContext,
  sources: StatementSources,
  name: string,
  title: string,
): Statements {
  return new StatementSheet(context, sources, name, title).statements();
}
