/** Throws unless a value lies within a share of what is right: a bench that times wrong results times nothing. */
export function requireNear(what: string, value: number, right: number, share = 1e-3): void {
  const error = Math.abs(value / right - 1);
  if (!(error <= share)) throw new Error(`${what}: ${value} where ${right} is right, off by ${error.toExponential(1)}`);
}
