import { baseValues } from '../inputs/base-values.ts';
import { scenarioCost } from '../model/scenario-cost.ts';
import type { Simulate } from '../model/scenario-week.ts';
import { shopSpec } from '../model/shop-spec.ts';
import { supplyNeed } from '../model/supply-need.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PlantReport } from '../plant/report-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import type { ShopSpec } from '../plant/types.ts';
import { enlarge } from './enlarge.ts';
import type { Bottleneck, Resource, ResourceRelief } from './insight-types.ts';
import { KNEE_THRESHOLD } from './knee-threshold.ts';
import { machineOutput } from './machine-output.ts';
import { chamberCount, scenarioOf, withChambers } from './shop-variant.ts';

/** A resource is enlarged by a quarter to see what it holds back. */
const ENLARGEMENT = 1.25;

/** Relief below this share of the weekly contribution is no bottleneck: the shop is balanced. */
const BALANCED = 0.005;

const RESOURCES: readonly Resource[] = [
  'chambers',
  'pump',
  'hose',
  'trap',
  'heater',
  'freezer',
  'crew',
  'power',
  'demand',
];

function contribution(plan: Plan, scenario: Scenario, plant: PlantReport): number {
  return scenarioCost(plan, scenario, plant).shown.contributionPerWeek;
}

function powerUse(plan: Plan, scenario: Scenario): number {
  return supplyNeed(plan, scenario).rating / baseValues('site', plan.site).supplyCurrent;
}

function utilisationOf(plan: Plan, scenario: Scenario, plant: PlantReport, resource: Resource): number | null {
  return resource === 'power' ? powerUse(plan, scenario) : plant.utilisation[resource];
}

/** True when the run shows that this resource never held anything back, so that more of it cannot change the week. */
function neverFelt(plant: PlantReport, resource: Resource): boolean {
  if (resource === 'freezer') return plant.phases.waitingForFreezer === 0;
  return resource === 'heater' && plant.limits.heaterPower === 0;
}

function gainOf(
  plan: Plan,
  scenario: Scenario,
  spec: ShopSpec,
  plant: PlantReport,
  resource: Resource,
  simulate: Simulate,
): number | null {
  const larger = enlarge(spec, resource, ENLARGEMENT);
  if (larger && neverFelt(plant, resource)) return 0;
  const present = contribution(plan, scenario, plant);
  const outcome = larger ? simulate(larger) : null;
  return outcome?.ok ? contribution(plan, scenario, outcome.value) - present : null;
}

function relief(
  plan: Plan,
  scenario: Scenario,
  spec: ShopSpec,
  plant: PlantReport,
  resource: Resource,
  simulate: Simulate,
): ResourceRelief {
  const present = contribution(plan, scenario, plant);
  const gain = gainOf(plan, scenario, spec, plant, resource, simulate);
  return {
    resource,
    utilisation: utilisationOf(plan, scenario, plant, resource),
    gain,
    gainShare: gain !== null && present > 0 ? gain / present : null,
  };
}

/** The resource whose relief brings most; null when none brings more than `enough` [money/week]. */
function largest(reliefs: readonly ResourceRelief[], enough: number): ResourceRelief | null {
  let best: ResourceRelief | null = null;
  for (const candidate of reliefs) {
    if ((candidate.gain ?? 0) > Math.max(enough, best?.gain ?? 0)) best = candidate;
  }
  return best;
}

/** What gains are measured by [money/week]: what is left over, or the sales where nothing is. */
function yardstick(plan: Plan, scenario: Scenario, plant: PlantReport): number {
  const { contributionPerWeek, salesPerWeek } = scenarioCost(plan, scenario, plant).shown;
  return contributionPerWeek > 0 ? contributionPerWeek : salesPerWeek;
}

type Sharing = Pick<Bottleneck, 'outputPerChamber' | 'lastChamberAdds' | 'sharedOutputs'>;

const NOT_SHARED: Sharing = { outputPerChamber: null, lastChamberAdds: null, sharedOutputs: null };

/** What sharing does to each chamber and to the last one added, machines alone; nulls when no pump is shared. */
function sharing(plan: Plan, scenario: Scenario, simulate: Simulate): Sharing {
  const perPump = chambersOnOnePump(scenario);
  if (perPump < 2) return NOT_SHARED;
  const lone = machineOutput(plan, withChambers(scenario, 1, 'own'), simulate);
  const all = machineOutput(plan, withChambers(scenario, perPump, 'shared'), simulate);
  const fewer = machineOutput(plan, withChambers(scenario, perPump - 1, 'shared'), simulate);
  if (!lone || all === null) return { outputPerChamber: 0, lastChamberAdds: 0, sharedOutputs: null };
  return {
    outputPerChamber: all / perPump / lone,
    lastChamberAdds: fewer === null ? null : (all - fewer) / lone,
    sharedOutputs: fewer === null ? null : { lone, fewer, all },
  };
}

function chambersOnOnePump(scenario: Scenario): number {
  const count = chamberCount(scenario);
  if (scenario.pumpArrangement === 'own') return 1;
  return scenario.pumpArrangement === 'shared' ? count : Math.min(count, scenario.groupSize);
}

/**
 * Where a scenario jams: the utilisation of every resource, and how much the weekly contribution would rise if that one
 * resource were a quarter larger, found by running the week again. The bottleneck is the largest relief; none above half a
 * percent means balanced. A shared pump also counts as jammed beyond its knee. Null when the scenario cannot run.
 * @param simulate how a week is run, for callers that keep weeks to use again
 */
export function findBottleneck(plan: Plan, scenarioId: string, simulate: Simulate = simulateShop): Bottleneck | null {
  const scenario = scenarioOf(plan, scenarioId);
  const spec = shopSpec(plan, scenario);
  const base = simulate(spec);
  if (!base.ok) return null;
  const reliefs = RESOURCES.map((resource) => relief(plan, scenario, spec, base.value, resource, simulate));
  const measure = yardstick(plan, scenario, base.value);
  const worst = largest(reliefs, BALANCED * measure);
  const shares = sharing(plan, scenario, simulate);
  const beyondKnee = shares.lastChamberAdds !== null && shares.lastChamberAdds < KNEE_THRESHOLD;
  const isShared = shares.outputPerChamber !== null;
  return {
    scenarioId,
    resource: worst?.resource ?? null,
    gainShare: worst?.gain ? worst.gain / measure : 0,
    reliefs,
    ...shares,
    yardstick: measure,
    thresholds: { gain: BALANCED, lastChamber: KNEE_THRESHOLD },
    sharedPumpJams: isShared && (worst?.resource === 'pump' || beyondKnee),
  };
}
