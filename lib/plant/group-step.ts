import { GAS, type PumpGroup, STATE_SIZE, TEMPERATURE } from './group-state.ts';
import { type GroupRates, groupRates, groupRatesFor } from './group-rates.ts';

/**
 * One step of a two-stage, second-order, L-stable Rosenbrock method (γ = 1 − 1/√2) that keeps its order with any
 * Jacobian. Only gas pressures (diagonal plus a rank-one coupling through the manifold) and load temperatures are taken
 * implicitly; the rest advances as by Heun's method.
 */
export interface StepWork {
  readonly first: GroupRates;
  readonly second: GroupRates;
  readonly k1: Float64Array;
  readonly k2: Float64Array;
  readonly trial: Float64Array;
  readonly next: Float64Array;
}

const GAMMA = 1 - Math.SQRT1_2;

export function stepWork(count: number): StepWork {
  const size = count * STATE_SIZE;
  return {
    first: groupRatesFor(count),
    second: groupRatesFor(count),
    k1: new Float64Array(size),
    k2: new Float64Array(size),
    trial: new Float64Array(size),
    next: new Float64Array(size),
  };
}

/** Solves (I − γhJ)k = k in place for the gas pressures (Sherman–Morrison) and the load temperatures (diagonal). */
function solveImplicit(rates: GroupRates, gammaStep: number, k: Float64Array): void {
  const count = rates.gasDiagonal.length;
  let along = 0;
  let coupling = 0;
  for (let i = 0; i < count; i += 1) {
    const at = i * STATE_SIZE;
    const pivot = 1 - gammaStep * (rates.gasDiagonal[i] as number);
    k[at + GAS] = (k[at + GAS] as number) / pivot;
    k[at + TEMPERATURE] = (k[at + TEMPERATURE] as number) / (1 - gammaStep * (rates.temperatureDiagonal[i] as number));
    along += (rates.manifoldByGas[i] as number) * (k[at + GAS] as number);
    coupling += ((rates.manifoldByGas[i] as number) * (rates.gasByManifold[i] as number)) / pivot;
  }
  const scale = (gammaStep * along) / (1 - gammaStep * coupling);
  for (let i = 0; i < count; i += 1) {
    const pivot = 1 - gammaStep * (rates.gasDiagonal[i] as number);
    const at = i * STATE_SIZE + GAS;
    k[at] = (k[at] as number) + (scale * (rates.gasByManifold[i] as number)) / pivot;
  }
}

/** Rates at the start of a step into `work.first`; they serve every trial length of that step. */
export function beginStep(group: PumpGroup, work: StepWork): void {
  groupRates(group, group.time, group.state, work.first);
}

/**
 * State after a step of `length` seconds, into `work.next`; `beginStep` must have been called at this state.
 * The difference to the first-order solution inside the method is left in k2 for the error estimate.
 */
export function tryStep(group: PumpGroup, work: StepWork, length: number): void {
  const { first, second, k1, k2, trial, next } = work;
  const { state } = group;
  k1.set(first.derivative);
  solveImplicit(first, GAMMA * length, k1);
  for (let i = 0; i < state.length; i += 1) trial[i] = (state[i] as number) + length * (k1[i] as number);
  groupRates(group, group.time + length, trial, second);
  for (let i = 0; i < state.length; i += 1) k2[i] = (second.derivative[i] as number) - 2 * (k1[i] as number);
  solveImplicit(first, GAMMA * length, k2);
  for (let i = 0; i < state.length; i += 1) {
    next[i] = (state[i] as number) + length * (1.5 * (k1[i] as number) + 0.5 * (k2[i] as number));
  }
  for (let at = GAS; at < next.length; at += STATE_SIZE) next[at] = Math.max(0, next[at] as number);
}
