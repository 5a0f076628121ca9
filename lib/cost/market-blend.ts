import { requireAmounts } from './require-amounts.ts';

/** One product in a month of two ways to run the shop. */
export interface BlendProduct {
  /** Fit for sale if the month is run as for today's market [kg]. */
  readonly today: number;
  /** Fit for sale if it is run as for a larger market [kg]. */
  readonly larger: number;
  /** What the market takes in the month [kg]; null for no limit. */
  readonly demand: number | null;
  /** Price less running cost [money/kg]. */
  readonly margin: number;
}

/**
 * How much of a month to run as for a larger market [–], 0–1, the rest as for today's: the share that brings in most. What
 * is brought in, Σ margin·min((1 − s)·today + s·larger, demand), is bent only where a product meets its demand, so that the
 * best share is one of those, 0 or 1; of equals the smallest is taken. Any mixture of two weeks that can be run can
 * be run too, which a week for each product on its own could not.
 * Source: derived.
 * Throws RangeError on a negative amount.
 */
export function marketBlend(products: readonly BlendProduct[]): number {
  for (const { today, larger, demand } of products) requireAmounts({ today, larger, demand: demand ?? 0 });
  const shares = [0, 1, ...products.flatMap(meetsDemandAt)].sort((a, b) => a - b);
  let best = 0;
  for (const share of shares) if (broughtIn(products, share) > broughtIn(products, best) + ROUNDING) best = share;
  return best;
}

/** Less than this is rounding [money]: a thousandth of a cent. */
const ROUNDING = 1e-5;

function meetsDemandAt({ today, larger, demand }: BlendProduct): number[] {
  if (demand === null || today === larger) return [];
  const share = (demand - today) / (larger - today);
  return share > 0 && share < 1 ? [share] : [];
}

function broughtIn(products: readonly BlendProduct[], share: number): number {
  return products.reduce((sum, { today, larger, demand, margin }) => {
    const made = (1 - share) * today + share * larger;
    return sum + margin * (demand === null ? made : Math.min(made, demand));
  }, 0);
}
