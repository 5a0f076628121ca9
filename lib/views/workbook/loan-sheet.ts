import type { BasisLoan } from '../../model/lender-basis-types.ts';
import { findById } from '../../plan/find-by-id.ts';
import {
  cents,
  type Expression,
  either,
  isAtMost,
  isBelow,
  isEqual,
  largest,
  levelPayment,
  minus,
  over,
  plus,
  reference,
  smallest,
  times,
} from './expression.ts';
import { type MonthRow, MonthSheet } from './month-sheet.ts';
import { loanPath } from './plan-paths.ts';
import type { PurchaseSheet } from './purchase-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';

/** One loan with its schedule, all positive but the principal while interest is added. */
interface LoanRows {
  readonly loan: BasisLoan;
  readonly drawn: MonthRow;
  readonly fee: MonthRow;
  readonly interest: MonthRow;
  readonly principal: MonthRow;
  readonly payment: MonthRow;
  readonly closing: MonthRow;
}

/** Several loans added up by month, all positive. */
export interface DebtRows {
  /** Owed before the first month. */
  readonly opening: Expression;
  readonly drawn: MonthRow;
  readonly fees: MonthRow;
  readonly interest: MonthRow;
  readonly interestAdded: MonthRow;
  readonly principal: MonthRow;
  readonly payments: MonthRow;
  readonly owed: MonthRow;
}

/** Terms of one loan as cells. */
interface LoanCells {
  readonly loan: BasisLoan;
  /** Month in which it is drawn, 1 for the first. */
  readonly draw: Expression;
  readonly principal: Expression;
  readonly fee: Expression;
  readonly rate: Expression;
  readonly term: Expression;
  readonly grace: Expression;
  /** Months at the start in which no debt is paid off. */
  readonly quiet: Expression;
}

const ZERO = reference('0', 0);

/** The sheet of loans: a schedule of each to its end, and their sums. */
export class LoanSheet {
  readonly sheet: MonthSheet;
  readonly #context: WorkbookContext;
  readonly #purchases: PurchaseSheet;
  readonly #loans: readonly LoanRows[];

  /** @param months columns, so many that every loan ends within them */
  constructor(context: WorkbookContext, purchases: PurchaseSheet, months: number) {
    this.#context = context;
    this.#purchases = purchases;
    this.sheet = new MonthSheet('Loans', 'Loans, each to its end', months, context.basis.startMonth);
    this.#loans = context.basis.loans.map((loan) => this.#loan(loan));
  }

  /** Sums over the months of the plan. @param runningOnly debt of today alone */
  debt(name: string, runningOnly: boolean): DebtRows {
    const { money, basis } = this.#context;
    const loans = this.#loans.filter(({ loan }) => loan.isRunning || !runningOnly);
    this.sheet.heading(`All loans: ${name}`);
    const total = (label: string, of: (rows: LoanRows, month: number) => Expression) =>
      this.sheet
        .row(label, money, 'cents', 'total')
        .fill(basis.horizonMonths, (month) =>
          loans.length === 0 ? ZERO : plus(...loans.map((rows) => of(rows, month))),
        );
    return {
      opening: loans.length === 0 ? ZERO : plus(...loans.map((rows) => rows.closing.at(-1))),
      drawn: total('Drawn', (rows, month) => rows.drawn.at(month)),
      fees: total('Fees', (rows, month) => rows.fee.at(month)),
      interest: total('Interest', (rows, month) => rows.interest.at(month)),
      interestAdded: total('Interest added to the debt', (rows, month) =>
        largest(0, minus(0, rows.principal.at(month))),
      ),
      principal: total('Principal paid', (rows, month) => largest(0, rows.principal.at(month))),
      payments: total('Payments', (rows, month) => rows.payment.at(month)),
      owed: total('Owed at the end', (rows, month) => rows.closing.at(month)),
    };
  }

  #principalOf({ id, drawMonth }: BasisLoan): Expression {
    const { plan, assumptions } = this.#context;
    const path = loanPath(plan, id);
    const loan = findById(plan.financing.loans, id, 'loan');
    if (loan.basis !== 'share') return cents(assumptions.at(`${path}.amount`));
    const start = assumptions.at(`${path}.startMonth`).value;
    const stage = this.#purchases.stages.find((candidate) => candidate.month + start === drawMonth);
    if (!stage) throw new RangeError(`no purchase for the loan drawn in month ${drawMonth}`);
    return cents(times(stage.capital, assumptions.at(`${path}.share`)));
  }

  #terms(loan: BasisLoan): LoanCells {
    const { plan, assumptions, money } = this.#context;
    const { draft } = this.sheet;
    const at = (key: string) => assumptions.at(`${loanPath(plan, loan.id)}.${key}`);
    const line = (label: string, unit: string) => {
      const row = draft.takeRow();
      draft.text(row, 0, label);
      draft.text(row, 1, unit, 'note');
      return row;
    };
    this.sheet.heading(loan.name);
    const drawRow = line(loan.isRunning ? 'Runs already; counted from month' : 'Drawn at the start of month', '');
    const draw = draft.number(drawRow, 2, loan.drawMonth + 1, 'label', 'count');
    const principal = draft.formula(line('Sum', money), 2, this.#principalOf(loan), 'cents');
    const fee = loan.isRunning ? ZERO : cents(times(at('fee'), principal));
    const [grace, interestOnly] = [at('graceMonths'), at('interestOnlyMonths')];
    return {
      loan,
      draw,
      principal,
      fee: draft.formula(line('Fee', money), 2, fee, 'cents'),
      rate: at('rate'),
      term: at('term'),
      grace,
      quiet: plus(grace, interestOnly),
    };
  }

  #loan(loan: BasisLoan): LoanRows {
    const { money } = this.#context;
    const cells = this.#terms(loan);
    const { sheet } = this;
    const age = sheet.row('Months since it was drawn', '', 'count');
    const rows = {
      drawn: sheet.row('Drawn', money),
      fee: sheet.row('Fee', money),
      opening: sheet.row('Owed at the start', money),
      interest: sheet.row('Interest', money),
      level: sheet.row('Level payment', money),
      payment: sheet.row('Payment', money),
      principal: sheet.row('Principal', money),
      closing: sheet.row('Owed at the end', money),
    };
    rows.closing.set(-1, loan.isRunning ? cells.principal : ZERO);
    rows.level.count(-1, 0);
    for (let month = 0; month < sheet.horizon; month += 1) {
      const k = age.set(month, minus(sheet.month.at(month), cells.draw));
      this.#fillMonth(cells, rows, month, k);
    }
    return { loan, ...rows };
  }

  #fillMonth(
    { loan, principal, fee, rate, term, grace, quiet }: LoanCells,
    rows: Readonly<
      Record<'drawn' | 'fee' | 'opening' | 'interest' | 'level' | 'payment' | 'principal' | 'closing', MonthRow>
    >,
    month: number,
    k: Expression,
  ): void {
    const isDrawn = isEqual(k, 0);
    rows.drawn.set(month, loan.isRunning ? ZERO : either(isDrawn, principal, 0));
    rows.fee.set(month, either(isDrawn, fee, 0));
    const before = rows.closing.at(month - 1);
    const opening = rows.opening.set(month, loan.isRunning ? before : plus(before, rows.drawn.at(month)));
    const interest = rows.interest.set(month, cents(over(times(opening, rate), 12)));
    const fresh = cents(levelPayment(over(rate, 12), minus(term, k), opening));
    const level = rows.level.set(month, either(isEqual(k, quiet), fresh, rows.level.at(month - 1)));
    const owed = plus(opening, interest);
    const due = either(
      isAtMost(minus(term, 1), k),
      owed,
      either(isBelow(k, grace), 0, either(isBelow(k, quiet), interest, smallest(level, owed))),
    );
    const payment = rows.payment.set(month, either(isAtMost(0, k), due, 0));
    const paidOff = rows.principal.set(month, minus(payment, interest));
    rows.closing.set(month, cents(minus(opening, paidOff)));
  }
}
