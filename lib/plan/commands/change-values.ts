import type { Quantity } from '../../inputs/quantity.ts';
import { succeed } from '../../result.ts';
import { findUnit, fromBase, toBase } from '../../units/convert.ts';
import { fieldAtPath } from '../field-at-path.ts';
import type { Plan } from '../plan-types.ts';
import { isRawObject, valueAt } from '../raw-value.ts';
import type { QuantityChange, ValueChange } from './command.ts';
import type { PlanChange } from './plan-change.ts';
import { setAtPath } from './set-at-path.ts';

/** Low and high of a quantity in the unit it is about to get, since one unit holds for all three. */
function bounds(path: string, current: Quantity, unit: string): Partial<Quantity> {
  const field = fieldAtPath(path);
  if (unit === current.unit || !field || !('dimension' in field) || !findUnit(field.dimension, unit)) return {};
  const { dimension } = field;
  const convert = (value: number | undefined) =>
    value === undefined ? undefined : fromBase(toBase(value, dimension, current.unit), dimension, unit);
  return { low: convert(current.low), high: convert(current.high) };
}

function withoutUndefined(values: object): object {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}

function changedQuantity(plan: Plan, change: QuantityChange): unknown {
  const { path, quantity } = change;
  const current = valueAt(plan, path.split('.'));
  if (quantity === null || !isRawObject(current)) return quantity;
  const held = current as unknown as Quantity;
  return withoutUndefined({ ...held, ...bounds(path, held, quantity.unit ?? held.unit), ...quantity });
}

/** The plan with quantities changed, one after the other. */
export function changeQuantities(plan: Plan, changes: readonly QuantityChange[]): PlanChange {
  return changeValues(
    plan,
    changes.map((change) => ({ path: change.path, value: changedQuantity(plan, change) })),
  );
}

/** The plan with fields set, one after the other. */
export function changeValues(plan: Plan, changes: readonly ValueChange[]): PlanChange {
  let result: PlanChange = succeed(plan);
  for (const { path, value } of changes) {
    if (!result.ok) return result;
    result = setAtPath(result.value, path, value);
  }
  return result;
}
