import {
  cents,
  type Expression,
  either,
  entryOf,
  isBelow,
  minus,
  over,
  plus,
  smallest,
  times,
  wholePart,
} from './expression.ts';
import type { MonthRow, MonthSheet } from './month-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';

/** The last days of a series as an amount: what customers owe, what lies in stock, what suppliers are owed. */
export function lastDays(
  sheet: MonthSheet,
  amounts: MonthRow,
  soFar: MonthRow,
  months: Expression,
  before: Expression,
  month: number,
): Expression {
  const last = sheet.horizon - 1;
  const since = minus(sheet.month.at(month), months);
  const full = wholePart(since);
  const reached = plus(full, 1);
  const begun = times(minus(since, full), entryOf(amounts.range(0, last), smallest(reached, sheet.horizon)));
  const past = either(isBelow(since, 0), times(before, since), plus(entryOf(soFar.range(-1, last), reached), begun));
  return cents(minus(soFar.at(month), past));
}

/** Days as months. */
export function inMonths({ constants }: WorkbookContext, days: Expression): Expression {
  return over(days, constants.daysPerMonth);
}
