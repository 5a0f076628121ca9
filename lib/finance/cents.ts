/** Whole cents of the shop's currency. An integer, so that sums are exact and statements balance to the cent. */
export type Cents = number;

/**
 * Amount in whole cents [cents], halves away from zero.
 * Throws RangeError when it is not finite or too large to count in cents exactly (about 9·10¹³).
 * @param amount [money]
 */
export function toCents(amount: number): Cents {
  const cents = Math.sign(amount) * Math.round(Math.abs(amount) * 100) + 0;
  if (!Number.isSafeInteger(cents)) throw new RangeError(`amount ${amount} cannot be counted in whole cents`);
  return cents;
}

/** Amount [money] of whole cents. */
export function fromCents(cents: Cents): number {
  return cents / 100;
}

/** Sum of whole cents [cents]; 0 for none. */
export function sumCents(amounts: readonly Cents[]): Cents {
  return amounts.reduce((sum, amount) => sum + amount, 0);
}

/**
 * Parts of a total in proportion to weights [cents], each the difference of rounded running totals, so they sum to the
 * total exactly and none is off by more than a cent.
 * Throws RangeError when a weight is negative or all are zero.
 * @param total [cents]
 * @param weights any unit, ≥ 0
 */
export function spreadCents(total: Cents, weights: readonly number[]): Cents[] {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(whole > 0) || weights.some((weight) => weight < 0)) {
    throw new RangeError(`cannot spread ${total} cents over weights ${weights.join(', ')}`);
  }
  let weighed = 0;
  let given = 0;
  return weights.map((weight) => {
    weighed += weight;
    const next = Math.round((total * weighed) / whole);
    const part = next - given;
    given = next;
    return part;
  });
}
