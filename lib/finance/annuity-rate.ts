import type { AnnuityTiming } from './annuity.ts';
import { type InternalRates, internalRates } from './internal-rates.ts';

/**
 * Rate per period [1/period] at which a present value, n equal payments and a future value agree; every such rate.
 * The annuity identity of `annuity.ts` is the net present value of the same flows, so these are their internal rates.
 * Throws RangeError when n is not a whole number of 1 to 1000 periods.
 * @param periods n
 * @param payment pmt [money]
 * @param present pv [money]
 * @param future fv [money]
 */
export function annuityRate(
  periods: number,
  payment: number,
  present: number,
  future: number,
  timing: AnnuityTiming = 'end',
): InternalRates {
  if (!Number.isInteger(periods) || periods < 1)
    throw new RangeError(`periods ${periods} must be a whole number above 0`);
  const firstPaid = timing === 'begin' ? 0 : 1;
  const flows = Array.from({ length: periods + 1 }, (_, period) => {
    const paid = period >= firstPaid && period < firstPaid + periods ? payment : 0;
    return paid + (period === 0 ? present : 0) + (period === periods ? future : 0);
  });
  return internalRates(flows);
}
