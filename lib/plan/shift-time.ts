import { baseValues } from '../inputs/base-values.ts';
import { findById } from './find-by-id.ts';
import type { Plan, Scenario } from './plan-types.ts';

/** People-time on shift in a week of a scenario's pattern [s/week]. */
export function shiftTime(plan: Plan, { pattern }: Scenario): number {
  return findById(plan.crew.patterns, pattern, 'shift pattern').shifts.reduce((sum, shift) => {
    const { start, end, people } = baseValues('shift', shift);
    return sum + shift.weekdays.length * people * (end - start);
  }, 0);
}
