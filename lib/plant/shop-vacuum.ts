import { equalisedPressure } from '../physics/equalised-pressure.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import { pushEvent } from './event-queue.ts';
import { restartGently, restartSteps, rewindGroup } from './group-advance.ts';
import { DRIED, GAS, HEAT, MOISTURE, PUMPED, setValue, stateValue, TEMPERATURE, underVacuum } from './group-state.ts';
import { ATMOSPHERE, type PumpDown } from './pump-down.ts';
import type { PlantProblem } from './report-types.ts';
import { type ChamberRun, enterPhase, PRIORITY, type PumpRun, type Shop } from './shop-state.ts';
import { stepCount } from './step-log.ts';
import type { PumpSpec } from './types.ts';

/** Brings a group's integration to the present instant before anything in it changes. @param restart how it then goes on */
export function settleGroup(shop: Shop, group: number, restart = restartSteps): void {
  const run = shop.groups[group];
  if (!run) throw new RangeError(`no pump group ${group}`);
  rewindGroup(run, shop.now);
  restart(run);
}

export function unitOf(shop: Shop, chamber: ChamberRun): ChamberUnit {
  return shop.groups[chamber.group]?.group.units[chamber.unit] as ChamberUnit;
}

function groupOf(shop: Shop, chamber: ChamberRun) {
  return (shop.groups[chamber.group] as Shop['groups'][number]).group;
}

/** A loaded and frozen chamber asks for vacuum. */
export function askForVacuum(shop: Shop, chamber: ChamberRun): void {
  enterPhase(shop, chamber, 'waitingForPump');
  const pump = shop.pumps[chamber.group] as PumpRun;
  pump.waiting.push(chamber.index);
  pushEvent(shop.queue, shop.now, PRIORITY.startPumpDown, { kind: 'startPumpDown', group: chamber.group });
}

function othersUnderVacuum(shop: Shop, group: number): ChamberRun[] {
  return shop.chambers.filter((chamber) => chamber.group === group && underVacuum(unitOf(shop, chamber)));
}

function pressureOf(shop: Shop, chamber: ChamberRun): number {
  return stateValue(groupOf(shop, chamber), chamber.unit, GAS) + unitOf(shop, chamber).drying.vapourPressure;
}

/** Common pressure after the valves between newcomers full of air and the others are opened [Pa]. */
function pressureAfterOpening(shop: Shop, newcomers: readonly ChamberRun[], others: readonly ChamberRun[]): number {
  const volumes = [...newcomers, ...others].map((chamber) => chamber.spec.chamber.volume);
  const pressures = [...newcomers.map(() => ATMOSPHERE), ...others.map((chamber) => pressureOf(shop, chamber))];
  return equalisedPressure(volumes, pressures);
}

interface PumpDownPlan {
  readonly chambers: readonly ChamberRun[];
  readonly pump: PumpSpec;
  readonly pressure: number;
}

/** Sets the valves as the shop's practice says and tells what must be pumped down, with which pump, from where. */
function preparePumpDown(shop: Shop, group: number, newcomers: readonly ChamberRun[]): PumpDownPlan {
  const { startPractice, roughingPump } = shop.spec;
  const others = othersUnderVacuum(shop, group);
  const pump = (shop.groups[group] as Shop['groups'][number]).group.spec.pump;
  if (startPractice === 'roughing') {
    if (!roughingPump) throw new RangeError('start practice "roughing" needs a roughing pump, got null');
    return { chambers: newcomers, pump: roughingPump, pressure: ATMOSPHERE };
  }
  if (startPractice === 'isolate') {
    for (const chamber of others) unitOf(shop, chamber).valveOpen = false;
    return { chambers: newcomers, pump, pressure: ATMOSPHERE };
  }
  const pressure = pressureAfterOpening(shop, newcomers, others);
  for (const chamber of others) unitOf(shop, chamber).flooded = true;
  return { chambers: [...newcomers, ...others], pump, pressure };
}

function switchOn(shop: Shop, pump: PumpRun): void {
  if (pump.onSince === null) pump.onSince = shop.now;
}

/** Starts the pump-down of every chamber of the group that is waiting; a problem when the pump cannot do it. */
export function startPumpDown(shop: Shop, group: number): PlantProblem | null {
  const pump = shop.pumps[group] as PumpRun;
  if (pump.busy || pump.waiting.length === 0) return null;
  settleGroup(shop, group, restartGently);
  pump.busy = true;
  pump.members = pump.waiting;
  pump.waiting = [];
  const newcomers = pump.members.map((index) => shop.chambers[index] as ChamberRun);
  for (const chamber of newcomers) enterPhase(shop, chamber, 'pumpDown');
  const plan = preparePumpDown(shop, group, newcomers);
  switchOn(shop, pump);
  const outcome = shop.pumpDowns(
    plan.chambers.map((chamber) => chamber.spec),
    plan.pump,
    plan.pressure,
  );
  if (outcome.kind === 'stalls') return cannotReach(plan, outcome);
  const gas = plan.chambers.map((chamber, i) => [chamber.index, outcome.gas[i] as number] as const);
  pushEvent(shop.queue, shop.now + outcome.duration, PRIORITY.pumpDownDone, { kind: 'pumpDownDone', group, gas });
  return null;
}

function cannotReach(plan: PumpDownPlan, outcome: Extract<PumpDown, { kind: 'stalls' }>): PlantProblem {
  const ceiling = Math.min(...plan.chambers.map((chamber) => chamber.spec.chamber.pressureCeiling));
  return { kind: 'pumpCannotReach', pump: plan.pump.name, pressure: ceiling, reached: outcome.pressure };
}

function beginDrying(shop: Shop, chamber: ChamberRun, gas: number): void {
  const group = groupOf(shop, chamber);
  const unit = unitOf(shop, chamber);
  const load = chamber.current?.load;
  if (!load) throw new RangeError(`chamber ${chamber.index} has no load to dry`);
  unit.load = load;
  unit.valveOpen = true;
  unit.vacuumSince = chamber.phaseSince;
  unit.mode = load.ice > 0 ? 'primary' : 'secondary';
  setValue(group, chamber.unit, DRIED, load.ice > 0 ? 0 : 1);
  setValue(group, chamber.unit, MOISTURE, load.boundMoisture);
  setValue(group, chamber.unit, TEMPERATURE, load.product.loadingTemperature);
  setValue(group, chamber.unit, GAS, gas);
  setValue(group, chamber.unit, PUMPED, 0);
  setValue(group, chamber.unit, HEAT, 0);
  chamber.logFrom = stepCount((shop.groups[chamber.group] as Shop['groups'][number]).log);
  enterPhase(shop, chamber, unit.mode);
}

function rejoin(shop: Shop, chamber: ChamberRun, gas: number): void {
  const unit = unitOf(shop, chamber);
  if (!unit.flooded) return;
  unit.flooded = false;
  setValue(groupOf(shop, chamber), chamber.unit, GAS, gas);
}

/** Ends a pump-down: newcomers start drying, the others get the manifold back. */
export function endPumpDown(shop: Shop, group: number, gas: readonly (readonly [number, number])[]): void {
  const pump = shop.pumps[group] as PumpRun;
  settleGroup(shop, group);
  for (const [index, pressure] of gas) {
    const chamber = shop.chambers[index] as ChamberRun;
    if (pump.members.includes(index)) beginDrying(shop, chamber, pressure);
    else rejoin(shop, chamber, pressure);
  }
  for (const chamber of othersUnderVacuum(shop, group)) unitOf(shop, chamber).valveOpen = true;
  pump.busy = false;
  pump.members = [];
  if (pump.waiting.length > 0)
    pushEvent(shop.queue, shop.now, PRIORITY.startPumpDown, { kind: 'startPumpDown', group });
}

/** Vents a finished chamber; the pump stops when nobody needs it any more. */
export function vent(shop: Shop, chamber: ChamberRun): void {
  const unit = unitOf(shop, chamber);
  unit.mode = 'off';
  unit.valveOpen = false;
  unit.flooded = false;
  unit.load = null;
  const pump = shop.pumps[chamber.group] as PumpRun;
  const needed = pump.busy || pump.waiting.length > 0 || othersUnderVacuum(shop, chamber.group).length > 0;
  if (needed || pump.onSince === null) return;
  pump.spans.push({ start: pump.onSince, end: shop.now });
  pump.onSince = null;
}
