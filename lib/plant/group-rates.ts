import { type PumpThroughput, pumpThroughput } from '../physics/pump-speed.ts';
import { type ChamberRates, chamberRates, chamberRatesRecord } from './chamber-rates.ts';
import { type ChamberUnit, gasLoad } from './chamber-unit.ts';
import { GAS, type PumpGroup, STATE_SIZE, TEMPERATURE } from './group-state.ts';
import { type ManifoldBalance, type ManifoldPort, manifoldPort, manifoldPressure } from './manifold.ts';

/** Everything a group does at one instant, written in place. */
export interface GroupRates {
  readonly chambers: readonly ChamberRates[];
  readonly ports: readonly ManifoldPort[];
  readonly balance: ManifoldBalance;
  /** dp_gas/dt of each chamber [Pa/s] and its slopes with that pressure and with the manifold's [1/s]. */
  readonly gas: Float64Array;
  readonly gasByGas: Float64Array;
  readonly gasByManifold: Float64Array;
  /** Water each chamber sends to the pump [kg/s]; negative when it takes some over from its neighbours. */
  readonly pumped: Float64Array;
  /** Manifold pressure [Pa], 0 with every valve shut, and water reaching the pump [kg/s]. */
  manifold: number;
  vapourLoad: number;
}

export function groupRatesRecord(count: number): GroupRates {
  return {
    chambers: Array.from({ length: count }, chamberRatesRecord),
    ports: Array.from({ length: count }, manifoldPort),
    balance: { surplus: 0, slope: 0, gasShare: 1 },
    gas: new Float64Array(count),
    gasByGas: new Float64Array(count),
    gasByManifold: new Float64Array(count),
    pumped: new Float64Array(count),
    manifold: 0,
    vapourLoad: 0,
  };
}

/** True when the chamber's gas and load change continuously now. */
export function isActive(unit: ChamberUnit): boolean {
  return !unit.flooded && unit.mode !== 'off';
}

/** Sets which valves are open and clears what the shut ones had. */
export function setPorts(group: PumpGroup, out: GroupRates): void {
  for (let i = 0; i < group.units.length; i += 1) {
    const unit = group.units[i] as ChamberUnit;
    const port = out.ports[i] as ManifoldPort;
    port.open = isActive(unit) && unit.valveOpen;
    port.throughput = 0;
    port.byPressure = 0;
    port.byManifold = 0;
    if (isActive(unit)) continue;
    const chamber = out.chambers[i] as ChamberRates;
    chamber.pressure = 0;
    chamber.gas = 0;
    chamber.flow = 0;
    out.gas[i] = 0;
    out.pumped[i] = 0;
  }
}

/** Gas balance of one chamber, V·dp_gas/dt = leak + outgassing − Q·x, x of whichever side the gas comes from. */
function gasBalance(unit: ChamberUnit, time: number, i: number, out: GroupRates): void {
  const chamber = out.chambers[i] as ChamberRates;
  const port = out.ports[i] as ManifoldPort;
  const { volume } = unit.spec;
  const own = chamber.gas / chamber.pressure;
  const outward = port.throughput >= 0;
  const share = outward ? own : out.balance.gasShare;
  const shareSlope = outward ? (1 - own * chamber.followsGas) / chamber.pressure : 0;
  out.gas[i] = (gasLoad(unit.spec, time - unit.vacuumSince) - port.throughput * share) / volume;
  out.gasByGas[i] = -(port.byPressure * chamber.followsGas * share + port.throughput * shareSlope) / volume;
  out.gasByManifold[i] = (-port.byManifold * share) / volume;
  out.pumped[i] = port.throughput * (1 - share) * unit.waterPerThroughput;
}

const pump: PumpThroughput = { throughput: 0, slope: 0 };

/** Water on its way to the pump [kg/s], from the manifold pressure and gas share in `out`. */
export function setVapourLoad(group: PumpGroup, out: GroupRates): void {
  pumpThroughput(group.pump, out.manifold, pump);
  const { waterPerThroughput } = group.units[0] as ChamberUnit;
  out.vapourLoad = out.manifold > 0 ? pump.throughput * (1 - out.balance.gasShare) * waterPerThroughput : 0;
}

/** Loads, manifold and gas balances at a state, for ports that are set already: what a step solves for again and again. */
export function balanceGroup(group: PumpGroup, time: number, state: Float64Array, out: GroupRates): void {
  const { units } = group;
  for (let i = 0; i < units.length; i += 1) {
    const unit = units[i] as ChamberUnit;
    if (!isActive(unit)) continue;
    const at = i * STATE_SIZE;
    const gas = state[at + GAS] as number;
    const temperature = state[at + TEMPERATURE] as number;
    chamberRates(unit, state, at, gas, temperature, out.chambers[i] as ChamberRates);
  }
  out.manifold = manifoldPressure(group, out.chambers, out.ports, out.balance);
  if (out.manifold > 0) group.manifold = out.manifold;
  for (let i = 0; i < units.length; i += 1) {
    const unit = units[i] as ChamberUnit;
    if (isActive(unit)) gasBalance(unit, time, i, out);
  }
}

/**
 * What a group does at a state, into `out`: each load at its own limit, the manifold pressure that lets the pump take what
 * the hoses bring, the gas balances.
 */
export function groupRates(group: PumpGroup, time: number, state: Float64Array, out: GroupRates): void {
  setPorts(group, out);
  balanceGroup(group, time, state, out);
  setVapourLoad(group, out);
}
