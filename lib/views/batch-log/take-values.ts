import type { Quantity } from '../../inputs/quantity.ts';
import type { Calibration } from '../../insight/calibration/calibration.ts';
import { valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { countOf } from '../format-number.ts';
import { fittedPath, fittedQuantity, isWorthUsing } from './fitted-quantity.ts';
import type { LogGesture } from './log-gestures.ts';

interface Written {
  readonly path: string;
  readonly quantity: Quantity;
}

function writtenValues(plan: Plan, calibration: Calibration): readonly Written[] {
  return calibration.values.filter(isWorthUsing).flatMap((fitted) => {
    const path = fittedPath(plan, fitted);
    const quantity = fittedQuantity(plan, fitted);
    return path === null || quantity === null ? [] : [{ path, quantity }];
  });
}

/** Writes the fitted values that the log tells into chambers and products, as one step; null when it tells none. */
export function takeValuesGesture(plan: Plan, calibration: Calibration): LogGesture | null {
  const changes = writtenValues(plan, calibration);
  if (changes.length === 0) return null;
  const said = `${countOf(changes.length, 'value')} of chambers and products now ${changes.length === 1 ? 'comes' : 'come'} from your log. The figures follow.`;
  return { command: { kind: 'setQuantities', changes }, said };
}

/** True when the plan holds exactly the values that the fit found. */
export function holdsValues(plan: Plan, calibration: Calibration): boolean {
  const written = writtenValues(plan, calibration);
  return (
    written.length > 0 &&
    written.every(({ path, quantity }) => {
      const held = valueAtPlace(plan, path) as Quantity;
      return held.source === quantity.source && held.value === quantity.value && held.low === quantity.low;
    })
  );
}
