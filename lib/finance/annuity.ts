import { exp, expm1, log, log1p } from '../numeric/portable-math.ts';

/**
 * Sign convention of all of `lib/finance`: money received is positive, money paid out is negative.
 *
 * Everything in this file is one identity between a present value pv, equal payments pmt, a future value fv, a rate r
 * per period and n periods: fv + pv·(1+r)ⁿ + pmt·(1+r·when)·((1+r)ⁿ − 1)/r = 0, and fv + pv + pmt·n = 0 when r = 0.
 * Source: numpy-financial, documentation of `pmt`; the identity is also that of `openformula-draft`.
 */

/** Whether payments fall at the end of each period (when = 0) or at its beginning (when = 1). */
export type AnnuityTiming = 'end' | 'begin';

/** (1+r)ⁿ [–], exact for small rates. @param rate per period, > −1 @param periods n ≥ 0, need not be whole */
export function growthFactor(rate: number, periods: number): number {
  requireTerms(rate, periods);
  return exp(periods * log1p(rate));
}

/** ((1+r)ⁿ − 1)/r [–], n when r = 0: worth at the end of one unit per period. @param rate per period, > −1 @param periods n ≥ 0 */
export function seriesFactor(rate: number, periods: number): number {
  requireTerms(rate, periods);
  return rate === 0 ? periods : expm1(periods * log1p(rate)) / rate;
}

/**
 * Future value fv [money]: what a present value and equal payments have grown to, with its sign turned.
 * @param rate per period, > −1
 * @param periods n ≥ 0
 * @param payment pmt [money]
 * @param present pv [money]
 */
export function futureValue(
  rate: number,
  periods: number,
  payment: number,
  present: number,
  timing: AnnuityTiming = 'end',
): number {
  return (
    -(present * growthFactor(rate, periods) + payment * timingFactor(rate, timing) * seriesFactor(rate, periods)) + 0
  );
}

/**
 * Present value pv [money] of equal payments and a future value, with its sign turned.
 * @param rate per period, > −1
 * @param periods n ≥ 0
 * @param payment pmt [money]
 * @param future fv [money]
 */
export function presentValue(
  rate: number,
  periods: number,
  payment: number,
  future: number,
  timing: AnnuityTiming = 'end',
): number {
  const series = payment * timingFactor(rate, timing) * seriesFactor(rate, periods);
  return -(future + series) / growthFactor(rate, periods) + 0;
}

/**
 * Equal payment pmt [money] that turns pv into fv over n periods.
 * Throws RangeError when there is no period to pay in.
 * @param rate per period, > −1
 * @param periods n > 0
 * @param present pv [money]
 * @param future fv [money]
 */
export function annuityPayment(
  rate: number,
  periods: number,
  present: number,
  future = 0,
  timing: AnnuityTiming = 'end',
): number {
  if (!(periods > 0)) throw new RangeError(`an annuity needs a period to pay in, got ${periods}`);
  const due = future + present * growthFactor(rate, periods);
  return -due / (timingFactor(rate, timing) * seriesFactor(rate, periods)) + 0;
}

/**
 * Number of periods n [–], not rounded, until pv and the payments reach fv; null when they never do.
 * @param rate per period, > −1
 * @param payment pmt [money]
 * @param present pv [money]
 * @param future fv [money]
 */
export function periodCount(
  rate: number,
  payment: number,
  present: number,
  future = 0,
  timing: AnnuityTiming = 'end',
): number | null {
  requireTerms(rate, 0);
  const periods = rate === 0 ? -(future + present) / payment : compoundPeriods(rate, payment, present, future, timing);
  return Number.isFinite(periods) && periods >= 0 ? periods : null;
}

/**
 * Interest within payment number k of n [money], the same sign as the payment.
 * Throws RangeError when k is not between 1 and n.
 * @param rate per period, > −1
 * @param period k, counted from 1
 * @param periods n
 * @param present pv [money]
 * @param future fv [money]
 */
export function interestPart(
  rate: number,
  period: number,
  periods: number,
  present: number,
  future = 0,
  timing: AnnuityTiming = 'end',
): number {
  if (!(period >= 1 && period <= periods)) throw new RangeError(`payment ${period} is not among 1 to ${periods}`);
  // A payment at the beginning of the first period comes before any interest has run.
  if (timing === 'begin' && period === 1) return 0;
  const payment = annuityPayment(rate, periods, present, future, timing);
  const interest = rate * futureValue(rate, period - 1, payment, present, timing);
  return timing === 'begin' ? interest / (1 + rate) : interest;
}

/** Principal within payment number k of n [money]: payment less its interest. Parameters as `interestPart`. */
export function principalPart(
  rate: number,
  period: number,
  periods: number,
  present: number,
  future = 0,
  timing: AnnuityTiming = 'end',
): number {
  const payment = annuityPayment(rate, periods, present, future, timing);
  return payment - interestPart(rate, period, periods, present, future, timing);
}

function timingFactor(rate: number, timing: AnnuityTiming): number {
  return timing === 'begin' ? 1 + rate : 1;
}

/** n = ln((z − fv)/(z + pv))/ln(1+r), z = pmt·(1+r·when)/r; not finite when the goal is never reached. */
function compoundPeriods(
  rate: number,
  payment: number,
  present: number,
  future: number,
  timing: AnnuityTiming,
): number {
  const perpetual = (payment * timingFactor(rate, timing)) / rate;
  return log((perpetual - future) / (perpetual + present)) / log1p(rate);
}

function requireTerms(rate: number, periods: number): void {
  if (!(rate > -1) || !Number.isFinite(rate)) throw new RangeError(`rate ${rate} must be a number above -1`);
  if (!(periods >= 0)) throw new RangeError(`number of periods ${periods} must be 0 or more`);
}
