import { type HoseThroughput, hoseThroughput } from '../physics/hose-conductance.ts';
import { type PumpThroughput, pumpThroughput } from '../physics/pump-speed.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import type { PumpGroup } from './group-state.ts';

/** One chamber's side of its hose, as the manifold sees it. */
export interface ManifoldPort {
  open: boolean;
  /** Total and permanent-gas pressure in the chamber [Pa]. */
  pressure: number;
  gas: number;
  /** 1 when the chamber's total pressure rises with its gas, 0 when a ceiling holds it. */
  followsGas: number;
  /** Flow through the hose toward the manifold [Pa·m³/s] and its slopes with either pressure [m³/s]. */
  throughput: number;
  byPressure: number;
  byManifold: number;
}

export function manifoldPort(): ManifoldPort {
  return { open: false, pressure: 0, gas: 0, followsGas: 1, throughput: 0, byPressure: 0, byManifold: 0 };
}

/** What the manifold solve needs to write. */
interface ManifoldResult {
  readonly ports: readonly ManifoldPort[];
  readonly manifoldByGas: Float64Array;
  manifold: number;
  vapourLoad: number;
}

const MAX_ITERATIONS = 80;
const TOLERANCE = 1e-13;

const hose: HoseThroughput = { flow: 0, byUpstream: 0, byDownstream: 0 };
const pump: PumpThroughput = { throughput: 0, slope: 0 };
const range = { low: 0, high: 0, open: 0 };

function pressureRange(group: PumpGroup, ports: readonly ManifoldPort[]): void {
  range.low = group.pump.ultimate;
  range.high = 0;
  range.open = 0;
  for (let i = 0; i < ports.length; i += 1) {
    const port = ports[i] as ManifoldPort;
    if (!port.open) continue;
    range.open += 1;
    range.low = Math.min(range.low, port.pressure);
    range.high = Math.max(range.high, port.pressure);
  }
}

/** Surplus of what the hoses bring over what the pump takes at a manifold pressure [Pa·m³/s]; its slope [m³/s]. */
const balance = { surplus: 0, slope: 0 };

function balanceAt(group: PumpGroup, ports: readonly ManifoldPort[], pressure: number): void {
  pumpThroughput(group.pump, pressure, pump);
  balance.surplus = -pump.throughput;
  balance.slope = -pump.slope;
  for (let i = 0; i < ports.length; i += 1) {
    const port = ports[i] as ManifoldPort;
    if (!port.open) continue;
    const unit = group.units[i] as ChamberUnit;
    hoseThroughput(unit.hose, port.pressure, pressure, 1 - port.gas / port.pressure, hose);
    port.throughput = hose.flow;
    port.byPressure = hose.byUpstream;
    port.byManifold = hose.byDownstream;
    balance.surplus += hose.flow;
    balance.slope += hose.byDownstream;
  }
}

function rootPressure(group: PumpGroup, ports: readonly ManifoldPort[]): number {
  let { low, high } = range;
  let pressure = group.manifold > low && group.manifold < high ? group.manifold : 0.5 * (low + high);
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    balanceAt(group, ports, pressure);
    if (balance.surplus > 0) low = pressure;
    else high = pressure;
    const newton = pressure - balance.surplus / balance.slope;
    const next = newton > low && newton < high ? newton : 0.5 * (low + high);
    if (Math.abs(next - pressure) <= TOLERANCE * pressure) return pressure;
    pressure = next;
  }
  return pressure;
}

/** Gas share of what flows into the manifold, and water on its way to the pump [kg/s]. */
function mixedGas(group: PumpGroup, out: ManifoldResult): number {
  let entering = 0;
  let gas = 0;
  for (const port of out.ports) {
    if (!port.open || port.throughput <= 0) continue;
    entering += port.throughput;
    gas += (port.throughput * port.gas) / port.pressure;
  }
  const share = entering > 0 ? gas / entering : 1;
  pumpThroughput(group.pump, out.manifold, pump);
  const perThroughput = (group.units[0] as ChamberUnit).waterPerThroughput;
  out.vapourLoad = pump.throughput * (1 - share) * perThroughput;
  return share;
}

/**
 * Manifold pressure from Σ Q_i(p_i, p_m) = S(p_m)·p_m over the open valves; fills the ports' flows and slopes and
 * ∂p_m/∂p_gas. Returns the gas share 0–1 of what enters the manifold, which is what flows back into a chamber below p_m.
 * The surplus falls strictly with p_m, so there is one root between the lowest and the highest pressure around.
 */
export function solveManifold(group: PumpGroup, out: ManifoldResult): number {
  pressureRange(group, out.ports);
  if (range.open === 0) {
    out.manifold = 0;
    out.vapourLoad = 0;
    return 1;
  }
  out.manifold = rootPressure(group, out.ports);
  group.manifold = out.manifold;
  for (let i = 0; i < out.ports.length; i += 1) {
    const port = out.ports[i] as ManifoldPort;
    out.manifoldByGas[i] = port.open ? (port.byPressure * port.followsGas) / -balance.slope : 0;
  }
  return mixedGas(group, out);
}
