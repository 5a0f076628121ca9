/** A number in words for a message: four significant figures at most, no exponent where it can be helped. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  return String(Number(value.toPrecision(4)));
}
