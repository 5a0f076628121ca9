import { type PumpChainState, pumpChain } from './pump-chain.ts';
import { type PumpAtWork, type PumpFailureTerms, SECONDS_PER_YEAR } from './pump-failure-terms.ts';

/** What failing pumps cost in a year, all positive [money/year]. */
export interface FailureCost {
  /** Loads that were under vacuum and had to be thrown away. */
  readonly spoiled: number;
  /** Sales less running cost that the idle chambers did not bring. */
  readonly idle: number;
  /** Bills for mending. */
  readonly repairs: number;
  readonly total: number;
}

/** The mean year with failing pumps. */
export interface ExpectedFailures {
  /** Failures of all pumps [1/year]. */
  readonly failures: number;
  /** Time that pumps are stopped, added up over them [s/year]. */
  readonly downtime: number;
  /** `stopped[j]`: share of time in which j pumps are stopped [–]. */
  readonly stopped: readonly number[];
  /** Share of time that a chamber has a running pump to call on [–]. */
  readonly availability: number;
  readonly spoiledLoads: number;
  /** Loads spoiled and loads not begun [1/year]. */
  readonly lostBatches: number;
  readonly cost: FailureCost;
}

/**
 * Mean year of failing pumps in closed form, from the steady state of `pumpChain`. Exact for a lone pump, for like pumps, and
 * for unlike ones that are each mended at once without a spare. Unlike pumps that share a crew or a spare are taken
 * as like ones that fail as often in all, which is close where few are down at a time.
 * Source: derived.
 */
export function expectedFailures(terms: PumpFailureTerms): ExpectedFailures {
  const { pumps } = terms;
  const standstill = (terms.swapTime ?? terms.repairTime) / SECONDS_PER_YEAR;
  const chain = pumpChain({
    pumps: pumps.length,
    failureRate: likeRate(pumps, standstill),
    repairTime: terms.repairTime / SECONDS_PER_YEAR,
    swapTime: terms.swapTime === null ? null : terms.swapTime / SECONDS_PER_YEAR,
    crews: terms.crews,
  });
  const part = failureShares(pumps, chain);
  /** Share of the year that this pump is stopped. */
  const stopped = (pump: PumpAtWork) => part(pump) * chain.meanStopped;
  const spoiledOf = (pump: PumpAtWork) => part(pump) * chain.failureRate * pump.loadsUnderVacuum * terms.spoiledShare;
  const spoiledLoads = sumOf(pumps, spoiledOf);
  const chambers = sumOf(pumps, (pump) => pump.chambers);
  return {
    failures: chain.failureRate,
    downtime: chain.meanStopped * SECONDS_PER_YEAR,
    stopped: chain.stopped,
    availability: 1 - sumOf(pumps, (pump) => pump.chambers * stopped(pump)) / chambers,
    spoiledLoads,
    lostBatches: spoiledLoads + sumOf(pumps, (pump) => pump.batchesPerYear * stopped(pump)),
    cost: failureCost(
      sumOf(pumps, (pump) => spoiledOf(pump) * pump.loadValue),
      sumOf(pumps, (pump) => pump.contributionPerYear * stopped(pump)),
      chain.failureRate * terms.repairBill,
    ),
  };
}

/** Failures of a pump that stands still for a while after each [1/year]: λ/(1 + λ·standstill). */
function failures(pump: PumpAtWork, standstill: number): number {
  return pump.failuresPerYear / (1 + pump.failuresPerYear * standstill);
}

/** Rate at which like pumps would fail as often in all [1/year]. @param standstill after each failure [year] */
function likeRate(pumps: readonly PumpAtWork[], standstill: number): number {
  const mean = sumOf(pumps, (pump) => failures(pump, standstill)) / pumps.length;
  return mean / (1 - mean * standstill);
}

/** Share of the failures that falls to each pump [–]. */
function failureShares(pumps: readonly PumpAtWork[], chain: PumpChainState): (pump: PumpAtWork) => number {
  const standstill = chain.failureRate > 0 ? chain.meanStopped / chain.failureRate : 0;
  const whole = sumOf(pumps, (pump) => failures(pump, standstill));
  return (pump) => (whole > 0 ? failures(pump, standstill) / whole : 0);
}

function failureCost(spoiled: number, idle: number, repairs: number): FailureCost {
  return { spoiled, idle, repairs, total: spoiled + idle + repairs };
}

function sumOf<Item>(items: readonly Item[], amount: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + amount(item), 0);
}
