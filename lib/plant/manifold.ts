import { type HoseThroughput, hoseThroughput } from '../physics/hose-conductance.ts';
import { type PumpThroughput, pumpThroughput } from '../physics/pump-speed.ts';
import type { ChamberRates } from './chamber-rates.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import type { PumpGroup } from './group-state.ts';

/** One chamber's hose as the manifold sees it. */
export interface ManifoldPort {
  open: boolean;
  /** Flow through the hose toward the manifold [Pa·m³/s] and its slopes with chamber and manifold pressure [m³/s]. */
  throughput: number;
  byPressure: number;
  byManifold: number;
}

export function manifoldPort(): ManifoldPort {
  return { open: false, throughput: 0, byPressure: 0, byManifold: 0 };
}

/** Surplus of what the hoses bring over what the pump takes [Pa·m³/s] and its slope with manifold pressure [m³/s]. */
export interface ManifoldBalance {
  surplus: number;
  slope: number;
  /** Gas share 0–1 of what flows into the manifold: what flows back into a chamber below its pressure. */
  gasShare: number;
}

const hose: HoseThroughput = { flow: 0, byUpstream: 0, byDownstream: 0 };
const pump: PumpThroughput = { throughput: 0, slope: 0 };

/** Flows through every open valve at a manifold pressure, into `ports`, and their balance with the pump, into `out`. */
export function balanceManifold(
  group: PumpGroup,
  chambers: readonly ChamberRates[],
  ports: readonly ManifoldPort[],
  pressure: number,
  out: ManifoldBalance,
): void {
  pumpThroughput(group.pump, pressure, pump);
  let surplus = -pump.throughput;
  let slope = -pump.slope;
  let entering = 0;
  let gas = 0;
  for (let i = 0; i < ports.length; i += 1) {
    const port = ports[i] as ManifoldPort;
    if (!port.open) continue;
    const chamber = chambers[i] as ChamberRates;
    const share = chamber.gas / chamber.pressure;
    hoseThroughput((group.units[i] as ChamberUnit).hose, chamber.pressure, pressure, 1 - share, hose);
    port.throughput = hose.flow;
    port.byPressure = hose.byUpstream;
    port.byManifold = hose.byDownstream;
    surplus += hose.flow;
    slope += hose.byDownstream;
    if (hose.flow <= 0) continue;
    entering += hose.flow;
    gas += hose.flow * share;
  }
  out.surplus = surplus;
  out.slope = slope;
  out.gasShare = entering > 0 ? gas / entering : 1;
}

const MAX_ITERATIONS = 80;
const TOLERANCE = 1e-9;

/**
 * Manifold pressure [Pa] at which the pump takes what the hoses bring, Σ Q_i(p_i, p_m) = S(p_m)·p_m, with the flows left in
 * `ports`; 0 when every valve is shut. The surplus falls strictly with p_m, so there is one root between the lowest and
 * the highest pressure around: Newton kept inside that bracket.
 */
export function manifoldPressure(
  group: PumpGroup,
  chambers: readonly ChamberRates[],
  ports: readonly ManifoldPort[],
  out: ManifoldBalance,
): number {
  let low = group.pump.ultimate;
  let high = 0;
  for (let i = 0; i < ports.length; i += 1) {
    if (!(ports[i] as ManifoldPort).open) continue;
    const { pressure } = chambers[i] as ChamberRates;
    low = Math.min(low, pressure);
    high = Math.max(high, pressure);
  }
  out.gasShare = 1;
  if (high === 0) return 0;
  let pressure = group.manifold > low && group.manifold < high ? group.manifold : 0.5 * (low + high);
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    balanceManifold(group, chambers, ports, pressure, out);
    if (out.surplus > 0) low = pressure;
    else high = pressure;
    const newton = pressure - out.surplus / out.slope;
    if (Math.abs(newton - pressure) <= TOLERANCE * pressure || high - low <= TOLERANCE * pressure) break;
    pressure = newton > low && newton < high ? newton : 0.5 * (low + high);
  }
  return pressure;
}
