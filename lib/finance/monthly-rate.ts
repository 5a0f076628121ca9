import { expm1, log1p } from '../numeric/portable-math.ts';

/**
 * Rate per month [1/month] with the same effect over a year as an annual effective rate: (1+r)^(1/12) − 1.
 * For discounting. A loan's nominal annual rate is divided by 12 instead.
 * Throws RangeError at −1 or below.
 * @param annualRate effective [1/year], > −1
 */
export function monthlyRate(annualRate: number): number {
  if (!(annualRate > -1)) throw new RangeError(`annual rate ${annualRate} must be above -1`);
  return expm1(log1p(annualRate) / 12);
}

/**
 * Annual effective rate [1/year] of a rate per month: (1+r)¹² − 1.
 * Throws RangeError at −1 or below.
 * @param rate [1/month], > −1
 */
export function annualRate(rate: number): number {
  if (!(rate > -1)) throw new RangeError(`monthly rate ${rate} must be above -1`);
  return expm1(12 * log1p(rate));
}
