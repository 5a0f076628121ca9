import { type CashBand, cashBand } from './cash-band.ts';
import { type DrawMeasure, measuresOf } from './draw-measure.ts';
import type { DrawOutcome } from './evaluate-draws.ts';
import { type SampleSpread, sampleSpread } from './sample-spread.ts';

/** What all draws together say of one scenario. */
export interface DrawSummary {
  readonly draws: number;
  /** Draws in which the shop could not run; they are left out of all that follows. */
  readonly refused: number;
  /** By figure; null where no draw has it. */
  readonly spreads: Readonly<Record<DrawMeasure, SampleSpread | null>>;
  /** Chance that debt cover falls below the lender's line [–]; null when no draw could run. */
  readonly missesLine: number | null;
  /** Chance that the purchase has not paid back within the horizon [–]; null for today, or when no draw could run. */
  readonly laterThanHorizon: number | null;
  /** Cumulative cash against today, month by month; null for today, or when no draw could run. */
  readonly cash: CashBand | null;
}

/** Sums the draws of one scenario up. @param outcomes of that scenario, one for each draw */
export function drawSummary(outcomes: readonly DrawOutcome[]): DrawSummary {
  const computed = outcomes.filter((outcome) => outcome.kind === 'computed');
  const spread = (measure: DrawMeasure) => sampleSpread(measuresOf(outcomes, measure));
  const paybacks = measuresOf(outcomes, 'payback');
  return {
    draws: outcomes.length,
    refused: outcomes.length - computed.length,
    spreads: {
      netPresentValue: spread('netPresentValue'),
      payback: spread('payback'),
      lowestCover: spread('lowestCover'),
      dryOut: spread('dryOut'),
      contribution: spread('contribution'),
    },
    missesLine: shareOf(computed, (outcome) => outcome.missesLine),
    laterThanHorizon: shareOf(paybacks, (months) => months === Number.POSITIVE_INFINITY),
    cash: cashBand(outcomes),
  };
}

function shareOf<Item>(items: readonly Item[], holds: (item: Item) => boolean): number | null {
  return items.length === 0 ? null : items.filter(holds).length / items.length;
}
