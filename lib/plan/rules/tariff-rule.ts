import type { Finding } from '../../result.ts';
import type { Plan, PriceBand } from '../plan-types.ts';
import { planError } from './plan-error.ts';

function bandFindings(band: PriceBand, path: string): readonly Finding[] {
  const findings: Finding[] = [];
  if (band.start === band.end) {
    const remedy = 'Let it end at another hour; 0 to 24 is the whole day.';
    findings.push(planError(`${path}.end`, `${band.end}`, `"${band.name}" ends when it starts.`, remedy));
  }
  if (new Set(band.weekdays).size < band.weekdays.length) {
    const value = band.weekdays.join(', ');
    findings.push(planError(`${path}.weekdays`, value, 'A weekday stands twice.', 'Name each weekday once.'));
  }
  return findings;
}

/** Hours with a price of their own last for some time, each weekday named once. */
export function tariffRule(plan: Plan): readonly Finding[] {
  return plan.site.priceBands.flatMap((band, i) => bandFindings(band, `site.priceBands.${i}`));
}
