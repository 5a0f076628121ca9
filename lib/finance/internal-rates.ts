import { positiveRoots } from '../numeric/polynomial-roots.ts';

/** Every rate per period at which the flows are worth nothing, ascending; or why there is none. */
export type InternalRates =
  | { readonly kind: 'none'; readonly reason: 'noFlows' | 'oneSign' | 'neverZero' }
  | { readonly kind: 'one'; readonly rate: number }
  | { readonly kind: 'several'; readonly rates: readonly number[] };

/**
 * Internal rates of return [1/period]: all r > −1 with Σ flow_t/(1+r)^t = 0.
 * Found as every positive root in x = 1/(1+r), so none is missed and none depends on a first guess. Flows that change
 * sign more than once may have several, and then none of them is *the* return: look at net present value instead.
 * Throws RangeError on a flow that is not finite and on more than 1001 flows.
 * @param flows by period from time 0 [money]
 */
export function internalRates(flows: readonly number[]): InternalRates {
  const paid = flows.some((flow) => flow < 0);
  const received = flows.some((flow) => flow > 0);
  const rates = positiveRoots(flows)
    .map((root) => 1 / root - 1)
    .toReversed();
  if (!paid && !received) return { kind: 'none', reason: 'noFlows' };
  if (!paid || !received) return { kind: 'none', reason: 'oneSign' };
  return toOutcome(rates);
}

/** The same outcome with each rate passed through a function that keeps their order. */
export function mapRates(outcome: InternalRates, change: (rate: number) => number): InternalRates {
  if (outcome.kind === 'none') return outcome;
  if (outcome.kind === 'one') return { kind: 'one', rate: change(outcome.rate) };
  return { kind: 'several', rates: outcome.rates.map(change) };
}

function toOutcome(rates: readonly number[]): InternalRates {
  const [first, ...others] = rates;
  if (first === undefined) return { kind: 'none', reason: 'neverZero' };
  return others.length === 0 ? { kind: 'one', rate: first } : { kind: 'several', rates };
}
