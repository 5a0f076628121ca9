import { baseValues } from '../../inputs/base-values.ts';
import { runningWeeksPerMonth } from '../../model/market.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { Output } from './lone-output.ts';
import type { Making } from './making.ts';
import { handsPrice } from './making.ts';
import { demandIn, type Span } from './margin-ceiling.ts';
import { remembered } from './remembered.ts';

/** Price less materials and hired hands [money/kg fit for sale], in the chamber where it is best. */
function marginPerKilogram(plan: Plan, ways: readonly Making[], productId: string): number {
  const price = handsPrice(plan);
  const own = ways.filter((way) => way.productId === productId && way.saleable > 0);
  return Math.max(0, ...own.map((way) => (way.margin - price * way.hands) / way.saleable));
}

/** What the market takes over some months [kg], by product and span; null for no limit. */
export type Demands = Map<string, number | null>;

function knownDemand(plan: Plan, id: string, span: Span, known: Demands): number | null {
  return remembered(known, `${id} ${span.from} ${span.until}`, () => demandIn(plan, id, span));
}

/** About what sales less running cost come to over some months [money]: what is made, as far as the market takes it. @param known kept between calls */
export function marginEstimate(
  plan: Plan,
  ways: readonly Making[],
  output: Output,
  span: Span,
  known: Demands,
): number {
  const weeks = runningWeeksPerMonth(plan) * (span.until - span.from);
  return [...output].reduce((sum, [id, dry]) => {
    const { saleableYield } = baseValues('product', findById(plan.products, id, 'product'));
    const sold = Math.min(dry * saleableYield * weeks, knownDemand(plan, id, span, known) ?? Number.POSITIVE_INFINITY);
    return sum + sold * marginPerKilogram(plan, ways, id);
  }, 0);
}
