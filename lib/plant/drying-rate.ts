import { TRIPLE_PRESSURE, TRIPLE_TEMPERATURE } from '../physics/constants.ts';
import { driedResistance } from '../physics/dried-resistance.ts';
import { driedConductivity, shelfTransfer, shelfTransferSlope } from '../physics/heat-transfer.ts';
import { fastIceFront, fastSublimationHeat } from '../physics/ice-fast.ts';
import { sublimationHeat } from '../physics/ice-latent-heat.ts';
import type { IceFront } from '../physics/ice-temperature.ts';
import type { LoadLaw } from './load-law.ts';
import type { DryingLimit } from './report-types.ts';
import { type TrapLaw, type TrapVapour, trapVapour } from './trap-law.ts';
import type { ChamberSpec } from './types.ts';

/** Where the sublimation heat is largest [K]: the heater cap taken there is never exceeded, and at most 0.1 % too low. */
const HIGHEST_LATENT = sublimationHeat(238.15);
const MAX_ITERATIONS = 80;
/** Newton steps below this share of the heater's flow are taken along the slopes without another look: good to 1e-8. */
const TOLERANCE = 1e-4;

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
  /** How much the chamber's pressure rises per rise of its permanent gas: 1 with a steady flow, 0 at the ceiling. */
  followsGas: number;
  /** Change of the flow per rise of permanent gas [kg/(s·Pa)]. */
  flowByGas: number;
}

export function dryingInstant(): DryingInstant {
  return {
    flow: 0,
    vapourPressure: 0,
    iceTemperature: TRIPLE_TEMPERATURE,
    shelfTemperature: 0,
    heat: 0,
    limit: 'shelfTemperature',
    followsGas: 1,
    flowByGas: 0,
  };
}

/** Values of one load at one trial flow; module-level so that the inner loop allocates nothing. */
const trial = {
  /** Pressure in the chamber [Pa] and its slope with the flow. */
  pressure: 0,
  pressureSlope: 0,
  /** Ice temperature [K] and its slope. */
  ice: 0,
  iceSlope: 0,
  /** Heat flux on the slowest face [W/m²] and its slope. */
  flux: 0,
  fluxSlope: 0,
  /** Film and dried-layer resistance [m²·K/W] and their slopes with the flow. */
  film: 0,
  filmSlope: 0,
  crossed: 0,
  crossedSlope: 0,
  latent: 0,
};

const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };
const front: IceFront = { temperature: 0, slope: 0 };

/** What does not change while the flow is sought. */
interface Circumstances {
  chamber: ChamberSpec;
  trap: TrapLaw;
  load: LoadLaw;
  /** Dried thickness on the slowest face [m] and its resistance to vapour [m/s]. */
  thickness: number;
  resistance: number;
  /** Resistance of what is still frozen under a poured load [m²·K/W]; 0 for pieces. */
  frozenLayer: number;
  iceOnTrap: number;
  gas: number;
}

/** Filled by `dryingRate` before each search. */
const now = { thickness: 0, resistance: 0, frozenLayer: 0, iceOnTrap: 0, gas: 0 } as Circumstances;

/** Ice temperature at the sublimation front; above the triple point the ice curve goes on as a straight line. */
function setFront(pressure: number, slope: number): void {
  const capped = Math.min(pressure, TRIPLE_PRESSURE);
  fastIceFront(capped, front);
  trial.latent = fastSublimationHeat(front.temperature);
  trial.ice = front.temperature + (pressure - capped) / front.slope;
  trial.iceSlope = slope / front.slope;
}

function setResistances(): void {
  const { heat } = now.chamber;
  const { product } = now.load;
  const film = shelfTransfer(heat, trial.pressure);
  const filmSlope = shelfTransferSlope(heat, trial.pressure) * trial.pressureSlope;
  const dried = driedConductivity(product.driedConductivity, product.driedConductivitySlope, trial.pressure);
  trial.film = 1 / film;
  trial.filmSlope = -filmSlope / (film * film);
  trial.crossed = now.thickness / dried;
  trial.crossedSlope = (-trial.crossed * product.driedConductivitySlope * trial.pressureSlope) / dried;
}

function setTrial(flow: number): void {
  trapVapour(now.trap, flow, now.iceOnTrap, vapour);
  const { fluxPerFlow } = now.load;
  trial.pressure = vapour.pressure + now.gas;
  trial.pressureSlope = vapour.slope;
  setFront(trial.pressure + flow * fluxPerFlow * now.resistance, vapour.slope + fluxPerFlow * now.resistance);
  trial.fluxSlope = fluxPerFlow * trial.latent;
  trial.flux = flow * trial.fluxSlope;
  setResistances();
}

/** The flow that the limits seem to allow as seen from a trial flow: the smallest Newton target of all of them. */
const target = { flow: 0, limit: 'heaterPower' as DryingLimit, broken: false };

function consider(limit: DryingLimit, excess: number, slope: number, flow: number): void {
  if (excess > 0) target.broken = true;
  const wanted = flow - excess / slope;
  if (wanted >= target.flow) return;
  target.flow = wanted;
  target.limit = limit;
}

function setTarget(flow: number, byHeater: number): void {
  const { product, shelfPrimary } = now.load;
  const { ice, iceSlope, flux, fluxSlope } = trial;
  const poured = product.form === 'poured';
  target.flow = byHeater;
  target.limit = 'heaterPower';
  target.broken = false;
  consider('ceilingByTrap', trial.pressure - now.chamber.pressureCeiling, trial.pressureSlope, flow);
  const inside = poured ? now.frozenLayer : trial.crossed;
  const insideSlope = poured ? 0 : trial.crossedSlope;
  const shelf = ice + flux * (trial.film + inside);
  consider(
    'shelfTemperature',
    shelf - shelfPrimary,
    iceSlope + fluxSlope * (trial.film + inside) + flux * (trial.filmSlope + insideSlope),
    flow,
  );
  const frozen = ice + flux * now.frozenLayer;
  consider('frozenLimit', frozen - product.frozenLimit, iceSlope + fluxSlope * now.frozenLayer, flow);
  if (poured) return;
  const surface = ice + flux * trial.crossed;
  consider(
    'scorchLimit',
    surface - product.scorchLimit,
    iceSlope + fluxSlope * trial.crossed + flux * trial.crossedSlope,
    flow,
  );
}

/** Moves the trial values along their slopes by the last, tiny Newton step; what this leaves out is its square. */
function settleAt(flow: number, from: number): number {
  const step = flow - from;
  vapour.pressure += vapour.slope * step;
  trial.pressure += trial.pressureSlope * step;
  trial.ice += trial.iceSlope * step;
  trial.flux += trial.fluxSlope * step;
  trial.film += trial.filmSlope * step;
  trial.crossed += trial.crossedSlope * step;
  return flow;
}

/**
 * Largest flow that breaks no limit [kg/s], its trial values left set. Newton on whichever limit is nearest, kept inside a
 * shrinking bracket; every limited quantity rises with the flow, so there is one answer.
 */
function largestFlow(byHeater: number, guess: number): number {
  let low = 0;
  let high = byHeater;
  let flow = guess > 0 ? Math.min(guess, byHeater) : 0.5 * byHeater;
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    setTrial(flow);
    setTarget(flow, byHeater);
    if (target.broken) high = flow;
    else low = flow;
    if (Math.abs(target.flow - flow) <= TOLERANCE * byHeater) return settleAt(target.flow, flow);
    if (target.flow <= 0 && low === 0) {
      setTrial(0);
      setTarget(0, byHeater);
      if (target.broken || target.flow <= 0) return 0;
      flow = 0.5 * Math.min(high, target.flow);
    } else flow = target.flow > low && target.flow < high ? target.flow : 0.5 * (low + high);
    if (high - low <= 1e-12 * byHeater) return low;
  }
  return low;
}

/** ∂p/∂p_gas at the flow just found [-]: gas warms the ice and helps the heat across, which changes the flow and so the vapour. */
function pressureResponse(): number {
  if (target.limit === 'heaterPower') return 1;
  if (target.limit === 'ceilingByTrap') return 0;
  const filmByPressure = trial.filmSlope / trial.pressureSlope;
  const crossedByPressure = trial.crossedSlope / trial.pressureSlope;
  const poured = now.load.product.form === 'poured';
  const inside = poured ? now.frozenLayer : trial.crossed;
  const insideByPressure = poured ? 0 : crossedByPressure;
  const shelf = target.limit === 'shelfTemperature';
  const resistance = target.limit === 'frozenLimit' ? now.frozenLayer : inside + (shelf ? trial.film : 0);
  const byPressure = target.limit === 'frozenLimit' ? 0 : insideByPressure + (shelf ? filmByPressure : 0);
  const byGas = 1 / front.slope + trial.flux * byPressure;
  const byFlow = trial.iceSlope + trial.fluxSlope * resistance + trial.flux * byPressure * trial.pressureSlope;
  return Math.min(1, Math.max(0, 1 - (trial.pressureSlope * byGas) / byFlow));
}

function limitName(limit: DryingLimit, gas: number, pressure: number): DryingLimit {
  if (limit !== 'ceilingByTrap') return limit;
  return gas > 0.5 * pressure ? 'ceilingByGas' : 'ceilingByTrap';
}

/**
 * The fastest sublimation that breaks none of the limits, into `out` (flow [kg/s], pressures [Pa], temperatures [K], heat [W]):
 * flux j = (p_ice(T_ice) − p)/R_p on the slowest face; heat j·ΔH = (T_shelf − T_ice)/(1/K(p) + l/k).
 * At the pressure ceiling the limit is put down to gas when gas makes up more than half of the pressure, else to the trap.
 * @param dried dried fraction of the ice, 0–1
 * @param iceOnTrap ice already on the trap [kg]
 * @param gas pressure of permanent gas in the chamber [Pa]
 */
export function dryingRate(
  chamber: ChamberSpec,
  trap: TrapLaw,
  load: LoadLaw,
  dried: number,
  iceOnTrap: number,
  gas: number,
  out: DryingInstant,
): void {
  const thickness = dried * load.depth;
  const { product } = load;
  now.chamber = chamber;
  now.trap = trap;
  now.load = load;
  now.thickness = thickness;
  now.resistance = driedResistance(product.surfaceResistance, product.permeability, thickness);
  now.frozenLayer = product.form === 'poured' ? (load.depth - thickness) / load.frozenConductivity : 0;
  now.iceOnTrap = iceOnTrap;
  now.gas = gas;
  const flow = largestFlow(chamber.heaterPower / HIGHEST_LATENT, out.flow);
  out.flow = flow;
  out.limit = limitName(target.limit, gas, trial.pressure);
  out.followsGas = flow > 0 ? pressureResponse() : 1;
  out.flowByGas = (out.followsGas - 1) / vapour.slope;
  out.vapourPressure = vapour.pressure;
  out.iceTemperature = trial.ice;
  out.shelfTemperature =
    trial.ice + trial.flux * (trial.film + (product.form === 'poured' ? now.frozenLayer : trial.crossed));
  out.heat = flow * trial.latent;
}
