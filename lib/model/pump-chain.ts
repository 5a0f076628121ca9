import { steadyState } from '../numeric/steady-state.ts';

/** Like pumps at work, with or without one on the shelf. Times and rates in one unit of time. */
export interface PumpChainTerms {
  /** Pumps at work when all is well, a whole number of 1 or more. */
  readonly pumps: number;
  /** Failures of one pump at work [1/time], ≥ 0. */
  readonly failureRate: number;
  /** Mean time to mend a pump once it is seen to [time], > 0. */
  readonly repairTime: number;
  /** Pumps that can be mended at once, a whole number of 1 or more. */
  readonly crews: number;
  /** Mean time to put the pump on the shelf in the place of one that failed [time], > 0; null without a spare. */
  readonly swapTime: number | null;
}

/** Long-run behaviour of the pumps. */
export interface PumpChainState {
  /** `stopped[j]`: share of time in which j places have no running pump [–]. */
  readonly stopped: readonly number[];
  readonly meanStopped: number;
  /** Failures of all pumps together [1/time]. */
  readonly failureRate: number;
}

/** Pumps being mended, and places in which one is being put in. */
interface State {
  readonly mending: number;
  readonly swapping: number;
}

/**
 * Steady state of pumps that fail and are mended at exponential times. Without a spare a mended pump runs again at once,
 * which is `machineRepair`. With one, a place that lost its pump gets the spare, if it is there, or else the next pump
 * that is mended, and runs after the time it takes to put it in; a pump that is mended and not missed goes on the shelf.
 * Source: derived, a Markov chain over pumps being mended and places being fitted.
 * Throws RangeError on a number that is not whole, a negative rate or a time that is not above 0.
 */
export function pumpChain(terms: PumpChainTerms): PumpChainState {
  requireTerms(terms);
  const states = chainStates(terms);
  const shares = steadyState(rateTable(terms, states));
  const stopped = new Array<number>(terms.pumps + 1).fill(0);
  states.forEach((state, k) => {
    const down = terms.pumps - running(terms, state);
    stopped[down] = (stopped[down] ?? 0) + (shares[k] ?? 0);
  });
  const meanStopped = stopped.reduce((sum, share, down) => sum + share * down, 0);
  return { stopped, meanStopped, failureRate: (terms.pumps - meanStopped) * terms.failureRate };
}

/** Fewer being mended come first, so that every state leads to one before it. */
function chainStates(terms: PumpChainTerms): State[] {
  const owned = terms.pumps + spares(terms);
  return Array.from({ length: owned + 1 }, (_, mending) => {
    const most = terms.swapTime === null ? 0 : Math.min(terms.pumps, owned - mending);
    return Array.from({ length: most + 1 }, (_unused, swapping) => ({ mending, swapping }));
  }).flat();
}

function spares({ swapTime }: PumpChainTerms): number {
  return swapTime === null ? 0 : 1;
}

/** Every pump that is neither being mended nor put in is at work, but for those on the shelf. */
function running(terms: PumpChainTerms, { mending, swapping }: State): number {
  return Math.min(terms.pumps, terms.pumps + spares(terms) - mending) - swapping;
}

function rateTable(terms: PumpChainTerms, states: readonly State[]): number[][] {
  const place = new Map(states.map((state, k) => [keyOf(state), k]));
  return states.map((state) => {
    const row = new Array<number>(states.length).fill(0);
    for (const [next, rate] of moves(terms, state)) {
      const to = place.get(keyOf(next));
      if (to !== undefined) row[to] = (row[to] ?? 0) + rate;
    }
    return row;
  });
}

function keyOf({ mending, swapping }: State): string {
  return `${mending} ${swapping}`;
}

function moves(terms: PumpChainTerms, state: State): (readonly [State, number])[] {
  const { mending, swapping } = state;
  const spare = spares(terms);
  const onShelf = mending < spare;
  const missed = mending > spare && spare > 0;
  return [
    [{ mending: mending + 1, swapping: swapping + (onShelf ? 1 : 0) }, running(terms, state) * terms.failureRate],
    [
      { mending: mending - 1, swapping: swapping + (missed ? 1 : 0) },
      Math.min(mending, terms.crews) / terms.repairTime,
    ],
    [{ mending, swapping: swapping - 1 }, swapping / (terms.swapTime ?? 1)],
  ];
}

function requireTerms({ pumps, crews, failureRate, repairTime, swapTime }: PumpChainTerms): void {
  if (!Number.isInteger(pumps) || pumps < 1 || !Number.isInteger(crews) || crews < 1) {
    throw new RangeError(`${pumps} pumps and ${crews} crews must be whole numbers of 1 or more`);
  }
  if (
    !(failureRate >= 0) ||
    !(repairTime > 0) ||
    !((swapTime ?? 1) > 0) ||
    !Number.isFinite(failureRate + repairTime)
  ) {
    throw new RangeError(`failure rate ${failureRate}, repair time ${repairTime}, swap time ${swapTime}`);
  }
}
