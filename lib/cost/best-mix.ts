import { solveLinearProgram } from '../numeric/linear-program.ts';
import { requireAmounts } from './require-amounts.ts';

/** One product that could be made. A unit is whatever the caller counts in: a batch, a kilogram. */
export interface MixProduct {
  readonly productId: string;
  /** Revenue less running cost of one unit [money]. */
  readonly contribution: number;
  /** Time one unit takes of each resource, by name; a resource not named is not used [s]. */
  readonly uses: Readonly<Record<string, number>>;
  /** Most units the market takes; null for no limit. */
  readonly demand: number | null;
}

export interface BestMix {
  /** Units of each product, in the order given. */
  readonly units: readonly number[];
  /** [money] */
  readonly contribution: number;
  /** What one more hour of each resource would bring [money/h]; 0 where there is enough of it. */
  readonly worthOfHour: Readonly<Record<string, number>>;
}

export type BestMixOutcome =
  | ({ readonly kind: 'best' } & BestMix)
  /** This product pays and nothing holds it back: a resource or a demand is missing. */
  | { readonly kind: 'unlimited'; readonly productId: string }
  /** The solver went in circles. */
  | { readonly kind: 'notSolved' };

/**
 * The mix of products that brings the most, under the time there is of each resource and what the market takes.
 * A linear program: ranking by contribution per hour of the one jammed resource can fail when two are jammed.
 * Source: goldratt-haystack, the P-Q problem, for the ranking with one jam.
 * Throws RangeError on a negative time, demand or capacity, or a resource used that has no capacity given.
 * @param capacity time there is of each resource, by name [s]
 */
export function bestMix(products: readonly MixProduct[], capacity: Readonly<Record<string, number>>): BestMixOutcome {
  requireMix(products, capacity);
  const names = Object.keys(capacity);
  const limited = products.flatMap((product, k) => (product.demand === null ? [] : [{ k, demand: product.demand }]));
  const outcome = solveLinearProgram({
    gain: products.map((product) => product.contribution),
    uses: [
      ...names.map((name) => products.map((product) => product.uses[name] ?? 0)),
      ...limited.map(({ k }) => products.map((_, other) => (other === k ? 1 : 0))),
    ],
    limits: [...names.map((name) => capacity[name] ?? 0), ...limited.map(({ demand }) => demand)],
  });
  if (outcome.kind === 'notSolved') return outcome;
  if (outcome.kind === 'unbounded')
    return { kind: 'unlimited', productId: products[outcome.activity]?.productId ?? '' };
  const worthOfHour = Object.fromEntries(names.map((name, row) => [name, 3600 * (outcome.shadowPrices[row] ?? 0)]));
  return { kind: 'best', units: outcome.amounts, contribution: outcome.value, worthOfHour };
}

function requireMix(products: readonly MixProduct[], capacity: Readonly<Record<string, number>>): void {
  requireAmounts(capacity);
  for (const product of products) {
    requireAmounts(product.uses);
    requireAmounts({ demand: product.demand ?? 0 });
    const missing = Object.keys(product.uses).find((name) => !(name in capacity));
    if (missing !== undefined) throw new RangeError(`"${product.productId}" uses "${missing}", which has no capacity`);
  }
}
