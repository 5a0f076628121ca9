import { exp, log1p } from '../numeric/portable-math.ts';

/**
 * Net present value [money]: Σ flow_t/(1+r)^t, t = 0, 1, 2 …
 * The first flow is at time 0 and is not discounted. Spreadsheets' NPV discounts the first flow by one period:
 * theirs is this one divided by (1+r). 0 for no flows.
 * Source: numpy-financial, documentation of `npv`.
 * Throws RangeError at a rate of −1 or below.
 * @param rate per period, > −1; for monthly flows and an annual effective rate use `monthlyRate`
 * @param flows by period from time 0 [money]
 */
export function netPresentValue(rate: number, flows: readonly number[]): number {
  return presentValues(rate, flows).reduce((sum, value) => sum + value, 0);
}

/** Each flow brought back to time 0 [money]. Parameters as `netPresentValue`. */
export function presentValues(rate: number, flows: readonly number[]): number[] {
  if (!(rate > -1) || !Number.isFinite(rate)) throw new RangeError(`discount rate ${rate} must be a number above -1`);
  const logarithm = log1p(rate);
  return flows.map((flow, period) => flow * exp(-period * logarithm));
}
