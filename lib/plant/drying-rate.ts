import { icePressureSlope } from '../physics/ice-pressure.ts';
import { sublimationHeat } from '../physics/ice-latent-heat.ts';
import { iceTemperature } from '../physics/ice-temperature.ts';
import type { LoadLaw } from './load-law.ts';
import type { DryingLimit } from './report-types.ts';
import { type TrapLaw, type TrapVapour, trapVapour } from './trap-law.ts';
import type { ChamberSpec } from './types.ts';

/** Pressure of ice at its triple point [Pa]: warmer than this the product has thawed. */
const TRIPLE_PRESSURE = 611.657;
const TRIPLE_POINT = 273.16;
/** Where the sublimation heat is largest [K]: the heater cap taken there is never exceeded, and at most 0.1 % too low. */
const HIGHEST_LATENT_AT = 238.15;
const HIGHEST_LATENT = sublimationHeat(HIGHEST_LATENT_AT);
const MAX_ITERATIONS = 60;
const TOLERANCE = 1e-12;

/** Sublimation of one load at an instant, written in place by `dryingRate`. */
export interface DryingInstant {
  /** Vapour leaving the load [kg/s]. */
  flow: number;
  /** Water-vapour pressure in the chamber [Pa]. */
  vapourPressure: number;
  /** Temperature of the subliming ice [K]. */
  iceTemperature: number;
  /** Shelf temperature that this rate needs [K]. */
  shelfTemperature: number;
  /** Heat into the load [W]. */
  heat: number;
  /** What holds the rate back. */
  limit: DryingLimit;
  /** True when the chamber sits at its ceiling, so that more gas means less vapour. */
  atCeiling: boolean;
}

export function dryingInstant(): DryingInstant {
  return {
    flow: 0,
    vapourPressure: 0,
    iceTemperature: TRIPLE_POINT,
    shelfTemperature: 0,
    heat: 0,
    limit: 'shelfTemperature',
    atCeiling: false,
  };
}

/** A temperature that must not exceed `limit`: T_ice + j·ΔH·resistance, the resistance made of up to three parts. */
interface TemperatureCap {
  readonly name: DryingLimit;
  limit: number;
  /** Resistance that does not change with pressure [m²·K/W]. */
  fixed: number;
  /** 1 when the film between shelf and product counts, else 0. */
  film: number;
  /** Dried thickness that heat must cross [m]. */
  crossed: number;
}

const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };
const caps: TemperatureCap[] = [
  { name: 'shelfTemperature', limit: 0, fixed: 0, film: 1, crossed: 0 },
  { name: 'frozenLimit', limit: 0, fixed: 0, film: 0, crossed: 0 },
  { name: 'scorchLimit', limit: 0, fixed: 0, film: 0, crossed: 0 },
];

/** Sets the temperature caps for the dried fraction reached; returns how many apply. */
function setCaps(load: LoadLaw, dried: number): number {
  const [shelf, frozen, scorch] = caps as [TemperatureCap, TemperatureCap, TemperatureCap];
  const thickness = dried * load.depth;
  const poured = load.product.form === 'poured';
  const frozenLayer = poured ? (load.depth - thickness) / load.frozenConductivity : 0;
  shelf.limit = load.shelfPrimary;
  shelf.fixed = frozenLayer;
  shelf.crossed = poured ? 0 : thickness;
  frozen.limit = load.product.frozenLimit;
  frozen.fixed = frozenLayer;
  scorch.limit = load.product.scorchLimit;
  scorch.crossed = thickness;
  return poured ? 2 : 3;
}

/** Residual and slope of one cap at one flow; module-level so that the inner loop allocates nothing. */
const trial = { value: 0, slope: 0, iceTemperature: 0, heatPerMass: 0 };

function temperatureAt(
  chamber: ChamberSpec,
  trap: TrapLaw,
  load: LoadLaw,
  cap: TemperatureCap,
  flow: number,
  gasPressure: number,
  ice: number,
  resistance: number,
): void {
  trapVapour(trap, flow, ice, vapour);
  const pressure = vapour.pressure + gasPressure;
  const flux = flow * load.fluxPerFlow;
  const front = pressure + flux * resistance;
  const thawed = front >= TRIPLE_PRESSURE;
  const edge = thawed ? TRIPLE_POINT : iceTemperature(front);
  const iceSlope = icePressureSlope(edge);
  const temperature = thawed ? TRIPLE_POINT + (front - TRIPLE_PRESSURE) / iceSlope : edge;
  const latent = sublimationHeat(edge);
  const { heat } = chamber;
  const damping = 1 + heat.pressureDamping * pressure;
  const film = heat.contact + (heat.pressureSlope * pressure) / damping + heat.radiation;
  const filmSlope = heat.pressureSlope / (damping * damping);
  const dried = load.product.driedConductivity + load.product.driedConductivitySlope * pressure;
  const crossing = cap.fixed + cap.film / film + cap.crossed / dried;
  const crossingSlope =
    -(cap.film * filmSlope) / (film * film) - (cap.crossed * load.product.driedConductivitySlope) / (dried * dried);
  trial.iceTemperature = temperature;
  trial.heatPerMass = latent;
  trial.value = temperature + flux * latent * crossing;
  trial.slope =
    (vapour.slope + load.fluxPerFlow * resistance) / iceSlope +
    latent * (load.fluxPerFlow * crossing + flux * crossingSlope * vapour.slope);
}

/**
 * Flow at which the vapour pressure over the trap reaches `pressure` [kg/s]; 0 when the trap alone is already above it.
 * Newton from above: the curve is convex and rising.
 */
function flowAtPressure(trap: TrapLaw, ice: number, pressure: number, guess: number): number {
  trapVapour(trap, 0, ice, vapour);
  if (vapour.pressure >= pressure) return 0;
  let flow = guess;
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    trapVapour(trap, flow, ice, vapour);
    const step = (vapour.pressure - pressure) / vapour.slope;
    const next = Math.max(0, flow - step);
    if (Math.abs(next - flow) <= TOLERANCE * next) return next;
    flow = next;
  }
  return flow;
}

/** Flow at which a cap is just met, between 0 and `high` where it is broken [kg/s]; Newton kept inside a shrinking bracket. */
function flowAtCap(
  chamber: ChamberSpec,
  trap: TrapLaw,
  load: LoadLaw,
  cap: TemperatureCap,
  high: number,
  gasPressure: number,
  ice: number,
  resistance: number,
  guess: number,
): number {
  let low = 0;
  let top = high;
  let flow = guess > 0 && guess < high ? guess : 0.5 * high;
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    temperatureAt(chamber, trap, load, cap, flow, gasPressure, ice, resistance);
    const excess = trial.value - cap.limit;
    if (excess > 0) top = flow;
    else low = flow;
    const newton = flow - excess / trial.slope;
    const next = newton > low && newton < top ? newton : 0.5 * (low + top);
    if (Math.abs(next - flow) <= TOLERANCE * high) return next;
    flow = next;
  }
  return flow;
}

function resistanceOf(load: LoadLaw, dried: number): number {
  return load.product.surfaceResistance + (dried * load.depth) / load.product.permeability;
}

/**
 * The fastest sublimation that breaks none of the limits, into `out` (flow [kg/s], pressures [Pa], temperatures [K], heat [W]):
 * flux j = (p_ice(T_ice) − p)/R_p on the slowest face; heat j·ΔH = (T_shelf − T_ice)/(1/K(p) + l/k).
 * Every limited quantity rises with the flow, so the answer is the smallest of the flows that just meet one.
 * @param dried dried fraction of the ice, 0–1
 * @param ice ice already on the trap [kg]
 * @param gasPressure permanent gas in the chamber [Pa]
 */
export function dryingRate(
  chamber: ChamberSpec,
  trap: TrapLaw,
  load: LoadLaw,
  dried: number,
  ice: number,
  gasPressure: number,
  out: DryingInstant,
): void {
  const resistance = resistanceOf(load, dried);
  const guess = out.flow;
  const byHeater = chamber.heaterPower / HIGHEST_LATENT;
  const vapourRoom = chamber.pressureCeiling - gasPressure;
  const byCeiling = flowAtPressure(trap, ice, vapourRoom, Math.max(guess, byHeater));
  let flow = Math.min(byHeater, byCeiling);
  out.atCeiling = byCeiling <= byHeater;
  out.limit = out.atCeiling ? (gasPressure > vapourRoom ? 'ceilingByGas' : 'ceilingByTrap') : 'heaterPower';
  const count = setCaps(load, dried);
  for (let i = 0; i < count; i += 1) {
    const cap = caps[i] as TemperatureCap;
    temperatureAt(chamber, trap, load, cap, flow, gasPressure, ice, resistance);
    if (flow > 0 && trial.value > cap.limit) {
      flow = flowAtCap(chamber, trap, load, cap, flow, gasPressure, ice, resistance, guess);
      out.limit = cap.name;
      out.atCeiling = false;
    }
  }
  temperatureAt(chamber, trap, load, caps[0] as TemperatureCap, flow, gasPressure, ice, resistance);
  out.flow = flow;
  out.vapourPressure = vapour.pressure;
  out.iceTemperature = trial.iceTemperature;
  out.shelfTemperature = trial.value;
  out.heat = flow * trial.heatPerMass;
}
