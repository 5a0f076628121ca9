import type { Cents } from '../../finance/cents.ts';
import type { LoanMonth } from '../../finance/loan-schedule.ts';
import type { LoanAccount } from '../../model/scenario-result.ts';
import type { YearSpan } from './plan-years.ts';

/** What falls due on all loans in a span of months. @param part what is due of a month's row */
export function loansDue(
  loans: readonly LoanAccount[],
  [from, to]: YearSpan,
  part: (month: LoanMonth) => Cents,
): Cents {
  return loans
    .flatMap((loan) => loan.schedule)
    .filter(({ month }) => month >= from && month < to)
    .reduce((sum, row) => sum + part(row), 0);
}
