const STEPS = [1, 2, 2.5, 5, 10] as const;

/** The smallest round step that is not below the given size: 1, 2, 2.5 or 5 times a power of ten. */
export function roundStep(size: number): number {
  if (!(size > 0) || !Number.isFinite(size)) return 1;
  const power = 10 ** Math.floor(Math.log10(size));
  const step = STEPS.find((candidate) => candidate * power >= size * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** Round marks from at or below `low` to at or above `high`, about `count` of them. */
export function roundTicks(low: number, high: number, count: number): number[] {
  const step = roundStep((high - low || Math.abs(high) || 1) / count);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}
