import { desorptionRate } from '../physics/desorption.ts';
import { sublimationHeat } from '../physics/ice-latent-heat.ts';
import { type ChamberUnit, gasLoad } from './chamber-unit.ts';
import { dryingRate } from './drying-rate.ts';
import { DRIED, GAS, HEAT, iceOnTrap, MOISTURE, PUMPED, type PumpGroup, STATE_SIZE, TEMPERATURE } from './group-state.ts';
import type { LoadLaw } from './load-law.ts';
import { type ManifoldPort, manifoldPort, solveManifold } from './manifold.ts';
import { type TrapVapour, trapVapour } from './trap-law.ts';

/** Time derivatives of a group's state and the pieces of their Jacobian, written in place by `groupRates`. */
export interface GroupRates {
  readonly derivative: Float64Array;
  /** ∂(dp_gas/dt)/∂p_gas at fixed manifold pressure [1/s], a chamber each. */
  readonly gasDiagonal: Float64Array;
  /** ∂(dp_gas/dt)/∂p_manifold [1/s]. */
  readonly gasByManifold: Float64Array;
  /** ∂p_manifold/∂p_gas. */
  readonly manifoldByGas: Float64Array;
  /** ∂(dT/dt)/∂T of loads in secondary drying [1/s]. */
  readonly temperatureDiagonal: Float64Array;
  /** Vapour leaving each load [kg/s], of it to the pump [kg/s]. */
  readonly flow: Float64Array;
  readonly pumped: Float64Array;
  readonly ports: readonly ManifoldPort[];
  /** Manifold pressure [Pa] and water reaching the pump [kg/s]. */
  manifold: number;
  vapourLoad: number;
}

export function groupRatesFor(count: number): GroupRates {
  return {
    derivative: new Float64Array(count * STATE_SIZE),
    gasDiagonal: new Float64Array(count),
    gasByManifold: new Float64Array(count),
    manifoldByGas: new Float64Array(count),
    temperatureDiagonal: new Float64Array(count),
    flow: new Float64Array(count),
    pumped: new Float64Array(count),
    ports: Array.from({ length: count }, manifoldPort),
    manifold: 0,
    vapourLoad: 0,
  };
}

/** Heating fades out over this share of the ceiling pressure: a proportional controller, as a shelf controller would. */
const CONTROL_BAND = 0.05;

const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };

function primaryRates(unit: ChamberUnit, load: LoadLaw, state: Float64Array, at: number, i: number, out: GroupRates): void {
  const { drying } = unit;
  const gas = Math.max(0, state[at + GAS] as number);
  const dried = Math.min(1, state[at + DRIED] as number);
  dryingRate(unit.spec, unit.trap, load, dried, iceOnTrap(unit, state, at), gas, drying);
  const port = out.ports[i] as ManifoldPort;
  port.gas = gas;
  port.pressure = gas + drying.vapourPressure;
  port.followsGas = drying.atCeiling && drying.flow > 0 ? 0 : 1;
  out.derivative[at + DRIED] = drying.flow / load.ice;
  out.derivative[at + HEAT] = drying.heat;
  out.flow[i] = drying.flow;
}

/** Resistance between shelf and the mean of a dried load [m²·K/W]: film + a third of the bed, as for a slab heated from one face. */
function shelfToLoad(unit: ChamberUnit, load: LoadLaw, pressure: number): number {
  const { heat } = unit.spec;
  const film = heat.contact + (heat.pressureSlope * pressure) / (1 + heat.pressureDamping * pressure) + heat.radiation;
  const dried = load.product.driedConductivity + load.product.driedConductivitySlope * pressure;
  return 1 / film + load.depth / (3 * dried);
}

function shelfHeat(unit: ChamberUnit, load: LoadLaw, temperature: number, pressure: number): number {
  const wanted = (load.area * (load.shelfSecondary - temperature)) / shelfToLoad(unit, load, pressure);
  const ceiling = unit.spec.pressureCeiling;
  const room = Math.min(1, Math.max(0, (ceiling - pressure) / (CONTROL_BAND * ceiling)));
  return Math.min(wanted, unit.spec.heaterPower) * room;
}

function secondaryRates(unit: ChamberUnit, load: LoadLaw, state: Float64Array, at: number, i: number, out: GroupRates): void {
  const { desorption } = load.product;
  const temperature = state[at + TEMPERATURE] as number;
  const moisture = state[at + MOISTURE] as number;
  const rate = desorptionRate(desorption.rate, desorption.activationEnergy, temperature) * (moisture - desorption.equilibrium);
  const flow = rate * load.dryMatter;
  const port = out.ports[i] as ManifoldPort;
  trapVapour(unit.trap, flow, iceOnTrap(unit, state, at), vapour);
  port.gas = Math.max(0, state[at + GAS] as number);
  port.pressure = port.gas + vapour.pressure;
  port.followsGas = 1;
  const heat = shelfHeat(unit, load, temperature, port.pressure);
  out.derivative[at + MOISTURE] = -rate;
  out.derivative[at + HEAT] = heat;
  out.derivative[at + TEMPERATURE] = (heat - flow * desorptionHeat(temperature)) / load.dryHeatCapacity;
  out.temperatureDiagonal[i] = -load.area / (shelfToLoad(unit, load, port.pressure) * load.dryHeatCapacity);
  out.flow[i] = flow;
  unit.drying.limit = 'desorption';
  unit.drying.vapourPressure = vapour.pressure;
}

/** Heat to free a kilogram of bound water [J/kg]: taken as the heat of sublimation, which covers evaporation and binding. */
function desorptionHeat(temperature: number): number {
  return sublimationHeat(Math.min(273.15, temperature));
}

function holdRates(unit: ChamberUnit, state: Float64Array, at: number, i: number, out: GroupRates): void {
  const port = out.ports[i] as ManifoldPort;
  trapVapour(unit.trap, 0, iceOnTrap(unit, state, at), vapour);
  port.gas = Math.max(0, state[at + GAS] as number);
  port.pressure = port.gas + vapour.pressure;
  port.followsGas = 1;
  unit.drying.vapourPressure = vapour.pressure;
}

function loadRates(unit: ChamberUnit, state: Float64Array, at: number, i: number, out: GroupRates): void {
  if (unit.mode === 'primary' && unit.load) primaryRates(unit, unit.load, state, at, i, out);
  else if (unit.mode === 'secondary' && unit.load) secondaryRates(unit, unit.load, state, at, i, out);
  else if (unit.mode !== 'off') holdRates(unit, state, at, i, out);
}

/** Gas balance of one chamber: V·dp_gas/dt = leak + outgassing − Q·x, x of whichever side the gas comes from. */
function gasRates(unit: ChamberUnit, time: number, at: number, i: number, manifoldGas: number, out: GroupRates): void {
  const port = out.ports[i] as ManifoldPort;
  const { volume } = unit.spec;
  const own = port.gas / port.pressure;
  const share = port.throughput >= 0 ? own : manifoldGas;
  const entering = gasLoad(unit.spec, time - unit.vacuumSince);
  out.derivative[at + GAS] = (entering - port.throughput * share) / volume;
  const water = port.throughput * (1 - share) * unit.waterPerThroughput;
  out.derivative[at + PUMPED] = water;
  out.pumped[i] = water;
  const shareSlope = port.throughput >= 0 ? (1 - own * port.followsGas) / port.pressure : 0;
  out.gasDiagonal[i] = -(port.byPressure * port.followsGas * share + port.throughput * shareSlope) / volume;
  out.gasByManifold[i] = (-port.byManifold * share) / volume;
}

function clearRates(out: GroupRates): void {
  out.derivative.fill(0);
  out.gasDiagonal.fill(0);
  out.gasByManifold.fill(0);
  out.manifoldByGas.fill(0);
  out.temperatureDiagonal.fill(0);
  out.flow.fill(0);
  out.pumped.fill(0);
}

/** True when the chamber's gas and load change continuously now. */
function active(unit: ChamberUnit): boolean {
  return !unit.flooded && unit.mode !== 'off';
}

/**
 * Derivatives of every continuous value of a group, into `out`: each load at its own limit, then the manifold pressure
 * that lets the pump take what the hoses bring, then the gas balances.
 */
export function groupRates(group: PumpGroup, time: number, state: Float64Array, out: GroupRates): void {
  const { units } = group;
  clearRates(out);
  for (let i = 0; i < units.length; i += 1) {
    const unit = units[i] as ChamberUnit;
    const port = out.ports[i] as ManifoldPort;
    port.open = active(unit) && unit.valveOpen;
    port.throughput = 0;
    port.byPressure = 0;
    port.byManifold = 0;
    if (active(unit)) loadRates(unit, state, i * STATE_SIZE, i, out);
  }
  const manifoldGas = solveManifold(group, out);
  for (let i = 0; i < units.length; i += 1) {
    const unit = units[i] as ChamberUnit;
    if (active(unit)) gasRates(unit, time, i * STATE_SIZE, i, manifoldGas, out);
  }
}
