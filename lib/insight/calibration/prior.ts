import { defaultQuantity } from '../../inputs/default-values.ts';
import type { QuantityField } from '../../inputs/input-field.ts';
import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { FITTED_SOURCE } from '../../plan/fitted-source.ts';
import { toBase } from '../../units/convert.ts';
import type { FitScale } from './fit-scale.ts';

/** What is believed of a value before the log is read: a bell curve on the value's own scale. */
export interface Prior {
  readonly centre: number;
  readonly spread: number;
}

/** Low and high are taken as the ends of the middle 95 %, so they are this many standard deviations apart. */
export const WIDTH_OF_RANGE = 2 * 1.96;

/** A range however narrow leaves this much room, or the log could not speak at all. */
const LEAST_SPREAD = 0.02;

/**
 * The belief that a quantity of the plan stands for: its value, with the spread of its low and high, or the usual spread
 * where it has none. A value that an earlier fit wrote is no belief but the same log once more, so the register's
 * default speaks in its place.
 */
export function priorOf(field: QuantityField, quantity: Quantity, scale: FitScale, usualSpread: number): Prior {
  const wasFitted = quantity.source === FITTED_SOURCE;
  const believed = (wasFitted ? defaultQuantity(field) : quantity) ?? quantity;
  const centre = scale.to(inBase(believed, field.dimension));
  return { centre, spread: (wasFitted ? undefined : rangeSpread(field, believed, scale)) ?? usualSpread };
}

function rangeSpread(field: QuantityField, quantity: Quantity, scale: FitScale): number | undefined {
  const { low = quantity.value, high = quantity.value, unit } = quantity;
  if (!(high > low)) return undefined;
  const place = (value: number) => scale.to(toBase(value, field.dimension, unit));
  const spread = (place(high) - place(low)) / WIDTH_OF_RANGE;
  return Number.isFinite(spread) && spread > 0 ? Math.max(LEAST_SPREAD, spread) : undefined;
}
