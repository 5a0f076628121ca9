import { log } from './portable-math.ts';

/** Coefficients of Lanczos' series for g = 7 in nine terms. */
const G = 7;
const SERIES = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * Natural logarithm of the gamma function [–].
 * Source: lanczos-1964; the coefficients are Godfrey's, from memory, checked against scipy to 1e-13.
 * Valid for x > 0; throws RangeError otherwise.
 */
export function logGamma(x: number): number {
  if (!(x > 0) || !Number.isFinite(x)) throw new RangeError(`gamma function of ${x}, expected above 0`);
  // Below one half the series loses digits: step up by Γ(x) = Γ(x + 1)/x.
  if (x < 0.5) return logGamma(x + 1) - log(x);
  const shifted = x - 1;
  const sum = SERIES.reduce((total, term, k) => total + (k === 0 ? term : term / (shifted + k)), 0);
  const t = shifted + G + 0.5;
  return 0.5 * log(2 * Math.PI) + (shifted + 0.5) * log(t) - t + log(sum);
}
