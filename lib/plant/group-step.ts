import { exp } from '../numeric/portable-math.ts';
import type { ChamberRates } from './chamber-rates.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import {
  balanceGroup,
  type GroupRates,
  groupRates,
  groupRatesRecord,
  isActive,
  setPorts,
  setVapourLoad,
} from './group-rates.ts';
import { DRIED, GAS, HEAT, MOISTURE, PUMPED, type PumpGroup, STATE_SIZE, TEMPERATURE } from './group-state.ts';
import type { LoadLaw } from './load-law.ts';
import type { ManifoldPort } from './manifold.ts';

/**
 * One step of a mixed method. The slow values (dried fraction, moisture, water, heat) advance by Heun's method. The fast
 * ones (gas pressures and load temperatures, with the manifold pressure that ties them together) advance by the
 * variable-step two-step backward formula, solved to convergence, so that a step may be far longer than their seconds.
 * The first step after an event is backward Euler. Second order otherwise.
 */
export interface StepWork {
  /** Rates at the start of the step and at its end. */
  first: GroupRates;
  second: GroupRates;
  /** True when `first` has been taken over from the end of the step before. */
  knowsStart: boolean;
  readonly trial: Float64Array;
  readonly next: Float64Array;
  /** Fast values before the present ones, and how long before [s]; 0 after an event, when there is none to use. */
  readonly earlier: Float64Array;
  earlierBy: number;
  /** True when the last step left the earlier point where it was. */
  keptEarlier: boolean;
  /** Time derivative that the formula gave at the present state [Pa/s], [K/s]. */
  readonly slope: Float64Array;
  readonly nextSlope: Float64Array;
  /** Last Newton step of each gas pressure [Pa]. */
  readonly gasStep: Float64Array;
}

export function stepWork(count: number): StepWork {
  const size = count * STATE_SIZE;
  return {
    first: groupRatesRecord(count),
    second: groupRatesRecord(count),
    knowsStart: false,
    trial: new Float64Array(size),
    next: new Float64Array(size),
    earlier: new Float64Array(size),
    earlierBy: 0,
    keptEarlier: false,
    slope: new Float64Array(size),
    nextSlope: new Float64Array(size),
    gasStep: new Float64Array(count),
  };
}

/**
 * Rates at the start of a step into `work.first`; they serve every trial length of that step. Within a stretch without events
 * they are those of the end of the step before where the prediction they were worked out at has come true.
 */
export function beginStep(group: PumpGroup, work: StepWork): void {
  if (work.knowsStart) return;
  groupRates(group, group.time, group.state, work.first);
  if (work.earlierBy > 0) return;
  for (let i = 0; i < group.units.length; i += 1) {
    const at = i * STATE_SIZE;
    work.slope[at + GAS] = work.first.gas[i] as number;
    work.slope[at + TEMPERATURE] = (work.first.chambers[i] as ChamberRates).temperature;
  }
}

/** Coefficients of the backward formula for a step: lead·y_new − present·y + earlier·y_old = length·y'. */
interface BackwardFormula {
  readonly lead: number;
  readonly present: number;
  readonly earlier: number;
}

const EULER: BackwardFormula = { lead: 1, present: 1, earlier: 0 };

function backwardFormula(length: number, before: number): BackwardFormula {
  if (before <= 0) return EULER;
  const ratio = length / before;
  return { lead: (1 + 2 * ratio) / (1 + ratio), present: 1 + ratio, earlier: (ratio * ratio) / (1 + ratio) };
}

function history(group: PumpGroup, work: StepWork, formula: BackwardFormula, at: number): number {
  return formula.present * (group.state[at] as number) - formula.earlier * (work.earlier[at] as number);
}

const MAX_ITERATIONS = 30;
/** Newton stops after a correction below this share, which is taken over along the slopes: what is left is its square. */
const TOLERANCE = 2e-3;
/** A kelvin counts as this share, so that temperatures settle to a fifth of a kelvin. */
const TEMPERATURE_WEIGHT = 1e-2;

/** Trial temperatures are kept where the laws hold [K]; a solution never lies at these bounds. */
const COLDEST = 180;
const HOTTEST = 450;

function sensible(temperature: number): number {
  return Math.min(HOTTEST, Math.max(COLDEST, temperature));
}

/** Moisture after a step, exact for the rate constant averaged over it: w_e + (w − w_e)·exp(−∫k·dt), stable however fast it is. */
function moistureAt(unit: ChamberUnit, moisture: number, exponent: number): number {
  if (exponent === 0 || !unit.load) return moisture;
  const { equilibrium } = unit.load.product.desorption;
  return equilibrium + (moisture - equilibrium) * exp(-exponent);
}

/** Predicts every value at the end of the step: slow ones by Euler, fast ones along their last slope. */
function predict(group: PumpGroup, work: StepWork, length: number): void {
  const { first, trial } = work;
  const { state, units } = group;
  trial.set(state);
  for (let i = 0; i < units.length; i += 1) {
    if (!isActive(units[i] as ChamberUnit)) continue;
    const at = i * STATE_SIZE;
    const chamber = first.chambers[i] as ChamberRates;
    trial[at + DRIED] = (state[at + DRIED] as number) + length * chamber.dried;
    trial[at + MOISTURE] = moistureAt(
      units[i] as ChamberUnit,
      state[at + MOISTURE] as number,
      length * chamber.desorption,
    );
    trial[at + PUMPED] = (state[at + PUMPED] as number) + length * (first.pumped[i] as number);
    trial[at + GAS] = Math.max(0, (state[at + GAS] as number) + length * (work.slope[at + GAS] as number));
    if ((units[i] as ChamberUnit).mode !== 'secondary') continue;
    trial[at + TEMPERATURE] = sensible(
      (state[at + TEMPERATURE] as number) + length * (work.slope[at + TEMPERATURE] as number),
    );
  }
}

/** What is still to be corrected after a Newton step: the largest relative change of a gas pressure. */
const change = { largest: 0, manifold: 0 };

/** Newton step for the load temperature of one chamber [K]; its equation hardly feels the gas. */
function correctTemperature(
  group: PumpGroup,
  work: StepWork,
  formula: BackwardFormula,
  length: number,
  i: number,
): void {
  const at = i * STATE_SIZE + TEMPERATURE;
  const chamber = work.second.chambers[i] as ChamberRates;
  const residual =
    formula.lead * (work.trial[at] as number) - history(group, work, formula, at) - length * chamber.temperature;
  const step = residual / (formula.lead - length * chamber.temperatureSlope);
  work.trial[at] = sensible((work.trial[at] as number) - step);
  change.largest = Math.max(change.largest, Math.abs(step) * TEMPERATURE_WEIGHT);
}

/** Change of the manifold pressure that goes with a Newton step of the gas pressures [Pa]; the balance itself holds already. */
function manifoldStep(group: PumpGroup, work: StepWork, formula: BackwardFormula, length: number): number {
  const { second } = work;
  let residual = 0;
  let { slope } = second.balance;
  for (let i = 0; i < group.units.length; i += 1) {
    const port = second.ports[i] as ManifoldPort;
    if (!port.open) continue;
    const pivot = formula.lead - length * (second.gasByGas[i] as number);
    const byGas = port.byPressure * (second.chambers[i] as ChamberRates).followsGas;
    residual -= (byGas * gasResidual(group, work, formula, length, i)) / pivot;
    slope += (byGas * length * (second.gasByManifold[i] as number)) / pivot;
  }
  // Nothing answers when the hoses are choked and the pump is at its end: the pressure stays where it is.
  return slope < 0 ? -residual / slope : 0;
}

function gasResidual(group: PumpGroup, work: StepWork, formula: BackwardFormula, length: number, i: number): number {
  const at = i * STATE_SIZE + GAS;
  return (
    formula.lead * (work.trial[at] as number) -
    history(group, work, formula, at) -
    length * (work.second.gas[i] as number)
  );
}

/** One Newton step for all gas pressures, tied together by the manifold: an arrow-shaped system, solved in one sweep. */
function correctGas(group: PumpGroup, work: StepWork, formula: BackwardFormula, length: number): void {
  const { second, trial } = work;
  const step = second.manifold > 0 ? manifoldStep(group, work, formula, length) : 0;
  for (let i = 0; i < group.units.length; i += 1) {
    if (!isActive(group.units[i] as ChamberUnit)) continue;
    const at = i * STATE_SIZE + GAS;
    const pivot = formula.lead - length * (second.gasByGas[i] as number);
    const coupling = length * (second.gasByManifold[i] as number) * step;
    const wanted = (trial[at] as number) - (gasResidual(group, work, formula, length, i) - coupling) / pivot;
    const corrected = Math.max(0, wanted);
    work.gasStep[i] = corrected - (trial[at] as number);
    change.largest = Math.max(change.largest, Math.abs(work.gasStep[i] as number) / (1 + corrected));
    trial[at] = corrected;
  }
  change.manifold = step;
}

/**
 * Takes the last, small Newton step over into the rates at the end of the step along their slopes, which is as good as working
 * them out again to the square of that step.
 */
function followCorrection(group: PumpGroup, work: StepWork): void {
  const { second } = work;
  second.manifold += change.manifold;
  for (let i = 0; i < group.units.length; i += 1) {
    const unit = group.units[i] as ChamberUnit;
    if (!isActive(unit)) continue;
    const chamber = second.chambers[i] as ChamberRates;
    const port = second.ports[i] as ManifoldPort;
    const step = work.gasStep[i] as number;
    chamber.gas += step;
    chamber.pressure += chamber.followsGas * step;
    port.throughput += port.byPressure * chamber.followsGas * step + port.byManifold * change.manifold;
    if (port.throughput > 0)
      second.pumped[i] = port.throughput * (1 - chamber.gas / chamber.pressure) * unit.waterPerThroughput;
    if (unit.mode === 'primary' && unit.load) followFlow(unit, unit.load, chamber, step);
  }
}

/** The flow of vapour after a small change of gas; heat goes with it. */
function followFlow(unit: ChamberUnit, load: LoadLaw, chamber: ChamberRates, step: number): void {
  const { flow } = chamber;
  chamber.flow = Math.max(0, flow + unit.drying.flowByGas * step);
  chamber.dried = chamber.flow / load.ice;
  if (flow > 0) chamber.heat *= chamber.flow / flow;
}

/** Solves the fast values at the end of the step into `trial`; false when Newton's method does not settle. */
function solveFast(group: PumpGroup, work: StepWork, formula: BackwardFormula, length: number): boolean {
  setPorts(group, work.second);
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration += 1) {
    balanceGroup(group, group.time + length, work.trial, work.second);
    change.largest = 0;
    for (let i = 0; i < group.units.length; i += 1) {
      if ((group.units[i] as ChamberUnit).mode === 'secondary') correctTemperature(group, work, formula, length, i);
    }
    correctGas(group, work, formula, length);
    if (change.largest <= TOLERANCE) {
      followCorrection(group, work);
      return true;
    }
  }
  return false;
}

/** Heun's corrector for the slow values, the solved fast ones taken over. */
function correctSlow(group: PumpGroup, work: StepWork, length: number): void {
  const { first, second, trial, next } = work;
  const { state, units } = group;
  next.set(state);
  for (let i = 0; i < units.length; i += 1) {
    if (!isActive(units[i] as ChamberUnit)) continue;
    const at = i * STATE_SIZE;
    const a = first.chambers[i] as ChamberRates;
    const b = second.chambers[i] as ChamberRates;
    const half = 0.5 * length;
    next[at + DRIED] = (state[at + DRIED] as number) + half * (a.dried + b.dried);
    const exponent = half * (a.desorption + b.desorption);
    next[at + MOISTURE] = moistureAt(units[i] as ChamberUnit, state[at + MOISTURE] as number, exponent);
    next[at + HEAT] = (state[at + HEAT] as number) + half * (a.heat + b.heat);
    next[at + PUMPED] =
      (state[at + PUMPED] as number) + half * ((first.pumped[i] as number) + (second.pumped[i] as number));
    next[at + GAS] = trial[at + GAS] as number;
    next[at + TEMPERATURE] = trial[at + TEMPERATURE] as number;
  }
}

/**
 * State after a step of `length` seconds, into `work.next`; `beginStep` must have been called at this state. False when
 * the fast values cannot be solved for, in which case a shorter step must be tried.
 */
export function tryStep(group: PumpGroup, work: StepWork, length: number): boolean {
  const formula = backwardFormula(length, work.earlierBy);
  predict(group, work, length);
  const solved = solveFast(group, work, formula, length);
  setVapourLoad(group, work.second);
  correctSlow(group, work, length);
  for (let i = 0; i < group.units.length; i += 1) {
    for (const place of [GAS, TEMPERATURE]) {
      const at = i * STATE_SIZE + place;
      const value = work.next[at] as number;
      work.nextSlope[at] = (formula.lead * value - history(group, work, formula, at)) / length;
    }
  }
  return solved;
}

/** A step shorter than this share of the one before is not worth looking back from: the older point is kept, but only once. */
const SHORT_STEP = 0.4;

/** Largest share by which a dried fraction may differ from its prediction and still have its rate taken over. */
const SAME = 3e-4;

/** True when the rates worked out at the predicted end of the step hold at its corrected end too. */
function predictionHolds(group: PumpGroup, work: StepWork): boolean {
  for (let i = 0; i < group.units.length; i += 1) {
    const at = i * STATE_SIZE + DRIED;
    const dried = work.next[at] as number;
    if (Math.abs(dried - (work.trial[at] as number)) > SAME * dried) return false;
  }
  return true;
}

/** Makes the tried step the present state. */
export function acceptStep(group: PumpGroup, work: StepWork, length: number): void {
  const holds = predictionHolds(group, work);
  work.keptEarlier = !work.keptEarlier && length < SHORT_STEP * work.earlierBy;
  if (work.keptEarlier) work.earlierBy += length;
  else {
    work.earlier.set(group.state);
    work.earlierBy = length;
  }
  work.slope.set(work.nextSlope);
  group.state.set(work.next);
  const { first } = work;
  work.first = work.second;
  work.second = first;
  work.knowsStart = holds;
}

/** Forgets the past of the fast values: something has just changed by a jump. */
export function forgetSlopes(work: StepWork): void {
  work.earlierBy = 0;
  work.knowsStart = false;
}

/** Size of the second-order part of the step for one chamber, by place: what the error control looks at. */
export function secondOrderPart(group: PumpGroup, work: StepWork, length: number, i: number, place: number): number {
  const at = i * STATE_SIZE;
  if (!isActive(group.units[i] as ChamberUnit)) return 0;
  const a = work.first.chambers[i] as ChamberRates;
  const b = work.second.chambers[i] as ChamberRates;
  if (place === DRIED) return 0.5 * length * Math.abs(b.dried - a.dried);
  if (place === MOISTURE) return Math.abs((work.next[at + MOISTURE] as number) - (work.trial[at + MOISTURE] as number));
  if (place === TEMPERATURE && (group.units[i] as ChamberUnit).mode !== 'secondary') return 0;
  const predicted = (group.state[at + place] as number) + length * (work.slope[at + place] as number);
  return 0.5 * Math.abs((work.next[at + place] as number) - predicted);
}
