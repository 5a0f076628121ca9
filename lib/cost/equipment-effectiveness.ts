import { requireAmounts, requireFractions } from './require-amounts.ts';

export interface EffectivenessTerms {
  /** Time in which the equipment was meant to run [any one unit of time]. */
  readonly plannedTime: number;
  /** Part of it in which it ran [the same]. */
  readonly runningTime: number;
  /** Time that what was made takes when nothing slows it [the same]. */
  readonly idealTime: number;
  /** Share of what was made that is good, 0–1. */
  readonly goodShare: number;
}

/** Where the time of equipment goes; each 0–1 as a rule, performance above 1 when it beats its ideal. */
export interface Effectiveness {
  readonly availability: number;
  readonly performance: number;
  readonly quality: number;
  readonly overall: number;
}

/**
 * Overall equipment effectiveness [–]: availability × performance × quality, with availability = running/planned time and
 * performance = ideal/running time. All 0 where nothing was planned or nothing ran.
 * Source: willmott-mccarthy-2001.
 * Throws RangeError on a negative time or a share outside 0–1.
 */
export function equipmentEffectiveness(terms: EffectivenessTerms): Effectiveness {
  const { plannedTime, runningTime, idealTime, goodShare } = terms;
  requireAmounts({ plannedTime, runningTime, idealTime });
  requireFractions({ goodShare });
  const availability = plannedTime > 0 ? runningTime / plannedTime : 0;
  const performance = runningTime > 0 ? idealTime / runningTime : 0;
  return { availability, performance, quality: goodShare, overall: availability * performance * goodShare };
}
