import { inBase, type Quantity } from '../../inputs/quantity.ts';
import { setAtPath } from '../../plan/commands/set-at-path.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { fromBase, toBase } from '../../units/convert.ts';

/** A quantity of the plan and the range that the register allows it, in the engine's unit. */
export interface Turnable {
  readonly path: string;
  readonly quantity: Quantity;
  readonly value: number;
  readonly min: number;
  readonly max: number;
}

function nodeAt(plan: Plan, path: string): unknown {
  return path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown> | null)?.[key], plan);
}

/** The quantity at a path; null where there is none, or where it is 0 and no factor moves it. */
export function turnable(plan: Plan, path: string): Turnable | null {
  const field = fieldAtPath(path);
  const quantity = nodeAt(plan, path) as Quantity | null | undefined;
  if (field?.kind !== 'quantity' || !quantity || quantity.value === 0) return null;
  const { dimension, unit } = field;
  return {
    path,
    quantity,
    value: inBase(quantity, dimension),
    min: toBase(field.min, dimension, unit),
    max: toBase(field.max, dimension, unit),
  };
}

/** A quantity's value after a factor [engine's unit], kept within its range. */
export function turnedValue({ value, min, max }: Turnable, factor: number): number {
  return Math.min(max, Math.max(min, value * factor));
}

function withFactor(plan: Plan, path: string, factor: number): Plan {
  const field = fieldAtPath(path);
  const found = turnable(plan, path);
  if (field?.kind !== 'quantity' || !found) return plan;
  const { unit, origin } = found.quantity;
  const value = fromBase(turnedValue(found, factor), field.dimension, unit);
  const changed = setAtPath(plan, path, { value, unit, origin });
  return changed.ok ? changed.value : plan;
}

/** The plan with some quantities multiplied by one factor, each kept within its range of the register. */
export function turnedPlan(plan: Plan, paths: readonly string[], factor: number): Plan {
  return factor === 1 ? plan : paths.reduce((turned, path) => withFactor(turned, path, factor), plan);
}
