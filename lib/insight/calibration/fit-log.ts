import { choleskyInverse } from '../../numeric/cholesky-inverse.ts';
import { leastSquares } from '../../numeric/least-squares.ts';
import type { FitParameter } from './fit-parameter.ts';
import type { LogForecast } from './log-forecast.ts';
import { expectations, type Observation, observationsOf, sensitivities } from './log-observations.ts';
import type { LoggedBatch } from './logged-batches.ts';
import { scatter } from './scatter.ts';

/** Values fitted to a log, as places on the scales of the parameters. */
export interface LogFit {
  readonly places: readonly number[];
  /** Covariance of the places; with nothing logged it is the unit matrix. */
  readonly covariance: readonly (readonly number[])[];
  /** Standard deviation of logged hours about the model, as a share. */
  readonly scatter: number;
  readonly converged: boolean;
}

/** How far the hours of like batches usually differ, as a share: common practice, no source. */
export const USUAL_HOURS_SCATTER = 0.06;

/** Gauges that judge a vacuum by its heat conduction read water vapour up to half too high, so pressures are heard less. */
export const PRESSURE_SCATTER = 0.25;

/** Rounds in which values and scatter are found together. */
const ROUNDS = 3;
const SETTLED = 0.05;

function weights(observations: readonly Observation[], hoursScatter: number): readonly number[] {
  return observations.map(({ of }) => 1 / (of === 'time' ? hoursScatter : PRESSURE_SCATTER));
}

/** Covariance by what the observations tell, (Jᵀ·W·J + 1)⁻¹; the belief is the 1. */
function covarianceOf(rows: readonly (readonly number[])[], weight: readonly number[], size: number): number[][] {
  const information = Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));
  rows.forEach((row, n) => {
    const w = (weight[n] as number) ** 2;
    for (let i = 0; i < size; i += 1) {
      const line = information[i] as number[];
      for (let j = 0; j < size; j += 1) line[j] = (line[j] as number) + w * (row[i] as number) * (row[j] as number);
    }
  });
  return choleskyInverse(information);
}

function hoursResiduals(observations: readonly Observation[], expected: readonly number[]): readonly number[] {
  return observations.flatMap(({ of, measured }, i) => (of === 'time' ? [measured - (expected[i] as number)] : []));
}

/**
 * Most believable values after the log: least squares of log hours and log pressures, with one residual more for each
 * parameter that holds it to its belief. The scatter of hours is found along with them.
 * Source: gelman-bayesian-data-analysis, ch. 14 (belief as further measurements); marquardt-1963.
 */
export function fitLog(
  batches: readonly LoggedBatch[],
  parameters: readonly FitParameter[],
  forecast: LogForecast,
  onPass: () => void,
  start: readonly number[] = parameters.map((parameter) => parameter.start),
): LogFit {
  const observations = observationsOf(batches);
  const problem = { least: parameters.map(({ least }) => least), most: parameters.map(({ most }) => most), onPass };
  let fit: LogFit = { places: start, covariance: [], scatter: USUAL_HOURS_SCATTER, converged: false };
  for (let round = 0; round < ROUNDS; round += 1) {
    const weight = weights(observations, fit.scatter);
    const residuals = (places: readonly number[]) => [
      ...expectations(observations, forecast, places).map(
        (value, i) => ((observations[i] as Observation).measured - value) * (weight[i] as number),
      ),
      ...places,
    ];
    const { parameters: places, converged } = leastSquares({
      ...problem,
      start: fit.places,
      residuals,
      difference: 0.2,
    });
    const covariance = covarianceOf(sensitivities(observations, forecast, places), weight, places.length);
    const used = places.length - covariance.reduce((sum, row, k) => sum + (row[k] as number), 0);
    const found = scatter(
      hoursResiduals(observations, expectations(observations, forecast, places)),
      USUAL_HOURS_SCATTER,
      used,
    );
    const isSettled = Math.abs(found / fit.scatter - 1) < SETTLED;
    fit = { places, covariance, scatter: found, converged };
    if (isSettled) break;
  }
  return fit;
}
