/** Throws RangeError naming the first entry that is not a finite number of 0 or more. */
export function requireAmounts(amounts: Readonly<Record<string, number>>): void {
  for (const [name, amount] of Object.entries(amounts)) {
    if (!(amount >= 0) || !Number.isFinite(amount)) throw new RangeError(`${name} is ${amount}, expected 0 or more`);
  }
}

/** Throws RangeError naming the first entry outside 0 to 1. */
export function requireFractions(fractions: Readonly<Record<string, number>>): void {
  for (const [name, fraction] of Object.entries(fractions)) {
    if (!(fraction >= 0 && fraction <= 1)) throw new RangeError(`${name} is ${fraction}, expected 0 to 1`);
  }
}
