import { inBase } from '../../inputs/quantity.ts';
import type { Finding } from '../../result.ts';
import type { Loan, Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** Room for rounding when shares are given in per cent. */
const ROUNDING = 1e-9;

function months(loan: Loan, key: 'term' | 'graceMonths' | 'interestOnlyMonths'): number {
  return Math.round(inBase(loan[key], 'months'));
}

/** Each loan has months left to be paid back in. */
function termFindings(loan: Loan, path: string): readonly Finding[] {
  const free = months(loan, 'graceMonths') + months(loan, 'interestOnlyMonths');
  if (free < Math.max(1, months(loan, 'term'))) return [];
  const value = `${loan.term.value} ${loan.term.unit}`;
  const problem = `Grace and interest-only months take up the whole term of "${loan.name}".`;
  return [planError(`${path}.term`, value, problem, 'Shorten them, or lengthen the term.')];
}

/** Loans on a share of purchases do not lend more than is bought. */
function shareFindings(loans: readonly Loan[]): readonly Finding[] {
  const lent = loans.filter((loan) => loan.basis === 'share');
  const whole = lent.reduce((sum, loan) => sum + inBase(loan.share, 'fraction'), 0);
  if (whole <= 1 + ROUNDING) return [];
  const place = loans.findLastIndex((loan) => loan.basis === 'share');
  const shown = `${Number((100 * whole).toFixed(2))} %`;
  const problem = `Loans together pay ${shown} of every purchase.`;
  return [planError(`financing.loans.${place}.share`, shown, problem, 'Make their shares sum to 100 % or less.')];
}

/** The loans can be paid back and lend no more than is bought. */
export function financingRule(plan: Plan): readonly Finding[] {
  const { loans } = plan.financing;
  return [...loans.flatMap((loan, i) => termFindings(loan, `financing.loans.${i}`)), ...shareFindings(loans)];
}
