import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import type { ChamberUnit } from '../../lib/plant/chamber-unit.ts';
import {
  advanceGroup,
  type GroupRun,
  groupRun,
  restartSteps,
  STANDARD_CONTROL,
  type StepControl,
} from '../../lib/plant/group-advance.ts';
import {
  DRIED,
  GAS,
  MOISTURE,
  PUMPED,
  pumpGroup,
  setValue,
  stateValue,
  TEMPERATURE,
} from '../../lib/plant/group-state.ts';
import { ATMOSPHERE, pumpDown } from '../../lib/plant/pump-down.ts';
import {
  chamberValue,
  LOG_DRIED,
  LOG_END,
  LOG_MANIFOLD,
  LOG_PRESSURE,
  LOG_START,
  stepCount,
  stepValue,
} from '../../lib/plant/step-log.ts';
import type { ChamberUnitSpec, ProductSpec, PumpSpec } from '../../lib/plant/types.ts';

/** Chambers on one pump, each with its load, all started at once. */
export interface SharedStart {
  readonly name: string;
  readonly pump: PumpSpec;
  readonly units: readonly ChamberUnitSpec[];
  readonly products: readonly ProductSpec[];
}

export interface SharedDrying {
  /** From atmosphere to the working pressure [s], and the gas left in each chamber then [Pa]. */
  readonly pumpDown: number;
  readonly gas: readonly number[];
  /** Since the end of the pump-down [s]; primary is 0 for a load without ice. */
  readonly loads: readonly { readonly primary: number; readonly total: number; readonly pumped: number }[];
  /** Mean chamber pressure while the first quarter of the ice goes, by chamber [Pa]; 0 for a load without ice. */
  readonly earlyPressures: readonly number[];
  /** Highest manifold pressure of any step [Pa]. */
  readonly peakManifold: number;
  readonly steps: number;
}

/** Time after which drying that has not ended is a mistake of the test [s]. */
const LONG = 30 * 86_400;

function startLoad(run: GroupRun, i: number, product: ProductSpec, gas: number, pumpedFor: number): void {
  const { group } = run;
  const unit = group.units[i] as ChamberUnit;
  const load = chamberLoad(product, unit.spec);
  unit.load = load;
  unit.mode = load.ice > 0 ? 'primary' : 'secondary';
  unit.valveOpen = true;
  unit.vacuumSince = -pumpedFor;
  setValue(group, i, DRIED, load.ice > 0 ? 0 : 1);
  setValue(group, i, MOISTURE, load.boundMoisture);
  setValue(group, i, TEMPERATURE, product.loadingTemperature);
  setValue(group, i, GAS, gas);
}

/** Moves the loads that have just ended a stage on to the next. */
function nextStage(run: GroupRun, loads: { primary: number; total: number; pumped: number }[]): void {
  const { group } = run;
  for (const i of run.finished) {
    const unit = group.units[i] as ChamberUnit;
    const entry = loads[i] as { primary: number; total: number };
    if (unit.mode === 'primary') {
      entry.primary = group.time;
      setValue(group, i, TEMPERATURE, unit.drying.iceTemperature);
      unit.mode = 'secondary';
    } else {
      entry.total = group.time;
      unit.mode = 'hold';
    }
  }
  run.finished = [];
  restartSteps(run);
}

function peakManifold(run: GroupRun): number {
  let peak = 0;
  for (let step = 0; step < stepCount(run.log); step += 1)
    peak = Math.max(peak, stepValue(run.log, step, LOG_MANIFOLD));
  return peak;
}

/** Time mean of the chamber pressure from step to step, by the trapezium rule, until a quarter of the ice is gone. */
function earlyPressure({ log }: GroupRun, unit: number): number {
  let sum = 0;
  let time = 0;
  for (let step = 0; step + 1 < stepCount(log) && chamberValue(log, step, unit, LOG_DRIED) < 0.25; step += 1) {
    const length = stepValue(log, step, LOG_END) - stepValue(log, step, LOG_START);
    const ends = chamberValue(log, step, unit, LOG_PRESSURE) + chamberValue(log, step + 1, unit, LOG_PRESSURE);
    sum += 0.5 * ends * length;
    time += length;
  }
  return time > 0 ? sum / time : 0;
}

/** Pumps all chambers down together and dries their loads to the end, as the week does between two events. */
export function dryTogether(start: SharedStart, control: StepControl = STANDARD_CONTROL): SharedDrying {
  const { pump, units, products } = start;
  const down = pumpDown(
    units,
    pump,
    units.map(() => ATMOSPHERE),
  );
  if (down.kind === 'stalls') throw new Error(`${start.name}: the pump stalls at ${down.pressure} Pa`);
  const run = groupRun(pumpGroup({ pump, chambers: units }), control);
  products.forEach((product, i) => {
    startLoad(run, i, product, down.gas[i] as number, down.duration);
  });
  const loads = products.map(() => ({ primary: 0, total: 0, pumped: 0 }));
  while (loads.some((load) => load.total === 0)) {
    advanceGroup(run, LONG, run.group.time);
    if (run.finished.length === 0) throw new Error(`${start.name}: a load never dries`);
    nextStage(run, loads);
  }
  loads.forEach((load, i) => {
    load.pumped = stateValue(run.group, i, PUMPED);
  });
  return {
    pumpDown: down.duration,
    gas: down.gas,
    loads,
    earlyPressures: units.map((_, i) => earlyPressure(run, i)),
    peakManifold: peakManifold(run),
    steps: stepCount(run.log),
  };
}
