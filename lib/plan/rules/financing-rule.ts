import { inBase } from '../../inputs/quantity.ts';
import type { Finding } from '../../result.ts';
import type { Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** The loan has months left to be paid back in after its interest-only months. */
export function financingRule(plan: Plan): readonly Finding[] {
  const { graceMonths, loanTerm } = plan.financing;
  if (inBase(graceMonths, 'months') < inBase(loanTerm, 'months')) return [];
  const value = `${graceMonths.value} ${graceMonths.unit}`;
  const problem = 'The interest-only months take up the whole loan term.';
  return [planError('financing.graceMonths', value, problem, 'Shorten them, or lengthen the loan term.')];
}
