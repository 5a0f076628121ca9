import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { commandFinding } from './command-finding.ts';

/** Names listed at most in a message. */
const MOST_LISTED = 12;

function listed(plan: Plan): string {
  const names = plan.scenarios.slice(0, MOST_LISTED).map((scenario) => `"${scenario.name}"`);
  const more = plan.scenarios.length - names.length;
  return `${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

/**
 * The scenarios to work out: the one of this id, else every one of this name, all when none is asked for. A finding when
 * there is no such scenario.
 */
export function chosenScenarios(plan: Plan, wanted: string | null): Result<readonly Scenario[], readonly Finding[]> {
  if (wanted === null) return succeed(plan.scenarios);
  const byId = plan.scenarios.filter((scenario) => scenario.id === wanted);
  const chosen = byId.length > 0 ? byId : plan.scenarios.filter((scenario) => scenario.name === wanted);
  if (chosen.length > 0) return succeed(chosen);
  return fail([
    commandFinding('--scenario', wanted, `The plan has no scenario "${wanted}".`, `Name one of ${listed(plan)}.`),
  ]);
}
