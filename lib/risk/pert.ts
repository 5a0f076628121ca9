import { betaQuantile } from '../numeric/beta-distribution.ts';
import { requireThreePoint, type ThreePoint } from './three-point.ts';

/** How much more the likely value weighs than either end. */
const WEIGHT = 4;

/**
 * Value below which a share u of a PERT distribution lies, in the unit of the three points; the point itself when they
 * are all one. A beta distribution from low to high with α = 1 + 4(likely−low)/(high−low), β = 1 + 4(high−likely)/(high−low),
 * whose mean is (low + 4·likely + high)/6.
 * Source: malcolm-pert-1959.
 * Throws RangeError when the points are not in order or u is outside 0–1.
 * @param u share below [–]
 */
export function pertQuantile(u: number, points: ThreePoint): number {
  requireThreePoint(points, u);
  const { low, likely, high } = points;
  const range = high - low;
  if (range === 0) return low;
  const a = 1 + (WEIGHT * (likely - low)) / range;
  const b = 1 + (WEIGHT * (high - likely)) / range;
  return low + range * betaQuantile(u, a, b);
}
