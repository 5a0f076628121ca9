import { requireThreePoint, type ThreePoint } from './three-point.ts';

/**
 * Value below which a share u of a triangular distribution lies, in the unit of the three points; the point itself when
 * they are all one. low + √(u(high−low)(likely−low)) up to the likely value, high − √((1−u)(high−low)(high−likely)) above.
 * Throws RangeError when the points are not in order or u is outside 0–1.
 * @param u share below [–]
 */
export function triangularQuantile(u: number, points: ThreePoint): number {
  requireThreePoint(points, u);
  const { low, likely, high } = points;
  const range = high - low;
  if (range === 0) return low;
  const value =
    u < (likely - low) / range
      ? low + Math.sqrt(u * range * (likely - low))
      : high - Math.sqrt((1 - u) * range * (high - likely));
  return Math.min(high, Math.max(low, value));
}
