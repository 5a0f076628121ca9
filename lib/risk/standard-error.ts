/** Standard error of the mean of independent values, s/√n, in their unit; 0 for fewer than two. Source: derived. */
export function standardError(values: readonly number[]): number {
  const n = values.length;
  if (n < 2) return 0;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (n - 1) / n);
}
