import type { DrawOutcome, DrawReturn } from './evaluate-draws.ts';
import { percentiles } from './percentile.ts';

/** Within what cumulative cash against today lies in most draws [money], month 0 first. */
export interface CashRange {
  /** One draw in ten is below. */
  readonly low: readonly number[];
  readonly middle: readonly number[];
  /** One draw in ten is above. */
  readonly high: readonly number[];
}

/** The range of cash month by month: just before what is bought or sold at that moment, and just after. */
export interface CashBand {
  readonly before: CashRange;
  readonly after: CashRange;
}

const SHARES = [0.1, 0.5, 0.9] as const;

function rangeOf(draws: readonly DrawReturn[], months: number, cashOf: (draw: DrawReturn, month: number) => number) {
  const found = Array.from({ length: months }, (_, month) =>
    percentiles(
      draws.map((draw) => cashOf(draw, month)),
      SHARES,
    ),
  );
  const [low, middle, high] = SHARES.map((_, k) => found.map((values) => values[k] ?? Number.NaN));
  return { low: low ?? [], middle: middle ?? [], high: high ?? [] };
}

/**
 * The band of cumulative cash against today over the draws of one scenario, each month by itself: its edges are no single
 * course of events. Where horizons differ it ends with the shortest. Null for today itself, or when no draw could run.
 */
export function cashBand(outcomes: readonly DrawOutcome[]): CashBand | null {
  const draws = outcomes.flatMap((outcome) =>
    outcome.kind === 'computed' && outcome.versusToday ? [outcome.versusToday] : [],
  );
  if (draws.length === 0) return null;
  const months = Math.min(...draws.map(({ cumulative }) => cumulative.length));
  const after = (draw: DrawReturn, month: number) => draw.cumulative[month] ?? Number.NaN;
  const before = (draw: DrawReturn, month: number) => after(draw, month) - (draw.equipment[month] ?? 0);
  return { before: rangeOf(draws, months, before), after: rangeOf(draws, months, after) };
}
