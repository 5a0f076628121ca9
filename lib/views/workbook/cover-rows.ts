import {
  cents,
  countOf,
  type Expression,
  either,
  isBelow,
  isEqual,
  lowestOf,
  minus,
  NOTHING,
  over,
  sumOf,
  times,
} from './expression.ts';
import type { MonthRow, MonthSheet } from './month-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';

/** How well earnings cover loan payments. */
export interface CoverRows {
  /** The lowest of any twelve months; and with the owner's hours paid. */
  readonly lowestCover: Expression;
  readonly lowestCoverOwnerPaid: Expression;
}

/** Puts the debt cover of every twelve months on a sheet. */
export function coverRows(
  context: WorkbookContext,
  sheet: MonthSheet,
  earned: MonthRow,
  payments: MonthRow,
): CoverRows {
  const { assumptions, constants, money } = context;
  sheet.heading('Debt cover of the twelve months up to each');
  const owner = times(assumptions.at('crew.ownerHours'), assumptions.at('crew.ownerRate'), constants.weeksPerMonth);
  const pay = sheet.row("Worth of the owner's hours", money).fill(sheet.horizon, () => cents(owner));
  const year = (row: MonthRow, month: number) => sumOf(row.range(month - 11, month));
  return {
    lowestCover: lowestOfRow(sheet, payments, 'Earnings over payments', (month) => year(earned, month)),
    lowestCoverOwnerPaid: lowestOfRow(sheet, payments, "The same with the owner's hours paid", (month) =>
      minus(year(earned, month), year(pay, month)),
    ),
  };
}

function lowestOfRow(
  sheet: MonthSheet,
  payments: MonthRow,
  label: string,
  earned: (month: number) => Expression,
): Expression {
  const row = sheet.row(label, '', 'ratio');
  for (let month = 11; month < sheet.horizon; month += 1) {
    const due = sumOf(payments.range(month - 11, month));
    row.set(month, either(isBelow(0, due), over(earned(month), due), NOTHING));
  }
  const all = row.range(11, sheet.horizon - 1);
  const cell = sheet.draft.takeRow();
  sheet.draft.text(cell, 0, `${label}: lowest`, 'total');
  const lowest = either(isEqual(countOf(all), 0), NOTHING, lowestOf(all));
  return sheet.draft.formula(cell, 2, lowest, 'ratio', 'total');
}
