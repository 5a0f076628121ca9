import { type Cents, toCents } from './cents.ts';
import { type LoanMonth, type LoanTerms, loanSchedule } from './loan-schedule.ts';

/** All loans together by month of the plan, in whole cents, all positive. */
export interface LoanBook {
  /** Owed before the first month, on loans drawn earlier. */
  readonly opening: Cents;
  /** Drawn at the start of each month. */
  readonly drawn: readonly Cents[];
  readonly fees: readonly Cents[];
  /** Interest that ran, paid or added to the debt. */
  readonly interest: readonly Cents[];
  /** Interest that was not paid but added to the debt. */
  readonly interestAdded: readonly Cents[];
  /** Principal paid back at the end of each month. */
  readonly principal: readonly Cents[];
  /** Interest and principal paid at the end of each month: interest − interestAdded + principal. */
  readonly payments: readonly Cents[];
  /** Owed at the end of each month. */
  readonly owed: readonly Cents[];
}

/**
 * Several loans added up over the months of a plan. A loan drawn before month 0 comes in with what is still owed, one
 * that runs already with all of it and without a fee; one
 * drawn at or after the horizon is left out.
 * @param loans terms of each loan
 * @param horizonMonths months of the plan
 */
export function loanBook(loans: readonly LoanTerms[], horizonMonths: number): LoanBook {
  const schedules = loans.map(loanSchedule);
  const byMonth = (pick: (row: LoanMonth) => Cents) => addRows(schedules, pick, horizonMonths);
  return {
    opening: loans.reduce((sum, loan, k) => sum + owedBefore(loan, schedules[k] ?? []), 0),
    drawn: atDraw(loans, (loan) => loan.principal, horizonMonths),
    fees: atDraw(loans, (loan) => loan.fee, horizonMonths),
    interest: byMonth((row) => row.interest),
    interestAdded: byMonth((row) => Math.max(0, 0 - row.principal)),
    principal: byMonth((row) => Math.max(0, row.principal)),
    payments: byMonth((row) => row.payment),
    owed: byMonth((row) => row.closing),
  };
}

/** Owed at the start of month 0 [cents]. */
function owedBefore(loan: LoanTerms, schedule: readonly LoanMonth[]): Cents {
  if (loan.isRunning) return schedule.find((row) => row.month === 0)?.opening ?? 0;
  return schedule.find((row) => row.month === -1)?.closing ?? 0;
}

function addRows(
  schedules: readonly (readonly LoanMonth[])[],
  pick: (row: LoanMonth) => Cents,
  horizonMonths: number,
): Cents[] {
  const totals = new Array<Cents>(horizonMonths).fill(0);
  for (const row of schedules.flat()) {
    if (row.month >= 0 && row.month < horizonMonths) totals[row.month] = (totals[row.month] ?? 0) + pick(row);
  }
  return totals;
}

function atDraw(loans: readonly LoanTerms[], amount: (loan: LoanTerms) => number, horizonMonths: number): Cents[] {
  return Array.from({ length: horizonMonths }, (_, month) =>
    loans.reduce((sum, loan) => sum + (loan.drawMonth === month && !loan.isRunning ? toCents(amount(loan)) : 0), 0),
  );
}
