import { closeBatch } from './batch-record.ts';
import { pushEvent } from './event-queue.ts';
import { restartGently } from './group-advance.ts';
import { DRIED, MOISTURE, setValue, stateValue, TEMPERATURE } from './group-state.ts';
import type { LoadLaw } from './load-law.ts';
import type { PlantProblem } from './report-types.ts';
import { requestCrew } from './shop-crew.ts';
import { leaveFreezer, planNext } from './shop-mix.ts';
import {
  type ChamberRun,
  type CrewRequest,
  enterPhase,
  type FinishedBatch,
  type NextLoad,
  PRIORITY,
  type Shop,
  type ShopEvent,
} from './shop-state.ts';
import { askForVacuum, endPumpDown, settleGroup, startPumpDown, unitOf, vent } from './shop-vacuum.ts';

function chamberAt(shop: Shop, index: number): ChamberRun {
  return shop.chambers[index] as ChamberRun;
}

function isIdle(chamber: ChamberRun): boolean {
  return chamber.phase === 'waitingToLoad' || chamber.phase === 'idleNoDemand' || chamber.phase === 'waitingForFreezer';
}

/** True when the shop's start pattern lets this idle chamber be loaded now. */
function patternAllows(shop: Shop, chamber: ChamberRun): boolean {
  if (shop.spec.startPattern === 'together') {
    return shop.chambers.every(
      (other) => isIdle(other) || (other.phase === 'loading' && other.batchesDone === chamber.batchesDone),
    );
  }
  return shop.now >= chamber.earliestStart;
}

/** Moves every idle chamber on: chooses its load, waits for the freezer, or asks for somebody to load it. */
export function serveIdleChambers(shop: Shop): void {
  for (const chamber of shop.chambers) {
    if (!isIdle(chamber) || shop.requests.some((request) => request.chamber === chamber.index)) continue;
    if (!patternAllows(shop, chamber)) continue;
    if (!planNext(shop, chamber)) {
      if (chamber.phase !== 'idleNoDemand') enterPhase(shop, chamber, 'idleNoDemand');
    } else if (!chamber.next?.ready) {
      if (chamber.phase !== 'waitingForFreezer') enterPhase(shop, chamber, 'waitingForFreezer');
    } else {
      if (chamber.phase !== 'waitingToLoad') enterPhase(shop, chamber, 'waitingToLoad');
      requestCrew(shop, chamber, 'load');
    }
  }
}

function beginLoading(shop: Shop, chamber: ChamberRun): void {
  enterPhase(shop, chamber, 'loading');
  chamber.batchStart = shop.now;
  chamber.batchPhases = {};
  const load = chamber.next as NextLoad;
  chamber.current = load;
  chamber.next = null;
  leaveFreezer(shop, load);
}

function beginUnloading(shop: Shop, chamber: ChamberRun): void {
  settleGroup(shop, chamber.group, restartGently);
  chamber.pending = closeBatch(shop, chamber);
  enterPhase(shop, chamber, 'unloading');
  vent(shop, chamber);
}

/** Carries out what happens the moment somebody starts a task. */
export function beginTask(shop: Shop, request: CrewRequest): void {
  const chamber = chamberAt(shop, request.chamber);
  if (request.task === 'load') beginLoading(shop, chamber);
  else if (request.task === 'unload') beginUnloading(shop, chamber);
  else enterPhase(shop, chamber, 'cleaning');
}

function finishBatch(shop: Shop, chamber: ChamberRun): void {
  enterPhase(shop, chamber, 'waitingToLoad');
  const pending = chamber.pending as Omit<FinishedBatch, 'phases' | 'mixIndex' | 'finished'>;
  const mixIndex = (chamber.current as NextLoad).mixIndex;
  shop.batches.push({ ...pending, phases: chamber.batchPhases, mixIndex, finished: shop.now });
  chamber.current = null;
  chamber.pending = null;
  chamber.batchPhases = {};
  chamber.batchesDone += 1;
}

function endTask(shop: Shop, event: Extract<ShopEvent, { kind: 'taskDone' }>): void {
  event.pool.busy -= 1;
  const chamber = chamberAt(shop, event.chamber);
  if (event.task === 'load') {
    enterPhase(shop, chamber, 'freezing');
    const prepared = shop.prepared(chamber.spec, (chamber.current as NextLoad).mixIndex);
    later(shop, chamber, prepared.chamberFreezing);
  } else if (event.task === 'unload') {
    enterPhase(shop, chamber, 'defrost');
    later(shop, chamber, chamber.spec.chamber.defrostTime);
  } else finishBatch(shop, chamber);
}

function later(shop: Shop, chamber: ChamberRun, duration: number): void {
  pushEvent(shop.queue, shop.now + duration, PRIORITY.phaseDone, { kind: 'phaseDone', chamber: chamber.index });
}

function endTimedPhase(shop: Shop, chamber: ChamberRun): void {
  if (chamber.phase === 'freezing') {
    askForVacuum(shop, chamber);
    if (shop.spec.freezer) planNext(shop, chamber);
  } else {
    enterPhase(shop, chamber, 'waitingToClean');
    requestCrew(shop, chamber, 'clean');
  }
}

function beginHold(shop: Shop, chamber: ChamberRun): void {
  unitOf(shop, chamber).mode = 'hold';
  enterPhase(shop, chamber, 'hold');
  requestCrew(shop, chamber, 'unload');
}

function endPrimary(shop: Shop, chamber: ChamberRun, load: LoadLaw): void {
  const group = (shop.groups[chamber.group] as Shop['groups'][number]).group;
  const unit = unitOf(shop, chamber);
  setValue(group, chamber.unit, DRIED, 1);
  setValue(group, chamber.unit, TEMPERATURE, unit.drying.iceTemperature);
  if (stateValue(group, chamber.unit, MOISTURE) <= load.product.desorption.target) beginHold(shop, chamber);
  else {
    unit.mode = 'secondary';
    enterPhase(shop, chamber, 'secondary');
  }
}

/** Moves on every load of a group that has just ended a stage of its drying. */
export function endDryingStages(shop: Shop, group: number): void {
  const run = shop.groups[group] as Shop['groups'][number];
  const finished = run.finished;
  run.finished = [];
  settleGroup(shop, group);
  for (const chamber of shop.chambers) {
    if (chamber.group !== group || !finished.includes(chamber.unit)) continue;
    const unit = unitOf(shop, chamber);
    if (unit.mode === 'primary') endPrimary(shop, chamber, unit.load as LoadLaw);
    else beginHold(shop, chamber);
  }
}

/** Carries out one event; a problem when the shop cannot go on. */
export function handleEvent(shop: Shop, event: ShopEvent): PlantProblem | null {
  switch (event.kind) {
    case 'taskDone':
      endTask(shop, event);
      return null;
    case 'phaseDone':
      endTimedPhase(shop, chamberAt(shop, event.chamber));
      return null;
    case 'frozen':
      (chamberAt(shop, event.chamber).next as NextLoad).ready = true;
      return null;
    case 'pumpDownDone':
      endPumpDown(shop, event.group, event.gas);
      return null;
    case 'startPumpDown':
      return startPumpDown(shop, event.group);
    case 'wake':
      return null;
  }
}
