import { toBase } from '../units/convert.ts';
import type { Dimension } from '../units/dimension.ts';

/** Where a number came from: read off the user's own shop, promised by a seller, published, or guessed. */
export const ORIGINS = ['measured', 'quoted', 'handbook', 'guess'] as const;

export type Origin = (typeof ORIGINS)[number];

/** A number with its unit and where it came from, as the plan keeps it. */
export interface Quantity {
  readonly value: number;
  /** A unit symbol of the field's dimension; low and high are in it too. */
  readonly unit: string;
  readonly origin: Origin;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  /** A key of the bibliography, or the user's own words such as "quote of 3 May". */
  readonly source?: string | undefined;
  readonly note?: string | undefined;
}

/** Value of a quantity in the engine's unit of its dimension. */
export function inBase(quantity: Quantity, dimension: Dimension): number {
  return toBase(quantity.value, dimension, quantity.unit);
}
