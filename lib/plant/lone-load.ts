import type { ChamberUnit } from './chamber-unit.ts';
import {
  advanceGroup,
  type GroupRun,
  groupRun,
  restartSteps,
  STANDARD_CONTROL,
  type StepControl,
} from './group-advance.ts';
import {
  DRIED,
  GAS,
  HEAT,
  iceOnTrap,
  MOISTURE,
  PUMPED,
  pumpGroup,
  setValue,
  stateValue,
  TEMPERATURE,
} from './group-state.ts';
import { LIMIT_CODES } from './limit-codes.ts';
import { type LoadLaw, waterInLoad } from './load-law.ts';
import { ATMOSPHERE, pumpDown } from './pump-down.ts';
import type { DryingLimit } from './report-types.ts';
import {
  chamberValue,
  LOG_DRIED,
  LOG_END,
  LOG_GAS,
  LOG_LIMIT,
  LOG_LOST,
  LOG_PRESSURE,
  LOG_START,
  stepCount,
  stepValue,
} from './step-log.ts';
import type { ChamberUnitSpec, PumpSpec } from './types.ts';

/** One instant of a lone load's drying. */
export interface DryingPoint {
  /** Since the valve was opened [s]. */
  readonly time: number;
  readonly dried: number;
  /** Mean vapour flow over the step that begins here [kg/s]. */
  readonly flow: number;
  readonly pressure: number;
  readonly gasPressure: number;
  readonly limit: DryingLimit | null;
}

export interface LoneLoad {
  readonly pumpDown: number;
  readonly primary: number;
  readonly secondary: number;
  readonly waterIn: number;
  readonly waterOnTrap: number;
  readonly waterThroughPump: number;
  readonly waterLeft: number;
  /** Heat given to the load [J]. */
  readonly heat: number;
  readonly points: readonly DryingPoint[];
}

export type LoneLoadOutcome =
  | { readonly kind: 'dried'; readonly load: LoneLoad }
  | { readonly kind: 'pumpStalls'; readonly pressure: number }
  | { readonly kind: 'dryingStalls'; readonly limit: DryingLimit };

const GIVE_UP = 20 * 86_400;

function startVacuum(run: GroupRun, load: LoadLaw, gas: number): void {
  const { group } = run;
  const unit = group.units[0] as ChamberUnit;
  unit.load = load;
  unit.valveOpen = true;
  unit.mode = load.ice > 0 ? 'primary' : 'secondary';
  setValue(group, 0, DRIED, load.ice > 0 ? 0 : 1);
  setValue(group, 0, MOISTURE, load.boundMoisture);
  setValue(group, 0, TEMPERATURE, load.product.loadingTemperature);
  setValue(group, 0, GAS, gas);
}

function stageEnd(run: GroupRun): boolean {
  advanceGroup(run, run.group.time + GIVE_UP, run.group.time);
  const ended = run.finished.length > 0;
  run.finished = [];
  return ended;
}

function drySecondary(run: GroupRun): boolean {
  const { group } = run;
  const unit = group.units[0] as ChamberUnit;
  const target = unit.load?.product.desorption.target ?? 0;
  if (unit.mode === 'primary') setValue(group, 0, TEMPERATURE, unit.drying.iceTemperature);
  unit.mode = 'secondary';
  restartSteps(run);
  return stateValue(group, 0, MOISTURE) <= target || stageEnd(run);
}

function pointsOf(run: GroupRun): DryingPoint[] {
  const { log } = run;
  return Array.from({ length: stepCount(log) }, (_, step) => {
    const length = stepValue(log, step, LOG_END) - stepValue(log, step, LOG_START);
    return {
      time: stepValue(log, step, LOG_START),
      dried: chamberValue(log, step, 0, LOG_DRIED),
      flow: chamberValue(log, step, 0, LOG_LOST) / length,
      pressure: chamberValue(log, step, 0, LOG_PRESSURE),
      gasPressure: chamberValue(log, step, 0, LOG_GAS),
      limit: LIMIT_CODES[chamberValue(log, step, 0, LOG_LIMIT)] ?? null,
    };
  });
}

/**
 * Dries one load in one chamber on a pump of its own, from atmosphere to the target moisture. The vacuum clock (and the
 * decay of outgassing) starts when the valve opens; `pumpDown` is the time to the working pressure before that [s].
 */
export function dryLoneLoad(
  chamber: ChamberUnitSpec,
  pump: PumpSpec,
  load: LoadLaw,
  control: StepControl = STANDARD_CONTROL,
): LoneLoadOutcome {
  const down = pumpDown([chamber], pump, [ATMOSPHERE]);
  if (down.kind === 'stalls') return { kind: 'pumpStalls', pressure: down.pressure };
  const run = groupRun(pumpGroup({ pump, chambers: [chamber] }), control);
  const unit = run.group.units[0] as ChamberUnit;
  unit.vacuumSince = -down.duration;
  startVacuum(run, load, down.gas[0] as number);
  if (unit.mode === 'primary' && !stageEnd(run)) return { kind: 'dryingStalls', limit: unit.drying.limit };
  const primary = load.ice > 0 ? run.group.time : 0;
  if (!drySecondary(run)) return { kind: 'dryingStalls', limit: 'desorption' };
  return { kind: 'dried', load: summary(run, load, down.duration, primary) };
}

function summary(run: GroupRun, load: LoadLaw, pumpDownTime: number, primary: number): LoneLoad {
  const { group } = run;
  return {
    pumpDown: pumpDownTime,
    primary,
    secondary: group.time - primary,
    waterIn: waterInLoad(load, load.ice > 0 ? 0 : 1, load.boundMoisture),
    waterOnTrap: iceOnTrap(group.units[0] as ChamberUnit, group.state, 0),
    waterThroughPump: stateValue(group, 0, PUMPED),
    waterLeft: waterInLoad(load, stateValue(group, 0, DRIED), stateValue(group, 0, MOISTURE)),
    heat: stateValue(group, 0, HEAT),
    points: pointsOf(run),
  };
}
