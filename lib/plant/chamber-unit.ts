import { GAS_CONSTANT, WATER_MOLAR_MASS } from '../physics/constants.ts';
import { type HoseLaw, hoseLaw } from '../physics/hose-conductance.ts';
import { type DryingInstant, dryingInstant } from './drying-rate.ts';
import type { LoadLaw } from './load-law.ts';
import { type TrapLaw, trapLaw } from './trap-law.ts';
import type { ChamberSpec, ChamberUnitSpec } from './types.ts';

/** What a chamber under vacuum is doing, as far as its gas and its load are concerned. */
export type UnitMode = 'off' | 'pumping' | 'primary' | 'secondary' | 'hold';

/** A chamber on its hose, with what changes only at events. Continuous values live in the group's state vector. */
export interface ChamberUnit {
  readonly spec: ChamberSpec;
  readonly trap: TrapLaw;
  readonly hose: HoseLaw;
  /** Kilograms of water per pascal cubic metre at the gas temperature: M_w/(R·T). */
  readonly waterPerThroughput: number;
  mode: UnitMode;
  /** False while it is shut off from the manifold. */
  valveOpen: boolean;
  /** True while air from a newcomer fills it: no drying until the manifold is pumped down again. */
  flooded: boolean;
  /** When its pump-down began [s]; outgassing decays from there. */
  vacuumSince: number;
  load: LoadLaw | null;
  readonly drying: DryingInstant;
}

export function chamberUnit(unit: ChamberUnitSpec): ChamberUnit {
  const { chamber } = unit;
  return {
    spec: chamber,
    trap: trapLaw(chamber.trap, chamber.gasTemperature),
    hose: hoseLaw(unit.hose.diameter, unit.hose.length, chamber.gasTemperature),
    waterPerThroughput: WATER_MOLAR_MASS / (GAS_CONSTANT * chamber.gasTemperature),
    mode: 'off',
    valveOpen: false,
    flooded: false,
    vacuumSince: 0,
    load: null,
    drying: dryingInstant(),
  };
}

/** Outgassing is taken as steady for its first minute: a/t has no value at t = 0. */
const OUTGASSING_FLOOR = 60;

/** Permanent gas entering a chamber [Pa·m³/s]: leak + a/t, t the time since its pump-down began [s]. */
export function gasLoad(spec: ChamberSpec, sinceVacuum: number): number {
  return spec.leak + spec.outgassing / Math.max(OUTGASSING_FLOOR, sinceVacuum);
}
