import {
  allOf,
  anyOf,
  cents,
  centsDown,
  type Expression,
  either,
  isBelow,
  isEqual,
  largest,
  minus,
  plus,
  remainder,
  smallest,
  times,
} from './expression.ts';
import type { MonthRow, MonthSheet } from './month-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';

/** Tax by month on one line of profit. */
export interface TaxRows {
  /** What the month's profit brings; negative when a loss lowers the year's tax. */
  readonly expense: MonthRow;
  readonly paid: MonthRow;
  readonly payable: MonthRow;
  /** Losses not yet used, at the end of the plan. */
  readonly lossCarried: Expression;
}

/** Losses that may be taken off a year's profit. */
function usedLoss({ assumptions }: WorkbookContext, profit: Expression, loss: Expression): Expression {
  return smallest(loss, centsDown(times(largest(0, profit), assumptions.at('financing.lossOffset'))));
}

/** Losses carried out of a year. */
function lossAfter(context: WorkbookContext, profit: Expression, loss: Expression): Expression {
  return cents(plus(minus(loss, usedLoss(context, profit, loss)), largest(0, minus(0, profit))));
}

/** Tax on a year's profit so far. */
function yearTax(context: WorkbookContext, profit: Expression, loss: Expression): Expression {
  const taxable = minus(profit, usedLoss(context, profit, loss));
  return either(isBelow(0, profit), cents(times(taxable, context.assumptions.at('financing.taxRate'))), 0);
}

/** Puts the rows of a tax reckoning on a sheet. @param profit taxable, by month */
export function taxRows(
  context: WorkbookContext,
  sheet: MonthSheet,
  heading: string,
  profit: (month: number) => Expression,
): TaxRows {
  const { assumptions, money } = context;
  sheet.heading(heading);
  const soFar = sheet.row('Profit of the year so far', money);
  const loss = sheet.row('Losses brought in', money);
  const tax = sheet.row('Tax of the year so far', money);
  const expense = sheet.row('Tax of the month', money);
  const paid = sheet.row('Tax paid', money);
  const payable = sheet.row('Tax owed at the end', money);
  payable.count(-1, 0);
  for (let month = 0; month < sheet.horizon; month += 1) {
    const now = sheet.month.at(month);
    const isFirst = isEqual(remainder(minus(now, 1), 12), 0);
    const begins = month === 0;
    soFar.set(
      month,
      begins ? cents(profit(month)) : cents(either(isFirst, profit(month), plus(soFar.at(month - 1), profit(month)))),
    );
    const carried = begins ? null : lossAfter(context, soFar.at(month - 1), loss.at(month - 1));
    if (carried) loss.set(month, either(isFirst, carried, loss.at(month - 1)));
    else loss.count(month, 0);
    tax.set(month, yearTax(context, soFar.at(month), loss.at(month)));
    expense.set(month, begins ? tax.at(month) : cents(minus(tax.at(month), either(isFirst, 0, tax.at(month - 1)))));
    const owed = plus(payable.at(month - 1), expense.at(month));
    const isYearEnd = isEqual(remainder(now, 12), 0);
    const isDue = allOf(isEqual(remainder(now, assumptions.at('financing.taxSettled')), 0), isBelow(0, owed));
    paid.set(month, either(anyOf(isYearEnd, isDue), owed, 0));
    payable.set(month, cents(minus(owed, paid.at(month))));
  }
  const last = sheet.horizon - 1;
  const row = sheet.draft.takeRow();
  sheet.draft.text(row, 0, 'Losses left at the end of the plan');
  const lossCarried = sheet.draft.formula(row, 2, lossAfter(context, soFar.at(last), loss.at(last)), 'cents');
  return { expense, paid, payable, lossCarried };
}
