import type { WeeklyCost } from '../cost/weekly-cost.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import type { BatchRecord, PlantReport } from '../plant/report-types.ts';

/** Seconds in a year of 365.25 days. */
export const SECONDS_PER_YEAR = 31_557_600;
const WEEKS_PER_YEAR = SECONDS_PER_YEAR / WEEK;

/** A pump is not mended in less than this [s]: an input of 0 would make a rate without bound. */
const SHORTEST = 60;

/** One pump and what hangs on it. */
export interface PumpAtWork {
  readonly chambers: number;
  /** Failures in a calendar year, all else running [1/year]. */
  readonly failuresPerYear: number;
  /** Loads under vacuum while it runs, on average. */
  readonly loadsUnderVacuum: number;
  /** What one of them has cost and would have fetched [money]. */
  readonly loadValue: number;
  /** What its chambers make in a calendar year. */
  readonly batchesPerYear: number;
  /** Sales less running cost of that [money/year]. */
  readonly contributionPerYear: number;
}

/** All that the risk of failing pumps is worked out from. */
export interface PumpFailureTerms {
  readonly pumps: readonly PumpAtWork[];
  /** Mean time to mend or replace a pump [s], > 0. */
  readonly repairTime: number;
  /** Mean time to put the spare in [s], > 0; null without a spare. */
  readonly swapTime: number | null;
  /** Pumps that can be mended at once. */
  readonly crews: number;
  /** Chance that a load under vacuum is lost when its pump stops [–]. */
  readonly spoiledShare: number;
  /** Bill for mending one failure [money]. */
  readonly repairBill: number;
}

/** What a scenario is taken to have in store for the day a pump fails. */
export interface FailureChoice {
  /** Whether a pump of the kind stands ready on the shelf. */
  readonly spare: boolean;
}

/**
 * The pumps of a scenario and what their failures cost, from the plan and the simulated week. Pumps fail while they run:
 * failures per year of running × share of the year they run, closures and other stoppages taken off. Each failed pump is
 * seen to at once. A small pump that only brings newcomers down is left out. A load under vacuum is worth what it fetches
 * less its packaging: all else has been spent on it by then, or is spent anyway.
 * @param plant simulated week of the scenario
 * @param week its accounts
 * @param choice what the scenario says itself when not given
 */
export function pumpFailureTerms(
  plan: Plan,
  scenario: Scenario,
  plant: PlantReport,
  week: WeeklyCost,
  choice: FailureChoice = { spare: scenario.sparePump === 'onShelf' },
): PumpFailureTerms {
  const pump = baseValues('pump', findById(plan.pumps, scenario.pump, 'pump'));
  const pumps = pumpsAtWork(plan, plant, week, pump.failuresPerYear);
  return {
    pumps,
    repairTime: Math.max(SHORTEST, pump.repairTime),
    swapTime: choice.spare ? Math.max(SHORTEST, pump.swapTime) : null,
    crews: pumps.length + 1,
    spoiledShare: pump.spoiledShare,
    repairBill: pump.repairBill,
  };
}

/** Weeks of full running in a year: the closed ones and the share of stoppages taken off. */
function runningWeeks(plan: Plan): number {
  const { closedWeeks, availability } = baseValues('site', plan.site);
  return Math.max(0, WEEKS_PER_YEAR - closedWeeks / WEEK) * availability;
}

function pumpsAtWork(plan: Plan, plant: PlantReport, week: WeeklyCost, failuresPerYear: number): PumpAtWork[] {
  const weeks = runningWeeks(plan);
  const worth = worthPerDryKilogram(week, plant);
  const all = accountOf(plant.batchRecords, worth);
  let first = 0;
  return plant.groups.map(({ chambers, pumpTime }) => {
    const end = first + chambers;
    const own = accountOf(plant.batchRecords.filter(inChambers(first, end)), worth);
    first = end;
    const even = chambers / plant.chambers;
    const output = all.dryOut > 0 ? own.dryOut / all.dryOut : even;
    const vacuum = all.time > 0 ? own.time / all.time : even;
    return {
      chambers,
      failuresPerYear: (failuresPerYear * pumpTime * weeks) / SECONDS_PER_YEAR,
      loadsUnderVacuum: pumpTime > 0 ? Math.min(chambers, (vacuum * timeUnderVacuum(plant)) / pumpTime) : 0,
      loadValue: own.time > 0 ? own.worthTime / own.time : 0,
      batchesPerYear: plant.batches * output * weeks,
      contributionPerYear: week.contribution.week * output * weeks,
    };
  });
}

function inChambers(first: number, end: number): (batch: BatchRecord) => boolean {
  return (batch) => batch.chamber >= first && batch.chamber < end;
}

/** Loads × time under vacuum in a week [s/week]. */
function timeUnderVacuum({ phases }: PlantReport): number {
  return phases.pumpDown + phases.primary + phases.secondary + phases.hold;
}

/** Sales less packaging of a dried kilogram, by product [money/kg]. */
function worthPerDryKilogram(week: WeeklyCost, plant: PlantReport): ReadonlyMap<string, number> {
  return new Map(
    plant.products.map(({ productId, dryOut }) => {
      const cost = week.products.find((product) => product.productId === productId);
      // What would be packed at a loss is not packed, and nobody misses it.
      const worth = cost ? Math.max(0, cost.revenue - cost.running.packaging) : 0;
      return [productId, dryOut > 0 ? worth / dryOut : 0];
    }),
  );
}

/** Finished batches added up: dried food [kg], time under vacuum [s], and that time weighed by what each is worth. */
function accountOf(batches: readonly BatchRecord[], worth: ReadonlyMap<string, number>) {
  const account = { dryOut: 0, time: 0, worthTime: 0 };
  for (const { productId, dryOut, phases } of batches) {
    const time = [phases.pumpDown, phases.primary, phases.secondary, phases.hold].reduce<number>(
      (sum, part) => sum + (part ?? 0),
      0,
    );
    account.dryOut += dryOut;
    account.time += time;
    // A slow load is met more often when the pump stops, so its worth weighs more.
    account.worthTime += time * dryOut * (worth.get(productId) ?? 0);
  }
  return account;
}
