import { annuityPayment } from './annuity.ts';
import { type Cents, toCents } from './cents.ts';

/** What a lender asks. All amounts are positive here: a schedule says what is owed and due. */
export interface LoanTerms {
  /** Amount lent [money]. */
  readonly principal: number;
  /** Nominal annual rate [1/year]; a twelfth of it runs each month. */
  readonly annualRate: number;
  /** Months from the draw to the last payment, grace and interest-only months included. */
  readonly termMonths: number;
  /** First months in which nothing is paid and the interest is added to the debt. */
  readonly graceMonths: number;
  /** Months after the grace in which only interest is paid. */
  readonly interestOnlyMonths: number;
  /** Fee paid when the money is drawn [money]. */
  readonly fee: number;
  /** Month of the plan at whose start it is drawn, 0 = first; below 0 for a loan that was drawn so long ago. */
  readonly drawMonth: number;
  /** True for a debt owed before month 0 of which only what is left is known: it comes in whole and is not drawn. */
  readonly isRunning?: boolean;
}

/** One month of a loan, in whole cents. closing = opening + interest − payment. */
export interface LoanMonth {
  /** Month of the plan. */
  readonly month: number;
  readonly opening: Cents;
  readonly interest: Cents;
  readonly payment: Cents;
  /** Part of the payment that lowers the debt; negative while interest is added to it. */
  readonly principal: Cents;
  readonly closing: Cents;
}

/**
 * Month-by-month schedule of a loan, to the cent: interest is rounded each month, payments are level after the grace and
 * interest-only months, and the last one takes what is left so that the debt ends at exactly 0.
 * Throws RangeError on terms that cannot be: see `requireLoan`.
 */
export function loanSchedule(terms: LoanTerms): LoanMonth[] {
  requireLoan(terms);
  const rows: LoanMonth[] = [];
  let owed = toCents(terms.principal);
  let level = 0;
  for (let k = 0; k < terms.termMonths; k += 1) {
    if (k === terms.graceMonths + terms.interestOnlyMonths) level = levelPayment(terms, owed, terms.termMonths - k);
    const row = loanMonth(terms, k, owed, level);
    rows.push(row);
    owed = row.closing;
  }
  return rows;
}

/** Level monthly payment [cents] that clears a debt. */
function levelPayment(terms: LoanTerms, owed: Cents, months: number): Cents {
  return Math.round(annuityPayment(terms.annualRate / 12, months, -owed));
}

function loanMonth(terms: LoanTerms, k: number, opening: Cents, level: Cents): LoanMonth {
  const interest = Math.round((opening * terms.annualRate) / 12);
  const payment = duePayment(terms, k, opening + interest, interest, level);
  const closing = opening + interest - payment;
  return { month: terms.drawMonth + k, opening, interest, payment, principal: payment - interest, closing };
}

function duePayment(terms: LoanTerms, k: number, owedNow: Cents, interest: Cents, level: Cents): Cents {
  if (k === terms.termMonths - 1) return owedNow;
  if (k < terms.graceMonths) return 0;
  if (k < terms.graceMonths + terms.interestOnlyMonths) return interest;
  return Math.min(level, owedNow);
}

/** Throws RangeError when an amount or rate is negative, or the term leaves no month to repay in. */
function requireLoan(terms: LoanTerms): void {
  const months = [terms.termMonths, terms.graceMonths, terms.interestOnlyMonths, terms.drawMonth];
  if (months.some((count) => !Number.isInteger(count)) || terms.graceMonths < 0 || terms.interestOnlyMonths < 0) {
    throw new RangeError(`loan months must be whole and not negative: ${months.join(', ')}`);
  }
  if (terms.termMonths <= terms.graceMonths + terms.interestOnlyMonths) {
    throw new RangeError(
      `loan of ${terms.termMonths} months leaves none to repay in after ${terms.graceMonths} of grace and ${terms.interestOnlyMonths} of interest only`,
    );
  }
  if (!(terms.principal >= 0) || !(terms.annualRate >= 0) || !(terms.fee >= 0)) {
    throw new RangeError(`loan of ${terms.principal} at ${terms.annualRate}, fee ${terms.fee}: none may be negative`);
  }
}
