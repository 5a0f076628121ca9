import { pumpSpeed } from '../physics/pump-speed.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import { advanceGroup, type GroupRun, groupRun, STANDARD_CONTROL } from './group-advance.ts';
import { GAS, type PumpGroup, pumpGroup, setValue, stateValue } from './group-state.ts';
import { type TrapVapour, trapVapour } from './trap-law.ts';
import type { ChamberUnitSpec, PumpSpec } from './types.ts';

export const ATMOSPHERE = 101_325;

/** A pump-down still above the ceiling after this long will not get there [s]. */
const GIVE_UP = 12 * 3600;

export type PumpDown =
  | { readonly kind: 'reached'; readonly duration: number; readonly gas: readonly number[] }
  | { readonly kind: 'stalls'; readonly pressure: number };

function vapourAtRest(unit: ChamberUnit): number {
  const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };
  trapVapour(unit.trap, 0, 0, vapour);
  return vapour.pressure;
}

/** Steps to a time constant V/S: the time to the ceiling is then within 0.2 %, which the error control of drying would not give. */
const STEPS_PER_CONSTANT = 30;

/** After so many time constants a pressure has settled as far as it will; steps may grow again. */
const SETTLED = 30;

/** Time constant of chambers pumped together [s]: Σ V/S at atmosphere. */
function timeConstant(group: PumpGroup): number {
  return group.units.reduce((sum, unit) => sum + unit.spec.volume, 0) / pumpSpeed(group.pump, ATMOSPHERE);
}

/** Runs on to the next chamber that reaches its ceiling. */
function runOn(group: PumpGroup, fine: GroupRun, coarse: GroupRun, fineUntil: number): readonly number[] {
  for (const [run, until] of [
    [fine, Math.min(GIVE_UP, fineUntil)],
    [coarse, GIVE_UP],
  ] as const) {
    advanceGroup(run, until, group.time);
    const { finished } = run;
    run.finished = [];
    if (finished.length > 0) return finished;
  }
  return [];
}

function prepare(group: PumpGroup, pressures: readonly number[]): void {
  group.units.forEach((unit, i) => {
    unit.drying.vapourPressure = vapourAtRest(unit);
    unit.valveOpen = true;
    unit.mode = 'pumping';
    setValue(group, i, GAS, Math.max(0, (pressures[i] as number) - unit.drying.vapourPressure));
  });
}

/**
 * How long one pump takes to bring chambers with open valves from `pressures` [Pa] to their working ceiling [s], and the
 * permanent gas then left in each [Pa]. Leaks, outgassing, hoses and the manifold are the same equations as in drying; the
 * cold trap holds the vapour. `stalls` when the pump cannot get there.
 */
export function pumpDown(chambers: readonly ChamberUnitSpec[], pump: PumpSpec, pressures: readonly number[]): PumpDown {
  const group = pumpGroup({ pump, chambers });
  const constant = timeConstant(group);
  const fine = groupRun(group, { ...STANDARD_CONTROL, longest: constant / STEPS_PER_CONSTANT });
  fine.nextLength = Math.min(fine.nextLength, fine.control.longest);
  const coarse = groupRun(group, STANDARD_CONTROL);
  prepare(group, pressures);
  let left = group.units.filter((unit, i) => {
    const above = stateValue(group, i, GAS) + unit.drying.vapourPressure > unit.spec.pressureCeiling;
    if (!above) unit.mode = 'hold';
    return above;
  }).length;
  while (left > 0) {
    const finished = runOn(group, fine, coarse, SETTLED * constant);
    if (finished.length === 0) return { kind: 'stalls', pressure: highestPressure(group) };
    for (const i of finished) (group.units[i] as ChamberUnit).mode = 'hold';
    left -= finished.length;
  }
  return { kind: 'reached', duration: group.time, gas: group.units.map((_, i) => stateValue(group, i, GAS)) };
}

function highestPressure(group: PumpGroup): number {
  return Math.max(...group.units.map((unit, i) => stateValue(group, i, GAS) + unit.drying.vapourPressure));
}
