import type { Calibration, FittedValue } from '../../../lib/insight/calibration/calibration.ts';
import type { Drying } from './synthetic-log.ts';

/** One of the fitted values. */
export function fittedIn({ values }: Calibration, id: string, key: string): FittedValue {
  const found = values.find((value) => value.id === id && value.key === key);
  if (!found)
    throw new Error(`no ${key} of ${id} among ${values.map((value) => `${value.id}.${value.key}`).join(', ')}`);
  return found;
}

/** Whether the range holds the truth. */
export function holds({ after }: FittedValue, truth: number): boolean {
  return after.low <= truth && truth <= after.high;
}

/** How far a fitted value is off, as a share of the truth. */
export function missOf({ after }: FittedValue, truth: number): number {
  return Math.abs(after.value / truth - 1);
}

/** A spread of loads, from half trays to full ones. */
export function loads(product: string, usual: number, factors: readonly number[]): Drying[] {
  return factors.map((factor) => ({ product, wet: usual * factor }));
}
