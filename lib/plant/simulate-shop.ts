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

function stepUntil(shop: Shop, time: number): PlantProblem | null {
  while (shop.now < time) {
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
  return null;
}

/** Time between the first loads of two chambers [s]: evenly over a lone chamber's cycle when staggered. */
function firstLoadSpacing(spec: ShopSpec): number {
  if (spec.startPattern !== 'staggered') return 0;
  const count = spec.groups.reduce((sum, group) => sum + group.chambers.length, 0);
  return loneCycleTime(spec) / count;
}

function opened(spec: ShopSpec, control: StepControl): Result<Shop, PlantProblem> {
  const prepared = prepareLoads(spec);
  return prepared.ok ? succeed(openShop(spec, prepared.value, firstLoadSpacing(spec), control)) : prepared;
}

/** Runs to a time [s] or to the end, whichever comes first; null when the end is still to come. */
function runUntil(shop: Shop, time: number): Result<PlantReport, PlantProblem> | null {
  const problem = stepUntil(shop, Math.min(time, shop.end));
  if (problem) return fail(problem);
  return shop.now < shop.end ? null : finished(shop);
}

function finished(shop: Shop): Result<PlantReport, PlantProblem> {
  const stalled = stalledLoad(shop);
  return stalled ? fail(stalled) : succeed(plantReport(shop));
}

/** A shop that is run a part at a time: runs on by a time [s]. Gives the outcome once the end is reached, null before. */
export type ShopRun = (seconds: number) => Result<PlantReport, PlantProblem> | null;

/** Opens a shop to be run a part at a time. The outcome is that of `simulateShop`, however it is cut up. */
export function openRun(spec: ShopSpec, control: StepControl = STANDARD_CONTROL): ShopRun {
  const shop = opened(spec, control);
  return (seconds) => (shop.ok ? runUntil(shop.value, shop.value.now + seconds) : shop);
}

/**
 * Runs a shop over its warm-up and measured weeks: the continuous model of every pump group, interrupted by the events of
 * crew, freezer and pump-downs. Deterministic. A problem instead of a report when the shop cannot work as described.
 */
export function simulateShop(
  spec: ShopSpec,
  control: StepControl = STANDARD_CONTROL,
): Result<PlantReport, PlantProblem> {
  const shop = opened(spec, control);
  if (!shop.ok) return shop;
  const problem = stepUntil(shop.value, shop.value.end);
  return problem ? fail(problem) : finished(shop.value);
}
