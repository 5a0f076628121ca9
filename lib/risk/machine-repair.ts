/** Like units that fail and are repaired by crews who take one each. */
export interface RepairTerms {
  /** Number of units, a whole number of 1 or more. */
  readonly units: number;
  /** Mean time between failures of one running unit [any one unit of time]. */
  readonly timeToFailure: number;
  /** Mean time of one repair once a crew is at it [the same]. */
  readonly timeToRepair: number;
  /** Crews, a whole number of 1 or more; as many as units when each unit is seen to at once. */
  readonly crews: number;
}

/** Long-run behaviour of the units. */
export interface RepairState {
  /** `failed[j]`: share of time with exactly j units down [–]. */
  readonly failed: readonly number[];
  /** Mean number of units down, under repair or waiting for it. */
  readonly meanFailed: number;
  /** Mean number waiting for a crew. */
  readonly meanWaiting: number;
  /** Failures per unit of time, all units together. */
  readonly failureRate: number;
  /** Mean time from failure to the start of repair, and to its end [the unit of time given]. */
  readonly waitingTime: number;
  readonly downTime: number;
  /** Share of breakdowns that find no crew free [–]. Not the share of time all crews are busy: fewer units are up then to fail. */
  readonly shareThatWaits: number;
}

/**
 * Steady state of units that fail at random (exponential times) and share repair crews: a birth–death chain with failure
 * rate (n − j)/MTBF and repair rate min(j, crews)/MTTR from j units down. Only means of the repair time matter when there
 * are as many crews as units.
 * Source: anderson-sweeney-williams, finite calling population.
 * Throws RangeError on a number that is not whole or a time that is not above 0.
 */
export function machineRepair(terms: RepairTerms): RepairState {
  requireTerms(terms);
  const { units, timeToFailure, crews } = terms;
  const failed = stateShares(terms);
  const meanFailed = mean(failed, (down) => down);
  const meanWaiting = mean(failed, (down) => Math.max(0, down - crews));
  const failureRate = (units - meanFailed) / timeToFailure;
  const found = mean(failed, (down) => (down >= crews ? (units - down) / timeToFailure : 0));
  return {
    failed,
    meanFailed,
    meanWaiting,
    failureRate,
    waitingTime: meanWaiting / failureRate,
    downTime: meanFailed / failureRate,
    shareThatWaits: found / failureRate,
  };
}

function stateShares({ units, timeToFailure, timeToRepair, crews }: RepairTerms): number[] {
  const weights = [1];
  for (let down = 1; down <= units; down += 1) {
    const failing = (units - down + 1) / timeToFailure;
    const mending = Math.min(down, crews) / timeToRepair;
    weights.push(((weights[down - 1] ?? 0) * failing) / mending);
  }
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

function mean(shares: readonly number[], value: (down: number) => number): number {
  return shares.reduce((sum, share, down) => sum + share * value(down), 0);
}

function requireTerms({ units, timeToFailure, timeToRepair, crews }: RepairTerms): void {
  if (!Number.isInteger(units) || units < 1 || !Number.isInteger(crews) || crews < 1) {
    throw new RangeError(`${units} units and ${crews} crews must be whole numbers of 1 or more`);
  }
  if (!(timeToFailure > 0) || !(timeToRepair > 0) || !Number.isFinite(timeToFailure + timeToRepair)) {
    throw new RangeError(`times ${timeToFailure} between failures and ${timeToRepair} of repair must be above 0`);
  }
}
