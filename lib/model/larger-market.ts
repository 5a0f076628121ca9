import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import type { MixShare, ShopSpec } from '../plant/types.ts';
import { busiestWeek } from './market.ts';

/** A product whose week makes less than this share of what the market takes is held back by something else. */
const AT_LIMIT = 0.85;

/** A busiest week less than this share above the week of today is not worth another simulation. */
const WORTHWHILE = 1.01;

/** Larger than any shop can make [kg/week]: growth over decades must not leave the numbers that a file can hold. */
const MOST = 1e9;

function capIn(plan: Plan, entry: MixShare): number | null {
  if (entry.weeklyCap === null) return null;
  const busiest = busiestWeek(plan, findById(plan.products, entry.product.id, 'product'));
  return busiest === null ? entry.weeklyCap : Math.min(MOST, Math.max(entry.weeklyCap, busiest));
}

function isHeldBack({ product, weeklyCap }: MixShare, plant: PlantReport): boolean {
  const made = plant.products.find(({ productId }) => productId === product.id)?.dryOut ?? 0;
  return weeklyCap !== null && made >= AT_LIMIT * weeklyCap;
}

/**
 * The same shop facing the market of its busiest month, with growth, season and the weeks that are not run made up for. Null
 * when that would change little: no product is held back by today's market, or none sells more in any month.
 * @param spec of the week as simulated for today's market
 * @param plant what that week gave
 */
export function largerMarket(plan: Plan, spec: ShopSpec, plant: PlantReport): ShopSpec | null {
  const mix = spec.mix.map((entry) => ({ ...entry, weeklyCap: capIn(plan, entry) }));
  const grows = spec.mix.some((entry, k) => {
    const cap = mix[k]?.weeklyCap ?? 0;
    return isHeldBack(entry, plant) && cap > WORTHWHILE * (entry.weeklyCap ?? 0);
  });
  return grows ? { ...spec, mix } : null;
}
