import type { Plan, Scenario } from '../plan/plan-types.ts';

function chambersOf(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

/** The scenario worth looking at first: the largest step away from today; today itself when it stands alone. */
export function firstLook(plan: Plan): string {
  const [today, ...others] = plan.scenarios;
  const largest = others.reduce<Scenario | undefined>(
    (best, scenario) => (best && chambersOf(best) >= chambersOf(scenario) ? best : scenario),
    undefined,
  );
  return (largest ?? today)?.id ?? '';
}
