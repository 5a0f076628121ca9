/**
 * Conductance of parts one behind the other [m³/s]: 1/C = Σ 1/C_i. A pump counts as a part, and the result is its speed at the far end.
 * Source: vacuum-lab-notes. Throws RangeError when a part is not positive.
 * @param parts [m³/s]
 */
export function seriesConductance(parts: readonly number[]): number {
  const blocked = parts.find((part) => !(part > 0));
  if (parts.length === 0 || blocked !== undefined) {
    throw new RangeError(`conductances in series need positive parts, got ${blocked ?? 'none'}`);
  }
  return 1 / parts.reduce((sum, part) => sum + 1 / part, 0);
}
