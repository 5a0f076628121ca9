/** Low, likely and high of an uncertain input, in one unit. */
export interface ThreePoint {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Throws RangeError when the three are not in order or not finite, or when u is outside 0–1. */
export function requireThreePoint({ low, likely, high }: ThreePoint, u: number): void {
  if (!(low <= likely && likely <= high) || !Number.isFinite(high - low)) {
    throw new RangeError(`low ${low}, likely ${likely} and high ${high} are not in order`);
  }
  if (!(u >= 0 && u <= 1)) throw new RangeError(`share ${u}, expected 0 to 1`);
}
