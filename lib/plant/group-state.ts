import { type PumpLaw, pumpLaw } from '../physics/pump-speed.ts';
import { type ChamberUnit, chamberUnit } from './chamber-unit.ts';
import { waterInLoad } from './load-law.ts';
import type { PumpGroupSpec } from './types.ts';

/** Places of a chamber's continuous values in the group's state vector. */
export const DRIED = 0;
export const MOISTURE = 1;
export const TEMPERATURE = 2;
export const GAS = 3;
/** Water that has gone to the pump since the load was put under vacuum [kg]. */
export const PUMPED = 4;
/** Heat given to the load since then [J]. */
export const HEAT = 5;
export const STATE_SIZE = 6;

/** A pump and its chambers in the middle of a run. */
export interface PumpGroup {
  readonly spec: PumpGroupSpec;
  readonly pump: PumpLaw;
  readonly units: readonly ChamberUnit[];
  /** Continuous state, STATE_SIZE values a chamber. */
  readonly state: Float64Array;
  time: number;
  /** Last manifold pressure [Pa]: where the next search starts. */
  manifold: number;
}

export function pumpGroup(spec: PumpGroupSpec): PumpGroup {
  const units = spec.chambers.map(chamberUnit);
  return {
    spec,
    pump: pumpLaw(spec.pump),
    units,
    state: new Float64Array(units.length * STATE_SIZE),
    time: 0,
    manifold: spec.pump.ultimate,
  };
}

/** One continuous value of one chamber. */
export function stateValue(group: PumpGroup, unit: number, place: number): number {
  return group.state[unit * STATE_SIZE + place] as number;
}

export function setValue(group: PumpGroup, unit: number, place: number, value: number): void {
  group.state[unit * STATE_SIZE + place] = value;
}

/** Ice on a chamber's trap [kg]: what its load has lost, less what went to the pump. */
export function iceOnTrap(unit: ChamberUnit, state: Float64Array, at: number): number {
  const { load } = unit;
  if (!load) return 0;
  const lost =
    waterInLoad(load, 0, load.boundMoisture) -
    waterInLoad(load, state[at + DRIED] as number, state[at + MOISTURE] as number);
  return Math.max(0, lost - (state[at + PUMPED] as number));
}

/** True when the chamber is under vacuum after its pump-down. */
export function underVacuum(unit: ChamberUnit): boolean {
  return unit.mode === 'primary' || unit.mode === 'secondary' || unit.mode === 'hold';
}
