import { annuityPayment } from './annuity.ts';
import { netPresentValue } from './net-present-value.ts';

/** Terms of owning one thing for its whole life. Amounts are given as positive prices. */
export interface OwnershipTerms {
  /** Price with installation [money]. */
  readonly price: number;
  /** What it fetches at the end of its life [money]. */
  readonly salvage: number;
  /** Useful life [year], need not be whole. */
  readonly lifeYears: number;
  /** Running cost at the end of each year [money/year]. */
  readonly yearlyCost: number;
}

/**
 * Equivalent annual cost [money/year], negative: the level yearly payment worth the same as owning the thing.
 * −price·(A/P) + salvage·(A/F) − yearly cost. Compares things of unequal life, each bought again when worn out.
 * Source: white-case-pratt, chapter 11.
 * Throws RangeError when the life is not above 0.
 * @param rate annual effective, > −1 [1/year]
 */
export function equivalentAnnualCost(rate: number, terms: OwnershipTerms): number {
  return annuityPayment(rate, terms.lifeYears, terms.price, -terms.salvage) - terms.yearlyCost;
}

/**
 * Level yearly flow [money/year] worth the same as flows at times 0 to n years: NPV·(A/P, n). Negative for a cost.
 * Throws RangeError when there is no flow after time 0.
 * @param rate annual effective, > −1 [1/year]
 * @param flows by year from time 0 [money]
 */
export function equivalentAnnualFlow(rate: number, flows: readonly number[]): number {
  return -annuityPayment(rate, flows.length - 1, netPresentValue(rate, flows)) + 0;
}
