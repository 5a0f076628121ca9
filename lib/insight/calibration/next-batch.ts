import { log } from '../../numeric/portable-math.ts';
import type { LogFit } from './fit-log.ts';
import type { FitParameter } from './fit-parameter.ts';
import type { BatchKind, LogForecast } from './log-forecast.ts';
import type { LoggedBatch } from './logged-batches.ts';

/** A batch worth drying and logging to learn one value, against what is loaded usually. */
export interface NextBatch extends BatchKind {
  /** Wet weight against the usual one of this product in this chamber. */
  readonly loadFactor: number;
  /** Spread of the value after such a batch, as a share of its spread now. */
  readonly narrowsTo: number;
}

/** Loads that a shop can lay out: half a tray, the usual, and half as much again. */
const LOAD_FACTORS = [0.5, 1, 1.5] as const;

/** A batch that leaves the spread above this share is not worth naming. */
const WORTHWHILE = 0.93;

const STEP = 0.2;

function usualWet(batches: readonly LoggedBatch[]): number {
  return batches.reduce((sum, batch) => sum + batch.wet, 0) / batches.length;
}

interface Candidate extends BatchKind {
  readonly loadFactor: number;
}

function candidates(batches: readonly LoggedBatch[]): readonly Candidate[] {
  const keys = new Set(batches.map(({ chamber, product }) => `${chamber} ${product}`));
  return [...keys].flatMap((key) => {
    const own = batches.filter(({ chamber, product }) => `${chamber} ${product}` === key);
    const { chamber, product } = own[0] as LoggedBatch;
    return LOAD_FACTORS.map((loadFactor) => ({ chamber, product, wet: loadFactor * usualWet(own), loadFactor }));
  });
}

/** Change of log hours with each place; null where the batch would never get dry. */
function slopes(kind: BatchKind, forecast: LogForecast, places: readonly number[]): readonly number[] | null {
  const made = places.map(() => 0);
  for (const k of forecast.relevantTo(kind)) {
    const above = forecast.of(kind, places.with(k, (places[k] as number) + STEP));
    const below = forecast.of(kind, places.with(k, (places[k] as number) - STEP));
    if (!above || !below) return null;
    made[k] = log(above.time / below.time) / (2 * STEP);
  }
  return made;
}

/** Share of the variance of parameter k that one more batch with these slopes leaves: 1 − (C·g)ₖ²/(Cₖₖ·(s² + gᵀ·C·g)). */
function varianceLeft(fit: LogFit, slope: readonly number[], k: number): number {
  const product = fit.covariance.map((row) => row.reduce((sum, value, j) => sum + value * (slope[j] as number), 0));
  const spread = product.reduce((sum, value, j) => sum + value * (slope[j] as number), 0);
  const own = (fit.covariance[k] as readonly number[])[k] as number;
  return 1 - (product[k] as number) ** 2 / (own * (fit.scatter ** 2 + spread));
}

/**
 * For each parameter the one batch that would narrow it most, tried over what the shop has dried at half, usual and one and
 * a half loads; null where no single batch would. Source: gelman-bayesian-data-analysis, ch. 14 (one more measurement).
 */
export function nextBatches(
  parameters: readonly FitParameter[],
  fit: LogFit,
  forecast: LogForecast,
  batches: readonly LoggedBatch[],
): readonly (NextBatch | null)[] {
  const tried = candidates(batches).flatMap((candidate) => {
    const slope = slopes(candidate, forecast, fit.places);
    return slope ? [{ candidate, slope }] : [];
  });
  return parameters.map((_, k) => {
    const rated = tried.map(({ candidate, slope }) => ({
      ...candidate,
      narrowsTo: Math.sqrt(Math.max(0, varianceLeft(fit, slope, k))),
    }));
    const best = rated.sort((a, b) => a.narrowsTo - b.narrowsTo)[0];
    return best && best.narrowsTo < WORTHWHILE ? best : null;
  });
}
