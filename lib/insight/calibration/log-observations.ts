import { log } from '../../numeric/portable-math.ts';
import type { DryingForecast } from './forecast-drying.ts';
import type { LogForecast } from './log-forecast.ts';
import type { LoggedBatch } from './logged-batches.ts';

/** One measured figure of a batch, as a logarithm: hours and pressures err by shares, not by amounts. */
export interface Observation {
  readonly batch: LoggedBatch;
  readonly of: 'time' | 'pressure';
  readonly measured: number;
}

/** Taken for a load that would never get dry [s]; it only has to be far from anything that is logged. */
const NEVER = 20 * 86_400;

/** All that a list of batches measured: hours always, the highest pressure where somebody looked. */
export function observationsOf(batches: readonly LoggedBatch[]): readonly Observation[] {
  return batches.flatMap((batch): Observation[] => [
    { batch, of: 'time', measured: log(batch.time) },
    ...(batch.highestPressure === null
      ? []
      : [{ batch, of: 'pressure' as const, measured: log(batch.highestPressure) }]),
  ]);
}

function expected(observation: Observation, drying: DryingForecast | null): number {
  if (observation.of === 'time') return log(drying?.time ?? NEVER);
  return drying ? log(drying.highestPressure) : observation.measured;
}

/** Logarithm of what the model expects in place of each measured figure. */
export function expectations(
  observations: readonly Observation[],
  forecast: LogForecast,
  places: readonly number[],
): readonly number[] {
  return observations.map((observation) => expected(observation, forecast.of(observation.batch, places)));
}

/** Half the step of central differences, in standard deviations of the belief: wide enough to stand clear of step errors. */
const STEP = 0.2;

/** Change of each expectation with each parameter's place, by central differences; one row to an observation. */
export function sensitivities(
  observations: readonly Observation[],
  forecast: LogForecast,
  places: readonly number[],
): readonly (readonly number[])[] {
  const columns = places.map((place, k) => {
    const above = expectations(observations, forecast, places.with(k, place + STEP));
    const below = expectations(observations, forecast, places.with(k, place - STEP));
    return above.map((value, i) => (value - (below[i] as number)) / (2 * STEP));
  });
  return observations.map((_, i) => columns.map((column) => column[i] as number));
}
