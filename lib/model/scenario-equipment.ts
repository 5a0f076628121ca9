import type { Plan, Scenario } from '../plan/plan-types.ts';

/** How many of each thing a scenario has, by id. */
export interface Equipment {
  readonly chambers: ReadonlyMap<string, number>;
  /** A roughing pump and a spare on the shelf among them. */
  readonly pumps: ReadonlyMap<string, number>;
  readonly hoses: ReadonlyMap<string, number>;
  readonly freezers: number;
  readonly chamberCount: number;
  /** Pumps that keep chambers under vacuum. */
  readonly pumpCount: number;
  /** Chambers that hang on a pump together with others. */
  readonly onManifold: number;
}

function add(map: Map<string, number>, id: string, count: number): void {
  if (count > 0) map.set(id, (map.get(id) ?? 0) + count);
}

function chambersPerPump(scenario: Scenario, chambers: number): number {
  if (scenario.pumpArrangement === 'own') return 1;
  return scenario.pumpArrangement === 'shared' ? Math.max(1, chambers) : scenario.groupSize;
}

function pumpsOf(scenario: Scenario, pumpCount: number): ReadonlyMap<string, number> {
  const pumps = new Map<string, number>();
  add(pumps, scenario.pump, pumpCount + (scenario.sparePump === 'onShelf' ? 1 : 0));
  if (scenario.startPractice === 'roughing' && scenario.roughingPump !== null) add(pumps, scenario.roughingPump, 1);
  return pumps;
}

/** Chambers, pumps, hoses and freezers of a scenario. */
export function scenarioEquipment(scenario: Scenario): Equipment {
  const chambers = new Map<string, number>();
  for (const entry of scenario.chambers) add(chambers, entry.chamber, entry.count);
  const chamberCount = scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
  const perPump = chambersPerPump(scenario, chamberCount);
  const pumpCount = Math.ceil(chamberCount / perPump);
  const hoses = new Map<string, number>();
  add(hoses, scenario.hose, chamberCount);
  const alone = perPump > 1 && chamberCount % perPump === 1 ? 1 : 0;
  return {
    chambers,
    pumps: pumpsOf(scenario, pumpCount),
    hoses,
    freezers: scenario.freezers,
    chamberCount,
    pumpCount,
    onManifold: perPump > 1 && chamberCount > 1 ? chamberCount - alone : 0,
  };
}

/** What has to be bought to get from one set of things to another: never less than nothing. */
export function toBuy(
  now: ReadonlyMap<string, number>,
  then: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const bought = new Map<string, number>();
  for (const [id, count] of then) add(bought, id, count - (now.get(id) ?? 0));
  return bought;
}

/** The scenario all others are judged against: the first. */
export function todayOf(plan: Plan): Scenario {
  const first = plan.scenarios[0];
  if (!first) throw new RangeError('a plan needs at least one scenario, got none');
  return first;
}
