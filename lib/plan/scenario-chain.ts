import type { Plan, Scenario } from './plan-types.ts';

/**
 * The scenarios that are bought one after the other until this one stands, itself last; today is not among them. Empty for
 * today itself. A circle, which `checkPlan` rules out, is cut where it closes.
 */
export function scenarioChain(plan: Plan, scenario: Scenario): readonly Scenario[] {
  const today = plan.scenarios[0];
  const chain: Scenario[] = [];
  let next: Scenario | undefined = scenario;
  while (next && next.id !== today?.id && !chain.includes(next)) {
    chain.unshift(next);
    const { after }: Scenario = next;
    next = plan.scenarios.find((candidate) => candidate.id === after);
  }
  return chain;
}
