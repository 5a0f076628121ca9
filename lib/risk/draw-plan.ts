import { setAtPath } from '../plan/commands/set-at-path.ts';
import type { Plan } from '../plan/plan-types.ts';
import { pertQuantile } from './pert.ts';
import type { ThreePoint } from './three-point.ts';
import { triangularQuantile } from './triangular.ts';
import type { UncertainInput } from './uncertain-inputs.ts';

/** How likely the values between low and high are. */
export type SpreadShape = 'pert' | 'triangular';

const QUANTILES: Readonly<Record<SpreadShape, (u: number, points: ThreePoint) => number>> = {
  pert: pertQuantile,
  triangular: triangularQuantile,
};

/**
 * Values of the inputs at a point of the unit cube, each in its own unit.
 * Throws RangeError when the point has not one share of 0–1 for each input.
 * @param point shares below, in the order of the inputs [–]
 */
export function drawValues(
  inputs: readonly UncertainInput[],
  point: readonly number[],
  shape: SpreadShape = 'pert',
): number[] {
  if (point.length !== inputs.length) throw new RangeError(`${point.length} shares for ${inputs.length} inputs`);
  return inputs.map(({ points }, k) => QUANTILES[shape](point[k] ?? Number.NaN, points));
}

/**
 * The plan with other likely values; all else, low and high too, stays.
 * Throws RangeError when there is not one value for each input, or an input is not of this plan.
 * @param values in the order and the units of the inputs
 */
export function planWithValues(plan: Plan, inputs: readonly UncertainInput[], values: readonly number[]): Plan {
  if (values.length !== inputs.length) throw new RangeError(`${values.length} values for ${inputs.length} inputs`);
  return inputs.reduce((drawn, { path }, k) => {
    const changed = setAtPath(drawn, `${path}.value`, values[k]);
    if (!changed.ok) throw new RangeError(`the plan has no input at ${path}`);
    return changed.value;
  }, plan);
}

/** The plan at a point of the unit cube. Throws RangeError as `drawValues` and `planWithValues` do. */
export function drawPlan(
  plan: Plan,
  inputs: readonly UncertainInput[],
  point: readonly number[],
  shape: SpreadShape = 'pert',
): Plan {
  return planWithValues(plan, inputs, drawValues(inputs, point, shape));
}
