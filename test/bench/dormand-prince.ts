/** dy/dt at a time and state, written into `out`; NaN where the equations mean nothing, which makes the solver step shorter. */
export type Rates = (time: number, state: Float64Array, out: Float64Array) => void;

export interface Settings {
  readonly relative: number;
  /** Absolute tolerance of each value. */
  readonly absolute: Float64Array;
  readonly firstStep: number;
}

/** The tableau of the Dormand–Prince pair of orders 5 and 4, from memory; its rows are checked by their sums. */
const NODES = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1];
const STAGES = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const ERROR = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

function requireTableau(): void {
  STAGES.forEach((row, stage) => {
    const sum = row.reduce((total, weight) => total + weight, 0);
    if (Math.abs(sum - (NODES[stage] ?? Number.NaN)) > 1e-12)
      throw new Error(`row ${stage} of the tableau sums to ${sum}`);
  });
  const error = ERROR.reduce((total, weight) => total + weight, 0);
  if (Math.abs(error) > 1e-12) throw new Error(`the error weights sum to ${error}`);
}

function combine(
  state: Float64Array,
  slopes: readonly Float64Array[],
  weights: readonly number[],
  length: number,
): Float64Array {
  return state.map((value, i) =>
    weights.reduce((sum, weight, k) => sum + length * weight * ((slopes[k] as Float64Array)[i] as number), value),
  );
}

interface Step {
  readonly state: Float64Array;
  /** Largest error over its tolerance. */
  readonly error: number;
}

function step(rates: Rates, time: number, state: Float64Array, length: number, settings: Settings): Step {
  const slopes: Float64Array[] = [];
  let next = state;
  STAGES.forEach((weights, stage) => {
    next = combine(state, slopes, weights, length);
    const slope = new Float64Array(state.length);
    rates(time + length * (NODES[stage] as number), next, slope);
    slopes.push(slope);
  });
  const errors = combine(new Float64Array(state.length), slopes, ERROR, length);
  const sizes = errors.map(
    (error, i) =>
      Math.abs(error) / ((settings.absolute[i] as number) + settings.relative * Math.abs(state[i] as number)),
  );
  return { state: next, error: Math.max(...sizes) };
}

export interface Reached {
  readonly time: number;
  readonly state: Float64Array;
  readonly steps: number;
}

/** How near the mark counts as on it. */
const ON_MARK = 1e-9;

/**
 * A general-purpose solver to compare with: adaptive steps of the Dormand–Prince pair until `left`, positive at first, has
 * fallen to zero. It knows nothing of what it integrates.
 */
export function integrate(
  rates: Rates,
  start: number,
  from: Float64Array,
  left: (state: Float64Array) => number,
  settings: Settings,
): Reached {
  requireTableau();
  let time = start;
  let state = from;
  let length = settings.firstStep;
  let steps = 0;
  while (steps < 1e6) {
    steps += 1;
    const trial = step(rates, time, state, length, settings);
    const [before, after] = [left(state), left(trial.state)];
    if (!(trial.error <= 1)) length *= Math.max(0.2, 0.9 * trial.error ** -0.2 || 0);
    else if (after < -ON_MARK) length *= before / (before - after);
    else {
      time += length;
      state = trial.state;
      if (after <= ON_MARK) return { time, state, steps };
      length *= Math.min(5, 0.9 * Math.max(trial.error, 1e-10) ** -0.2);
    }
  }
  throw new Error(`no end within ${steps} steps`);
}
