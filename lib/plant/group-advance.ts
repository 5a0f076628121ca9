import { log } from '../numeric/portable-math.ts';
import type { ChamberRates } from './chamber-rates.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import { DRIED, GAS, HEAT, MOISTURE, PUMPED, type PumpGroup, STATE_SIZE, TEMPERATURE } from './group-state.ts';
import {
  acceptStep,
  beginStep,
  forgetSlopes,
  type StepWork,
  secondOrderPart,
  stepWork,
  tryStep,
} from './group-step.ts';
import { limitCode } from './limit-codes.ts';
import type { LoadLaw } from './load-law.ts';
import {
  appendStep,
  LOG_DRIED,
  LOG_END,
  LOG_GAS,
  LOG_HEAD,
  LOG_HEAT,
  LOG_HOSE,
  LOG_LIMIT,
  LOG_LOST,
  LOG_MANIFOLD,
  LOG_PRESSURE,
  LOG_PUMPED,
  LOG_SIZE,
  LOG_START,
  LOG_VAPOUR,
  type StepLog,
  stepCount,
  stepLog,
  truncateLog,
} from './step-log.ts';

/** How finely a group is integrated. */
export interface StepControl {
  /** Largest change not explained by the first-order part, per step: of the dried fraction and of relative moisture. */
  readonly tolerance: number;
  /** Longest step [s]. */
  readonly longest: number;
}

/** Batch times stay within 0.1 % of a tight integration with this setting (measured by the accuracy test). */
export const STANDARD_CONTROL: StepControl = { tolerance: 1e-3, longest: 7200 };

const FIRST_STEP = 6;
const GENTLE_STEP = 60;
const SHORTEST_STEP = 1e-3;
/** The two-step formula stays stable up to a growth of 1 + √2 from one step to the next. */
const GROWTH = 2.4;
const TEMPERATURE_TOLERANCE = 0.5;
/** Moisture is held this much tighter than the ice, because its last part decides the time. */
const MOISTURE_SHARE = 0.1;
const GAS_ABSOLUTE = 0.5;
const GAS_RELATIVE = 0.03;
/** A load counts as through its stage within this of the mark. */
const CROSSING = 1e-9;

/** A state that the group may have to go back to. */
interface StatePoint {
  readonly time: number;
  readonly state: Float64Array;
  readonly steps: number;
}

/** A group with what its integration needs to go on, look back and be read afterwards. */
export interface GroupRun {
  readonly group: PumpGroup;
  readonly work: StepWork;
  readonly log: StepLog;
  readonly control: StepControl;
  /** State before each step since the clock was last settled. */
  readonly past: StatePoint[];
  readonly spare: Float64Array[];
  /** What held each chamber back at the start of the step, as codes. */
  readonly limits: number[];
  /** Chambers whose stage ended at the group's present time; empty when none. */
  finished: number[];
  nextLength: number;
}

export function groupRun(group: PumpGroup, control: StepControl): GroupRun {
  const count = group.units.length;
  return {
    group,
    work: stepWork(count),
    log: stepLog(count),
    control,
    past: [],
    spare: [],
    limits: [],
    finished: [],
    nextLength: FIRST_STEP,
  };
}

/** Starts the next step short again: something has just changed. */
export function restartSteps(run: GroupRun): void {
  forgetSlopes(run.work);
  run.nextLength = FIRST_STEP;
}

/** Starts anew after a chamber has only stopped giving off vapour or been shut off: its neighbours feel that slowly. */
export function restartGently(run: GroupRun): void {
  forgetSlopes(run.work);
  run.nextLength = GENTLE_STEP;
}

/** Distance to the end of the present stage: the ice, or the moisture above the target, relative to their start. */
function remaining(unit: ChamberUnit, state: Float64Array, at: number): number {
  if (unit.mode === 'pumping')
    return log(((state[at + GAS] as number) + unit.drying.vapourPressure) / unit.spec.pressureCeiling);
  if (unit.flooded || !unit.load) return Number.POSITIVE_INFINITY;
  if (unit.mode === 'primary') return 1 - (state[at + DRIED] as number);
  if (unit.mode !== 'secondary') return Number.POSITIVE_INFINITY;
  return ((state[at + MOISTURE] as number) - unit.load.product.desorption.target) / unit.load.boundMoisture;
}

function stepError(run: GroupRun, length: number): number {
  const { group, work, control } = run;
  let worst = 0;
  for (let i = 0; i < group.units.length; i += 1) {
    const gas = work.next[i * STATE_SIZE + GAS] as number;
    const moistureScale = (group.units[i] as ChamberUnit).load?.boundMoisture || 1;
    worst = Math.max(
      worst,
      secondOrderPart(group, work, length, i, DRIED) / control.tolerance,
      secondOrderPart(group, work, length, i, MOISTURE) / (MOISTURE_SHARE * control.tolerance * moistureScale),
      secondOrderPart(group, work, length, i, TEMPERATURE) / TEMPERATURE_TOLERANCE,
      secondOrderPart(group, work, length, i, GAS) / (GAS_ABSOLUTE + GAS_RELATIVE * gas),
    );
  }
  return worst;
}

/** Tries shorter and shorter steps until the error is acceptable; returns the length taken and proposes the next. */
function acceptableStep(run: GroupRun, wanted: number): number {
  let length = wanted;
  for (;;) {
    const solved = tryStep(run.group, run.work, length);
    const error = solved ? stepError(run, length) : Number.POSITIVE_INFINITY;
    const factor = error > 0 ? 0.9 / Math.sqrt(error) : GROWTH;
    if (error <= 1 || length <= SHORTEST_STEP) {
      // A step cut short by an event elsewhere says nothing against the length that was planned.
      const planned = length < run.nextLength && length === wanted ? run.nextLength : 0;
      const proposed = Math.max(planned, SHORTEST_STEP, length * Math.min(GROWTH, factor));
      run.nextLength = Math.min(run.control.longest, proposed);
      return length;
    }
    length = Math.max(SHORTEST_STEP, length * Math.max(0.1, factor));
  }
}

/** Earliest moment inside the step at which a stage ends, as a share of its length; 1 when none does. */
function crossingShare(run: GroupRun, length: number): number {
  const { group, work } = run;
  let share = 1;
  for (let i = 0; i < group.units.length; i += 1) {
    const unit = group.units[i] as ChamberUnit;
    const at = i * STATE_SIZE;
    const before = remaining(unit, group.state, at);
    const after = remaining(unit, work.next, at);
    if (after > 0 || before === Number.POSITIVE_INFINITY) continue;
    share = Math.min(share, rootOfParabola(before, startSlope(unit, group.state, work, at) * length, after));
  }
  return share;
}

function startSlope(unit: ChamberUnit, state: Float64Array, work: StepWork, at: number): number {
  const chamber = work.first.chambers[at / STATE_SIZE] as ChamberRates;
  if (unit.mode === 'pumping')
    return (work.slope[at + GAS] as number) / ((state[at + GAS] as number) + unit.drying.vapourPressure);
  if (unit.mode === 'primary') return -chamber.dried;
  return chamber.moisture / (unit.load as LoadLaw).boundMoisture;
}

/** First root in (0, 1] of the parabola with value `start` > 0 and slope `slope` at 0 and value `end` ≤ 0 at 1. */
function rootOfParabola(start: number, slope: number, end: number): number {
  const bend = end - start - slope;
  const root = Math.sqrt(Math.max(0, slope * slope - 4 * bend * start));
  return Math.min(1, Math.max(1e-12, (2 * start) / (root - slope)));
}

function snapFinished(run: GroupRun): void {
  const { units } = run.group;
  const { next } = run.work;
  for (let i = 0; i < units.length; i += 1) {
    const unit = units[i] as ChamberUnit;
    const at = i * STATE_SIZE;
    if (remaining(unit, next, at) > CROSSING) continue;
    if (unit.mode === 'primary') next[at + DRIED] = 1;
    else if (unit.mode === 'secondary') next[at + MOISTURE] = (unit.load as LoadLaw).product.desorption.target;
    run.finished.push(i);
  }
}

/** Water a chamber's load gives off over the step [kg]. */
function waterLost(run: GroupRun, load: LoadLaw, at: number): number {
  const { state } = run.group;
  const { next } = run.work;
  const dried = (next[at + DRIED] as number) - (state[at + DRIED] as number);
  const moisture = (state[at + MOISTURE] as number) - (next[at + MOISTURE] as number);
  return load.ice * dried + load.dryMatter * moisture;
}

function logChamber(run: GroupRun, i: number, to: number): void {
  const { group, work, log } = run;
  const { load } = group.units[i] as ChamberUnit;
  const at = i * STATE_SIZE;
  const chamber = work.first.chambers[i] as ChamberRates;
  const open = work.first.ports[i]?.open ?? false;
  log.values[to + LOG_LOST] = load ? waterLost(run, load, at) : 0;
  log.values[to + LOG_PUMPED] = (work.next[at + PUMPED] as number) - (group.state[at + PUMPED] as number);
  log.values[to + LOG_HEAT] = (work.next[at + HEAT] as number) - (group.state[at + HEAT] as number);
  log.values[to + LOG_PRESSURE] = chamber.pressure;
  log.values[to + LOG_GAS] = chamber.gas;
  log.values[to + LOG_LIMIT] = run.limits[i] as number;
  log.values[to + LOG_DRIED] = group.state[at + DRIED] as number;
  log.values[to + LOG_HOSE] = open ? (chamber.pressure - work.first.manifold) / chamber.pressure : 0;
}

function logStep(run: GroupRun, length: number): void {
  const { group, work, log } = run;
  const at = appendStep(log);
  log.values[at + LOG_START] = group.time;
  log.values[at + LOG_END] = group.time + length;
  log.values[at + LOG_MANIFOLD] = work.first.manifold;
  log.values[at + LOG_VAPOUR] = work.first.vapourLoad;
  for (let i = 0; i < group.units.length; i += 1) logChamber(run, i, at + LOG_HEAD + i * LOG_SIZE);
}

/** The parabola misses by the cube of the step; two more tries bring the end of the stage onto the mark. */
const CROSSING_TRIES = 3;

function landOnCrossing(run: GroupRun, length: number): number {
  let landed = length;
  for (let i = 0; i < CROSSING_TRIES; i += 1) {
    const share = crossingShare(run, landed);
    if (share >= 1) break;
    landed *= share;
    tryStep(run.group, run.work, landed);
  }
  return landed;
}

/** Code of what holds a chamber's drying back now; 0 when no load is drying. */
function limitOf(unit: ChamberUnit): number {
  if (unit.mode !== 'primary' && unit.mode !== 'secondary') return 0;
  return limitCode(unit.flooded ? 'flooded' : unit.drying.limit);
}

/** Notes the present state, in an array that an earlier, forgotten note used where there is one. */
function rememberState(run: GroupRun): void {
  const state = run.spare.pop() ?? new Float64Array(run.group.state.length);
  state.set(run.group.state);
  run.past.push({ time: run.group.time, state, steps: stepCount(run.log) });
}

function takeStep(run: GroupRun, until: number): void {
  const { group, work } = run;
  rememberState(run);
  beginStep(group, work);
  for (let i = 0; i < group.units.length; i += 1) run.limits[i] = limitOf(group.units[i] as ChamberUnit);
  const length = acceptableStep(run, Math.min(run.nextLength, until - group.time));
  const landed = landOnCrossing(run, length);
  snapFinished(run);
  logStep(run, landed);
  acceptStep(group, work, landed);
  const atEnd = landed === length && group.time + length >= until - SHORTEST_STEP * 1e-3;
  group.time = atEnd ? until : group.time + landed;
}

/** Drops the memory of steps that end at or before `settled`, where the clock can no longer go back to. */
function forgetPast(run: GroupRun, settled: number): void {
  let keep = run.past.length - 1;
  while (keep > 0 && (run.past[keep]?.time ?? 0) > settled) keep -= 1;
  for (let i = 0; i < keep; i += 1) run.spare.push((run.past[i] as StatePoint).state);
  if (keep > 0) run.past.splice(0, keep);
}

/**
 * Integrates a group from its present time towards `until` [s]; stops early when a load ends a stage (`run.finished`).
 * @param settled time before which nothing can change any more [s]
 */
export function advanceGroup(run: GroupRun, until: number, settled: number): void {
  forgetPast(run, settled);
  while (run.group.time < until && run.finished.length === 0 && !isExhausted(run)) takeStep(run, until);
}

/** A shop of ten chambers takes 20 000 steps for its six weeks; one that needs this many is not a shop any more. */
const MOST_STEPS = 250_000;

/** True when a group has used up its steps: its pressures change faster than can be followed. */
export function isExhausted(run: GroupRun): boolean {
  return stepCount(run.log) >= MOST_STEPS;
}

/** Takes a group that has run ahead back to `time`, as if the steps beyond had not been taken. */
export function rewindGroup(run: GroupRun, time: number): void {
  const { group, past } = run;
  if (group.time <= time) return;
  let index = past.length - 1;
  while (index > 0 && (past[index]?.time ?? 0) > time) index -= 1;
  const point = past[index];
  if (!point || point.time > time) throw new RangeError(`cannot rewind from ${group.time} s to ${time} s`);
  group.state.set(point.state);
  group.time = point.time;
  truncateLog(run.log, point.steps);
  past.splice(index);
  run.finished = [];
  forgetSlopes(run.work);
  if (time > group.time) {
    run.nextLength = time - group.time;
    advanceGroup(run, time, 0);
  }
}
