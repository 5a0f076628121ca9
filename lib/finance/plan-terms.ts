import type { CapitalPurchase } from './capital-assets.ts';
import type { LoanTerms } from './loan-schedule.ts';
import type { TaxTerms } from './tax-ledger.ts';
import type { WorkingCapitalTerms } from './working-capital.ts';

/**
 * All that a projection needs. Months are counted from 0; month m runs from time m to time m + 1. Purchases, sales of
 * equipment and loan draws happen at its start, everything else by its end. Amounts here are positive (a cost of 100 is
 * 100); in the results money out is negative. Plan years are months 0–11, 12–23 … and are taken to be tax years.
 */
export interface PlanTerms {
  /** Whole months, ≥ 1. Every series below has this many values. */
  readonly horizonMonths: number;
  /** Sales by month [money]. */
  readonly revenue: readonly number[];
  /** Costs that rise and fall with what is made, by month [money]. */
  readonly variableCosts: readonly number[];
  /** Costs that run on regardless, by month [money]. */
  readonly fixedCosts: readonly number[];
  /** What goods made and not sold have cost, at the end of each month [money]; those costs are not in `variableCosts` yet. */
  readonly stockValue: readonly number[];
  readonly purchases: readonly CapitalPurchase[];
  readonly loans: readonly LoanTerms[];
  readonly tax: TaxTerms;
  readonly workingCapital: WorkingCapitalTerms;
  /** Each month before the plan [money]; 0 for a new shop. */
  readonly before: { readonly revenue: number; readonly variableCosts: number };
  /** Cash in hand before month 0 [money]. */
  readonly openingCash: number;
  /** Put in by the owner, by month [money]. */
  readonly ownerPaidIn: readonly number[];
  /** Taken out by the owner, by month [money]. */
  readonly ownerDraws: readonly number[];
}

/** Throws RangeError when a series has another length than the horizon, or holds something other than a number ≥ 0. */
export function requirePlan(terms: PlanTerms): void {
  const { horizonMonths, revenue, variableCosts, fixedCosts, stockValue, ownerPaidIn, ownerDraws } = terms;
  if (!Number.isInteger(horizonMonths) || horizonMonths < 1) throw new RangeError(`horizon of ${horizonMonths} months`);
  for (const [name, series] of Object.entries({
    revenue,
    variableCosts,
    fixedCosts,
    stockValue,
    ownerPaidIn,
    ownerDraws,
  })) {
    if (series.length !== horizonMonths) {
      throw new RangeError(`${name} has ${series.length} months, the plan ${horizonMonths}`);
    }
    const wrong = series.find((amount) => !(amount >= 0));
    if (wrong !== undefined) throw new RangeError(`${name} holds ${wrong}, which is not 0 or more`);
  }
}
