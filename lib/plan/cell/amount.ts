import { fail, type Result, succeed } from '../../result.ts';
import { findUnit, fromBase, toBase } from '../../units/convert.ts';
import type { Dimension } from '../../units/dimension.ts';

/** A number on the way through a sum: with a unit, or plain. */
export interface Amount {
  readonly value: number;
  readonly unit: string | null;
}

/** Why a cell cannot be read, in plain words. */
export interface CellProblem {
  readonly problem: string;
  readonly remedy: string;
}

export type AmountResult = Result<Amount, CellProblem>;

export function cellProblem(problem: string, remedy: string): { readonly ok: false; readonly error: CellProblem } {
  return fail({ problem, remedy });
}

function converted(amount: Amount, unit: string, dimension: Dimension): number | undefined {
  if (amount.unit === null || amount.unit === unit) return amount.value;
  const shifted = findUnit(dimension, amount.unit)?.offset !== findUnit(dimension, unit)?.offset;
  return shifted ? undefined : fromBase(toBase(amount.value, dimension, amount.unit), dimension, unit);
}

/**
 * Sum or difference. The outcome is in the first unit that is named; a plain number beside a unit is taken in that unit.
 * Temperatures on different scales are not added, as it is unclear what that would mean.
 */
export function addAmounts(left: Amount, right: Amount, sign: 1 | -1, dimension: Dimension): AmountResult {
  const unit = left.unit ?? right.unit;
  if (unit === null) return succeed({ value: left.value + sign * right.value, unit });
  const [a, b] = [converted(left, unit, dimension), converted(right, unit, dimension)];
  if (a === undefined || b === undefined) {
    return cellProblem('Temperatures on two scales cannot be added.', 'Give both on one scale.');
  }
  return succeed({ value: a + sign * b, unit });
}

/** Product; at most one side may have a unit. */
export function multiplyAmounts(left: Amount, right: Amount): AmountResult {
  if (left.unit !== null && right.unit !== null) {
    return cellProblem('Two values with units are multiplied.', 'Keep the unit on one of them only.');
  }
  return succeed({ value: left.value * right.value, unit: left.unit ?? right.unit });
}

/** Quotient; two values of one kind give a plain number, and `1/2 in` is half an inch. */
export function divideAmounts(left: Amount, right: Amount, dimension: Dimension): AmountResult {
  const bothWithUnits = left.unit !== null && right.unit !== null;
  const divisor = left.unit === null ? right.value : converted(right, left.unit, dimension);
  if (divisor === undefined) {
    return cellProblem('Temperatures on two scales cannot be divided.', 'Give both on one scale.');
  }
  if (divisor === 0) return cellProblem('This divides by zero.', 'Divide by something else.');
  return succeed({ value: left.value / divisor, unit: bothWithUnits ? null : (left.unit ?? right.unit) });
}
