import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';

/** Months looked ahead, whole. */
export function horizonMonths(plan: Plan): number {
  return Math.round(baseValues('financing', plan.financing).horizon);
}
