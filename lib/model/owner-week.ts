import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';

const SECONDS_PER_HOUR = 3600;

/** What the owner's own hours of a week would cost to hire [money/week]. */
export function ownerWeek(plan: Plan): number {
  const { ownerHours, ownerRate } = baseValues('crew', plan.crew);
  return (ownerHours / SECONDS_PER_HOUR) * ownerRate;
}
