import type { ScenarioReturn } from '../../model/scenario-result.ts';
import {
  allOf,
  type CellRange,
  countOf,
  type Expression,
  either,
  highestOf,
  internalRateOf,
  isAtMost,
  isBelow,
  isEqual,
  levelPayment,
  lowestOf,
  minus,
  modifiedRateOf,
  NOTHING,
  negative,
  over,
  plus,
  power,
  presentValueOf,
  reference,
  said,
  smallest,
} from './expression.ts';
import { type MonthRow, MonthSheet } from './month-sheet.ts';
import { loanPath } from './plan-paths.ts';
import type { StatementRows, Statements } from './statement-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { CellFormat } from './workbook-types.ts';

/** Measures of the return, as cells. */
export interface ReturnCells {
  readonly payback: Expression;
  readonly discountedPayback: Expression;
  readonly netPresentValue: Expression;
  readonly yearlyWorth: Expression;
  readonly rateOfReturn: Expression;
  readonly modifiedRate: Expression;
  readonly profitabilityIndex: Expression;
  readonly ownPayback: Expression;
  readonly ownNetPresentValue: Expression;
}

const ZERO = reference('0', 0);

/** Rows of one stream of extra cash. */
interface Stream {
  readonly flows: MonthRow;
  /** With what is left at the end. */
  readonly whole: MonthRow;
}

/** What the plan brings beyond staying as today, moment by moment; column C is the moment before the first month. */
class ReturnSheet {
  readonly sheet: MonthSheet;
  readonly #context: WorkbookContext;
  readonly #plan: Statements;
  readonly #today: Statements;
  readonly #known: ScenarioReturn;
  readonly #monthly: Expression;

  constructor(context: WorkbookContext, plan: Statements, today: Statements, known: ScenarioReturn, title: string) {
    const { basis, assumptions } = context;
    this.#context = context;
    this.#plan = plan;
    this.#today = today;
    this.#known = known;
    this.sheet = new MonthSheet('Returns', title, basis.horizonMonths, basis.startMonth);
    this.#monthly = this.#single(
      'Return wanted, a month',
      '',
      this.#perMonth(assumptions.at('financing.discountRate')),
      'share',
    );
  }

  cells(): ReturnCells {
    const { sheet } = this;
    sheet.heading('Cash beyond today, at the end of the month; what happens at its start stands one column before');
    const operations = this.#atEnd('Earnings', (month) => this.#extra('ebitda', month));
    const capital = this.#atEnd('Working capital', (month) =>
      negative(minus(this.#tied(month), this.#tied(month - 1))),
    );
    const equipment = this.#atStart('Equipment', (month) => this.#extra('investment', month));
    const taxWithoutLoans = this.#atEnd('Tax if there were no loans', (month) =>
      negative(this.#between((side) => side.taxWithoutLoans.paid.at(month))),
    );
    const tax = this.#atEnd('Tax', (month) => negative(this.#between((side) => side.tax.paid.at(month))));
    const drawn = this.#atStart('Loans drawn', (month) => this.#extra('loansDrawn', month));
    const payments = this.#atEnd('Loan payments', (month) =>
      negative(this.#between((side) => side.payments.at(month))),
    );
    const fees = this.#atStart('Loan fees', (month) => this.#extra('loanFees', month));
    const shared = [operations, capital, equipment];
    const before = this.#stream('Loans left out', [...shared, taxWithoutLoans], this.#leftBefore());
    const after = this.#stream('After loans', [...shared, tax, drawn, payments, fees], this.#leftAfter());
    return this.#measures(before, after, equipment);
  }

  #perMonth(yearly: Expression): Expression {
    return minus(power(plus(1, yearly), over(1, 12)), 1);
  }

  #single(label: string, unit: string, expression: Expression, format: CellFormat): Expression {
    const row = this.sheet.draft.takeRow();
    this.sheet.draft.text(row, 0, label);
    this.sheet.draft.text(row, 1, unit, 'note');
    return this.sheet.draft.formula(row, 2, expression, format, 'total');
  }

  #between(pick: (side: Statements) => Expression): Expression {
    return minus(pick(this.#plan), pick(this.#today));
  }

  #extra(id: keyof StatementRows, month: number): Expression {
    return this.#between((side) => side.rows[id].at(month));
  }

  /** Money tied up in receivables and stock less payables, beyond today's. */
  #tied(month: number): Expression {
    return minus(
      plus(this.#extra('receivables', month), this.#extra('inventory', month)),
      this.#extra('payables', month),
    );
  }

  #atEnd(label: string, cell: (month: number) => Expression): MonthRow {
    const row = this.sheet.row(label, this.#context.money);
    row.set(-1, ZERO);
    return row.fill(this.sheet.horizon, cell);
  }

  #atStart(label: string, cell: (month: number) => Expression): MonthRow {
    const row = this.sheet.row(label, this.#context.money);
    for (let month = -1; month < this.sheet.horizon - 1; month += 1) row.set(month, cell(month + 1));
    row.set(this.sheet.horizon - 1, ZERO);
    return row;
  }

  #leftBefore(): Expression {
    const of = (key: 'equipment' | 'workingCapital' | 'taxWithoutLoans') => this.#between((side) => side.left[key]);
    return plus(of('equipment'), of('workingCapital'), of('taxWithoutLoans'));
  }

  #leftAfter(): Expression {
    const of = (key: 'equipment' | 'workingCapital' | 'tax' | 'loans') => this.#between((side) => side.left[key]);
    return plus(of('equipment'), of('workingCapital'), of('tax'), of('loans'));
  }

  #everywhere(row: MonthRow, cell: (month: number) => Expression): MonthRow {
    for (let month = -1; month < this.sheet.horizon; month += 1) row.set(month, cell(month));
    return row;
  }

  #stream(heading: string, lines: readonly MonthRow[], left: Expression): Stream {
    const { sheet } = this;
    const { money } = this.#context;
    sheet.heading(heading);
    const remains = this.#single('Left at the end of the plan', money, left, 'cents');
    const flows = this.#everywhere(sheet.row('Cash', money, 'cents', 'total'), (month) =>
      plus(...lines.map((line) => line.at(month))),
    );
    const whole = this.#everywhere(sheet.row('With what is left at the end', money), (month) =>
      month === sheet.horizon - 1 ? plus(flows.at(month), remains) : flows.at(month),
    );
    return { flows, whole };
  }

  #all(row: MonthRow): CellRange {
    return row.range(-1, this.sheet.horizon - 1);
  }

  /** Months until the running total is back at nothing, taken to come in evenly between two moments. */
  #payback(label: string, flows: (month: number) => Expression): Expression {
    const { sheet } = this;
    const total = sheet.row(`${label}: running total`, this.#context.money);
    this.#everywhere(total, (month) => (month < 0 ? flows(month) : plus(total.at(month - 1), flows(month))));
    const back = sheet.row(`${label}: back at nothing`, 'months', 'figure').fill(sheet.horizon, (month) => {
      const [before, now] = [total.at(month - 1), total.at(month)];
      const moment = plus(sheet.month.at(month - 1), over(before, minus(before, now)));
      return either(allOf(isBelow(before, 0), isAtMost(0, now)), moment, NOTHING);
    });
    const found = back.range(0, sheet.horizon - 1);
    const isNever = either(
      isAtMost(0, lowestOf(this.#all(total))),
      said('nothing to pay back'),
      said('not within the plan'),
    );
    return this.#single(
      `${label}: months until it is paid back`,
      'months',
      either(isEqual(countOf(found), 0), isNever, lowestOf(found)),
      'figure',
    );
  }

  /** Present value of a row that begins now. */
  #worth(row: MonthRow): Expression {
    return plus(row.at(-1), presentValueOf(this.#monthly, row.range(0, this.sheet.horizon - 1)));
  }

  #discounted(flows: MonthRow): MonthRow {
    const row = this.sheet.row('Cash in today’s money', this.#context.money);
    return this.#everywhere(row, (month) =>
      over(flows.at(month), power(plus(1, this.#monthly), this.sheet.month.at(month))),
    );
  }

  #yearly(label: string, monthly: Expression): Expression {
    return this.#single(label, 'a year', minus(power(plus(1, monthly), 12), 1), 'share');
  }

  /** Only a rate that is the only one is a rate of return. */
  #rateOfReturn({ whole }: Stream): Expression {
    const { rateOfReturn } = this.#known;
    const label = 'Internal rate of return';
    if (rateOfReturn.kind !== 'one') {
      const words = rateOfReturn.kind === 'none' ? 'there is none' : 'there are several: look at the present value';
      return this.#single(label, 'a year', said(words), 'share');
    }
    return this.#yearly(label, internalRateOf(this.#all(whole), (1 + rateOfReturn.yearly) ** (1 / 12) - 1));
  }

  #borrowingRate(): Expression {
    const { plan, assumptions } = this.#context;
    const planned = plan.financing.loans.filter((loan) => loan.basis !== 'running');
    const rates = planned.map((loan) => assumptions.at(`${loanPath(plan, loan.id)}.rate`));
    const range = { text: rates.map((rate) => rate.text).join(','), values: rates.map((rate) => rate.value) };
    return rates.length > 0 ? highestOf(range) : assumptions.at('financing.discountRate');
  }

  #modifiedRate({ whole }: Stream): Expression {
    if (this.#known.modifiedRate === null)
      return this.#single('Modified rate of return', 'a year', said('there is none'), 'share');
    const finance = this.#perMonth(this.#borrowingRate());
    const reinvest = this.#perMonth(this.#context.assumptions.at('financing.reinvestRate'));
    return this.#yearly('Modified rate of return', modifiedRateOf(this.#all(whole), finance, reinvest));
  }

  #profitabilityIndex(value: Expression, equipment: MonthRow): Expression {
    const paid = this.#everywhere(this.sheet.row('Equipment paid for', this.#context.money), (month) =>
      smallest(0, equipment.at(month)),
    );
    const invested = this.#single(
      'Present value of what is bought',
      this.#context.money,
      negative(this.#worth(paid)),
      'cents',
    );
    const index = either(isBelow(0, invested), plus(1, over(value, invested)), NOTHING);
    return this.#single('Profitability index', '', index, 'ratio');
  }

  #measures(before: Stream, after: Stream, equipment: MonthRow): ReturnCells {
    const { assumptions, money, basis } = this.#context;
    this.sheet.heading('Measures, loans left out');
    const payback = this.#payback('Payback', (month) => before.flows.at(month));
    const discounted = this.#discounted(before.flows);
    const discountedPayback = this.#payback('Discounted payback', (month) => discounted.at(month));
    const netPresentValue = this.#single('Net present value', money, this.#worth(before.whole), 'cents');
    const level = levelPayment(
      assumptions.at('financing.discountRate'),
      over(basis.horizonMonths, 12),
      netPresentValue,
    );
    const measures = {
      payback,
      discountedPayback,
      netPresentValue,
      yearlyWorth: this.#single('The same as a level amount', `${money} a year`, level, 'cents'),
      rateOfReturn: this.#rateOfReturn(before),
      modifiedRate: this.#modifiedRate(before),
      profitabilityIndex: this.#profitabilityIndex(netPresentValue, equipment),
    };
    this.sheet.heading('Measures of the owner’s own money');
    return {
      ...measures,
      ownPayback: this.#payback('Own money', (month) => after.flows.at(month)),
      ownNetPresentValue: this.#single('Net present value of own money', money, this.#worth(after.whole), 'cents'),
    };
  }
}

/** The sheet of returns against today, and its measures. @param known what the engine found, for whether there is one rate of return */
export function returnSheet(
  context: WorkbookContext,
  plan: Statements,
  today: Statements,
  known: ScenarioReturn,
  title: string,
): { readonly sheet: MonthSheet; readonly cells: ReturnCells } {
  const sheet = new ReturnSheet(context, plan, today, known, title);
  const cells = sheet.cells();
  return { sheet: sheet.sheet, cells };
}
