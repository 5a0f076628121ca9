import { pow } from '../numeric/portable-math.ts';

/** How much of one product customers take. */
export interface DemandTerms {
  /** At the start of the plan, season evened out [kg/month]; null for no limit. */
  readonly perMonth: number | null;
  /** Weight of each calendar month, January first; only their proportions count. Empty for an even year. */
  readonly seasonality: readonly number[];
  /** [1/year]; each month grows by the twelfth root. */
  readonly growth: number;
}

/**
 * What the market takes of a product in a month [kg]: demand·(1 + growth)^(month/12)·season weight/mean weight; null for no
 * limit. An even year where all weights are 0.
 * @param startMonth calendar month in which the plan starts, 0 = January
 * @param month month of the plan, 0 = first
 */
export function monthlyDemand(terms: DemandTerms, startMonth: number, month: number): number | null {
  const { perMonth, seasonality, growth } = terms;
  if (perMonth === null) return null;
  const grown = perMonth * pow(1 + growth, month / 12);
  const mean = seasonality.reduce((sum, weight) => sum + weight, 0) / 12;
  return mean > 0 ? (grown * (seasonality[(startMonth + month) % 12] ?? 0)) / mean : grown;
}
