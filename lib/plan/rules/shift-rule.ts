import type { Finding } from '../../result.ts';
import type { Plan, Shift } from '../plan-types.ts';
import { planError } from './plan-error.ts';

function shiftFindings(shift: Shift, path: string): readonly Finding[] {
  const findings: Finding[] = [];
  if (shift.end <= shift.start) {
    const value = `${shift.start} to ${shift.end}`;
    const remedy = 'Let it end later than it starts; enter a night shift as two, before and after midnight.';
    findings.push(planError(`${path}.end`, value, 'The shift ends before it starts.', remedy));
  }
  if (new Set(shift.weekdays).size < shift.weekdays.length) {
    const value = shift.weekdays.join(', ');
    findings.push(planError(`${path}.weekdays`, value, 'A weekday stands twice.', 'Name each weekday once.'));
  }
  return findings;
}

/** Shifts run forward in time, each weekday named once. */
export function shiftRule(plan: Plan): readonly Finding[] {
  return plan.crew.patterns.flatMap((pattern, i) =>
    pattern.shifts.flatMap((shift, j) => shiftFindings(shift, `crew.patterns.${i}.shifts.${j}`)),
  );
}
