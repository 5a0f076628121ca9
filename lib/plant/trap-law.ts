import { GAS_CONSTANT, WATER_MOLAR_MASS } from '../physics/constants.ts';
import { fastIceVapour } from '../physics/ice-fast.ts';
import { sublimationHeat } from '../physics/ice-latent-heat.ts';
import type { IceVapour } from '../physics/ice-pressure.ts';
import { trapIceThickness } from '../physics/trap-ice.ts';
import type { RefrigerationPoint, TrapSpec } from './types.ts';

/** Heat capacity of water vapour at low pressure [J/(kg·K)]: 4·R/M, the ideal gas of rigid bent molecules (1 % low at 0 °C). */
const VAPOUR_HEAT_CAPACITY = (4 * GAS_CONSTANT) / WATER_MOLAR_MASS;

/** Temperature at which the latent heat given up on the trap is taken [K]; it varies by 0.1 % from −50 to 0 °C. */
const TRAP_REFERENCE = 243.15;

/** The triple point: above it the ice pressure is continued as a straight line, only so that a root search stays defined. */
const TRIPLE_POINT = 273.16;

/** A cold trap made ready for the inner loop. */
export interface TrapLaw {
  readonly spec: TrapSpec;
  /** Heat to take up per kilogram of vapour: sublimation heat plus cooling from the gas temperature [J/kg]. */
  readonly heatPerMass: number;
  /** Rise of the surface temperature per heat load and per mass of ice on it: δ/(k·A) over that mass [K/(W·kg)]. */
  readonly resistancePerIce: number;
}

/** Pressure of vapour over the trap and its slope; written in place so that the inner loop allocates nothing. */
export interface TrapVapour {
  /** Water-vapour pressure in the chamber [Pa]. */
  pressure: number;
  /** Change of that pressure with the flow [Pa·s/kg]. */
  slope: number;
  /** Heat load on the refrigeration [W]. */
  load: number;
}

export function trapLaw(spec: TrapSpec, gasTemperature: number): TrapLaw {
  const superheat = VAPOUR_HEAT_CAPACITY * Math.max(0, gasTemperature - TRAP_REFERENCE);
  const { area, iceDensity, iceConductivity } = spec;
  return {
    spec,
    heatPerMass: sublimationHeat(TRAP_REFERENCE) + superheat,
    resistancePerIce: trapIceThickness(1, area, iceDensity) / (area * iceConductivity),
  };
}

const surface: IceVapour = { pressure: 0, slope: 0 };

function segment(curve: readonly RefrigerationPoint[], load: number): number {
  let index = 0;
  while (index < curve.length - 2 && load > (curve[index + 1] as RefrigerationPoint).load) index += 1;
  return index;
}

/**
 * Vapour pressure that the trap keeps at a flow [Pa], its slope [Pa·s/kg] and the heat load [W], into `out`:
 * p = p_ice(T_evap(load) + (load/area)·δ/k) + flow/G, with δ the mean thickness of the ice already on it.
 * Between the points of the refrigeration curve T_evap is linear in load; outside it continues the end segments.
 * @param flow vapour arriving [kg/s]
 * @param ice ice already on the trap [kg]
 */
export function trapVapour(trap: TrapLaw, flow: number, ice: number, out: TrapVapour): void {
  const { spec } = trap;
  const load = flow * trap.heatPerMass + spec.parasiticLoad;
  const index = segment(spec.curve, load);
  const low = spec.curve[index] as RefrigerationPoint;
  const high = spec.curve[index + 1] as RefrigerationPoint;
  const evaporatorSlope = (high.temperature - low.temperature) / (high.load - low.load);
  const iceResistance = trap.resistancePerIce * ice;
  const temperature = low.temperature + evaporatorSlope * (load - low.load) + load * iceResistance;
  const capped = Math.min(temperature, TRIPLE_POINT);
  fastIceVapour(capped, surface);
  out.load = load;
  out.pressure = surface.pressure + surface.slope * (temperature - capped) + flow / spec.vapourConductance;
  out.slope = surface.slope * (evaporatorSlope + iceResistance) * trap.heatPerMass + 1 / spec.vapourConductance;
}
