/** A moment at which the running total of the flows passes zero again. */
export interface Crossing {
  /** [periods], interpolated. */
  readonly period: number;
  readonly direction: 'above' | 'below';
}

/** When the running total of the flows comes back to zero. */
export type Payback =
  /** It never went below zero. */
  | { readonly kind: 'notNeeded' }
  /** It is still below zero after the last flow, and was ever since it first went below. */
  | { readonly kind: 'never'; readonly missing: number }
  /** It first came back at `period`; `later` lists every crossing after that. */
  | { readonly kind: 'after'; readonly period: number; readonly later: readonly Crossing[] };

/** Running totals within this share of the largest flow count as zero: rounding, not money. */
const ROUNDING = 1e-10;

/**
 * Payback [periods]: the first time the running total, having been below zero, is back at zero. Flow t is taken to come
 * in evenly between t−1 and t, so the moment is interpolated. Later crossings, as when a pump has to be bought again,
 * are given too: the first crossing alone would flatter the purchase.
 * For the discounted payback pass the present values of the flows.
 * @param flows by period from time 0 [money]
 */
export function payback(flows: readonly number[]): Payback {
  const totals = runningTotals(flows);
  if (totals.every((total) => total >= 0)) return { kind: 'notNeeded' };
  const firstBelow = totals.findIndex((total) => total < 0);
  const crossings = findCrossings(totals, firstBelow);
  const [first, ...later] = crossings;
  if (!first) return { kind: 'never', missing: -(totals.at(-1) ?? 0) };
  return { kind: 'after', period: first.period, later };
}

/** Running totals of flows [money], with mere rounding set to zero. @param flows [money] */
export function runningTotals(flows: readonly number[]): number[] {
  const small = ROUNDING * flows.reduce((largest, flow) => Math.max(largest, Math.abs(flow)), 0);
  let total = 0;
  return flows.map((flow) => {
    total += flow;
    return Math.abs(total) <= small ? 0 : total;
  });
}

function findCrossings(totals: readonly number[], from: number): Crossing[] {
  const crossings: Crossing[] = [];
  for (let period = from + 1; period < totals.length; period += 1) {
    const before = totals[period - 1] ?? 0;
    const after = totals[period] ?? 0;
    if (before < 0 === after < 0) continue;
    crossings.push({ period: period - 1 + before / (before - after), direction: after < 0 ? 'below' : 'above' });
  }
  return crossings;
}
