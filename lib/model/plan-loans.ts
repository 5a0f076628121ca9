import type { LoanTerms } from '../finance/loan-schedule.ts';
import { type BaseValues, baseValues } from '../inputs/base-values.ts';
import type { Loan, Plan } from '../plan/plan-types.ts';

/** Things bought together. */
export interface PlannedPurchase {
  /** Month of the plan at whose start they are paid for. */
  readonly month: number;
  /** All that is paid for them less what is received for old equipment [money]. */
  readonly capital: number;
}

/** A loan of the plan as it is drawn: once, or once for each purchase. */
export interface DrawnLoan {
  readonly id: string;
  readonly name: string;
  readonly terms: LoanTerms;
}

/** Terms of a loan on a sum. The financing rule sees to it that months are left to repay in. */
function termsOf(base: BaseValues<'loan'>, principal: number, drawMonth: number): LoanTerms {
  return {
    principal,
    annualRate: base.rate,
    termMonths: Math.max(1, Math.round(base.term)),
    graceMonths: Math.round(base.graceMonths),
    interestOnlyMonths: Math.round(base.interestOnlyMonths),
    fee: base.fee * principal,
    drawMonth,
  };
}

function drawnFor(loan: Loan, purchases: readonly PlannedPurchase[]): LoanTerms[] {
  const base = baseValues('loan', loan);
  const start = Math.round(base.startMonth);
  const paid = purchases.filter((purchase) => purchase.capital > 0);
  switch (base.basis) {
    case 'running':
      return [{ ...termsOf(base, base.amount, 0), fee: 0, isRunning: true }];
    case 'amount':
      return paid.slice(0, 1).map((first) => termsOf(base, base.amount, first.month + start));
    case 'share':
      return paid.map((purchase) => termsOf(base, purchase.capital * base.share, purchase.month + start));
  }
}

/**
 * The loans of a plan as they are drawn for some purchases: shares of every purchase when it is made, fixed sums with the
 * first, and debt that runs already whatever is bought. Nothing is lent where nothing is bought.
 * @param purchases in order of month
 */
export function planLoans(plan: Plan, purchases: readonly PlannedPurchase[]): DrawnLoan[] {
  return plan.financing.loans.flatMap((loan) =>
    drawnFor(loan, purchases)
      .filter((terms) => terms.principal > 0)
      .map((terms) => ({ id: loan.id, name: loan.name, terms })),
  );
}
