/** A belief about scatter before anything is measured weighs as much as so many measurements. */
const BELIEF = 4;

/**
 * Standard deviation of measurements from their residuals, held to what is usual while they are few:
 * s² = (4·usual² + Σr²)/(4 + n − used), `used` being how many of them the fitted values have taken up.
 * Source: gelman-bayesian-data-analysis, ch. 2 (scaled inverse chi-square).
 */
export function scatter(residuals: readonly number[], usual: number, used: number): number {
  const squares = residuals.reduce((sum, value) => sum + value * value, 0);
  const free = Math.max(0, residuals.length - used);
  return Math.sqrt((BELIEF * usual * usual + squares) / (BELIEF + free));
}
