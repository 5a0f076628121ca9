import { fail, type Result, succeed } from '../result.ts';
import { nextTime, popEvent } from './event-queue.ts';
import { advanceGroup, isExhausted, STANDARD_CONTROL, type StepControl } from './group-advance.ts';
import { loneCycleTime } from './lone-cycle.ts';
import { prepareLoads } from './prepare-loads.ts';
import type { PlantProblem, PlantReport } from './report-types.ts';
import { assignCrew } from './shop-crew.ts';
import { beginTask, endDryingStages, handleEvent, serveIdleChambers } from './shop-phases.ts';
import { plantReport } from './shop-report.ts';
import { openShop, type Shop } from './shop-state.ts';
import type { ShopSpec } from './types.ts';

/** A load still in primary drying after this long is not going to end [s]. */
const STALLED = 10 * 86_400;

/** Advances the groups to the next event; returns the group whose drying reached a mark first, or null. */
function advanceToNextEvent(shop: Shop): number | null {
  let until = Math.min(nextTime(shop.queue), shop.end);
  let owner: number | null = null;
  shop.groups.forEach((run, index) => {
    if (run.finished.length === 0) advanceGroup(run, until, shop.now);
    if (run.finished.length > 0 && run.group.time < until) {
      until = run.group.time;
      owner = index;
    }
  });
  shop.now = until;
  return owner;
}

function dispatch(shop: Shop): void {
  serveIdleChambers(shop);
  for (const request of assignCrew(shop)) beginTask(shop, request);
}

function handleQueued(shop: Shop): PlantProblem | null {
  const event = popEvent(shop.queue);
  return event ? handleEvent(shop, event.payload) : null;
}

function stalledLoad(shop: Shop): PlantProblem | null {
  for (const chamber of shop.chambers) {
    if (chamber.phase !== 'primary' && chamber.phase !== 'secondary') continue;
    if (shop.now - chamber.phaseSince < STALLED) continue;
    const unit = shop.groups[chamber.group]?.group.units[chamber.unit];
    const productId = chamber.current?.load.product.id ?? '';
    return {
      kind: 'dryingStalls',
      productId,
      chamber: chamber.spec.chamber.name,
      reason: unit?.drying.limit ?? 'desorption',
    };
  }
  return null;
}

function runToEnd(shop: Shop): PlantProblem | null {
  while (shop.now < shop.end) {
    const owner = advanceToNextEvent(shop);
    const wild = shop.groups.find(isExhausted);
    if (wild) return { kind: 'cannotFollow', pump: wild.group.spec.pump.name };
    if (shop.now >= shop.end) break;
    if (owner !== null) endDryingStages(shop, owner);
    else {
      const problem = handleQueued(shop);
      if (problem) return problem;
    }
    if (nextTime(shop.queue) > shop.now) dispatch(shop);
  }
  return stalledLoad(shop);
}

/** Time between the first loads of two chambers [s]: evenly over a lone chamber's cycle when staggered. */
function firstLoadSpacing(spec: ShopSpec): number {
  if (spec.startPattern !== 'staggered') return 0;
  const count = spec.groups.reduce((sum, group) => sum + group.chambers.length, 0);
  return loneCycleTime(spec) / count;
}

/**
 * Runs a shop over its warm-up and measured weeks: the continuous model of every pump group, interrupted by the events of
 * crew, freezer and pump-downs. Deterministic. A problem instead of a report when the shop cannot work as described.
 */
export function simulateShop(
  spec: ShopSpec,
  control: StepControl = STANDARD_CONTROL,
): Result<PlantReport, PlantProblem> {
  const prepared = prepareLoads(spec);
  if (!prepared.ok) return prepared;
  const shop = openShop(spec, prepared.value, firstLoadSpacing(spec), control);
  const problem = runToEnd(shop);
  return problem ? fail(problem) : succeed(plantReport(shop));
}
