import type { Plan, Scenario } from '../plan/plan-types.ts';

/** A scenario with another number of chambers and another pump arrangement; the mix of chamber types is kept as far as it goes. */
export function withChambers(
  scenario: Scenario,
  count: number,
  pumpArrangement: Scenario['pumpArrangement'],
): Scenario {
  const kept: Scenario['chambers'][number][] = [];
  let left = count;
  for (const entry of scenario.chambers) {
    const taken = Math.min(entry.count, left);
    if (taken > 0) kept.push({ ...entry, count: taken });
    left -= taken;
  }
  const last = kept.at(-1) ?? scenario.chambers[0];
  if (!last) throw new RangeError(`scenario "${scenario.name}" has no chamber type to add to`);
  if (left > 0) kept[Math.max(0, kept.length - 1)] = { ...last, count: (kept.length > 0 ? last.count : 0) + left };
  return { ...scenario, chambers: kept, pumpArrangement };
}

/** How many chambers a scenario has. */
export function chamberCount(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

/** The scenario of this id; throws RangeError when the plan has none. */
export function scenarioOf(plan: Plan, scenarioId: string): Scenario {
  const found = plan.scenarios.find((scenario) => scenario.id === scenarioId);
  if (!found) throw new RangeError(`no scenario "${scenarioId}" in the plan`);
  return found;
}
