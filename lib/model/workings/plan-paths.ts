import type { Plan, Scenario } from '../../plan/plan-types.ts';

/** Path of an entry of one of the plan's lists, such as `products.2`. Throws RangeError when there is none of that id. */
export function pathOf(
  plan: Plan,
  list: 'products' | 'chambers' | 'pumps' | 'hoses' | 'scenarios',
  id: string,
): string {
  const place = plan[list].findIndex((item) => item.id === id);
  if (place < 0) throw new RangeError(`no "${id}" among the plan's ${list}`);
  return `${list}.${place}`;
}

/** Paths of some values of one entry. */
export function pathsIn(entry: string, keys: readonly string[]): string[] {
  return keys.map((key) => `${entry}.${key}`);
}

/** Ids of the chamber types a scenario has, each once. */
export function chamberTypesOf(scenario: Scenario): string[] {
  return [...new Set(scenario.chambers.filter((entry) => entry.count > 0).map((entry) => entry.chamber))];
}

/** Type of each chamber of a scenario, in the order in which the simulated week numbers them. */
export function chamberTypeByNumber(scenario: Scenario): string[] {
  return scenario.chambers.flatMap((entry) => Array.from({ length: entry.count }, () => entry.chamber));
}
