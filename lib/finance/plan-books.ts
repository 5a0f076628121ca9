import { type AssetBook, assetBook } from './capital-assets.ts';
import { type Cents, toCents } from './cents.ts';
import { type LoanBook, loanBook } from './loan-book.ts';
import type { PlanTerms } from './plan-terms.ts';
import { addSeries } from './series.ts';
import { type WorkingCapital, workingCapital } from './working-capital.ts';

/** The plan in whole cents, before any statement is made of it. All amounts positive, by month. */
export interface PlanBooks {
  readonly revenue: readonly Cents[];
  readonly variableCosts: readonly Cents[];
  readonly fixedCosts: readonly Cents[];
  readonly ownerPaidIn: readonly Cents[];
  readonly ownerDraws: readonly Cents[];
  readonly openingCash: Cents;
  readonly assets: AssetBook;
  readonly loans: LoanBook;
  readonly capital: WorkingCapital;
}

/** Rounds a plan to whole cents once, so that all three statements are made of the same integers. */
export function planBooks(terms: PlanTerms): PlanBooks {
  const revenue = terms.revenue.map(toCents);
  const variableCosts = terms.variableCosts.map(toCents);
  return {
    revenue,
    variableCosts,
    fixedCosts: terms.fixedCosts.map(toCents),
    ownerPaidIn: terms.ownerPaidIn.map(toCents),
    ownerDraws: terms.ownerDraws.map(toCents),
    openingCash: toCents(terms.openingCash),
    assets: assetBook(terms.purchases, terms.horizonMonths),
    loans: loanBook(terms.loans, terms.horizonMonths),
    capital: withStock(workingCapital(revenue, variableCosts, terms.workingCapital, terms.before), terms.stockValue),
  };
}

/** Goods made and not sold lie in stock beside what the days of stock say; none are there at the start. */
function withStock(capital: WorkingCapital, stockValue: readonly number[]): WorkingCapital {
  return { ...capital, inventory: addSeries(capital.inventory, [0, ...stockValue.map(toCents)]) };
}
