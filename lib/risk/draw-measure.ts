import type { DrawOutcome } from './evaluate-draws.ts';

/** A figure that every draw has for every scenario, or lacks. */
export type DrawMeasure = 'netPresentValue' | 'payback' | 'lowestCover' | 'dryOut' | 'contribution';

/**
 * That figure of one outcome, in the unit of `DrawOutcome`; null where there is none: a shop that cannot run, today
 * against itself, no debt. A payback beyond the horizon is infinite, so that it sorts last; it never leaves this folder.
 */
export function measureOf(outcome: DrawOutcome, measure: DrawMeasure): number | null {
  if (outcome.kind === 'refused') return null;
  switch (measure) {
    case 'netPresentValue':
      return outcome.versusToday?.netPresentValue ?? null;
    case 'payback':
      return outcome.versusToday && (outcome.versusToday.payback ?? Number.POSITIVE_INFINITY);
    default:
      return outcome[measure];
  }
}

/** The figure of every outcome that has it. */
export function measuresOf(outcomes: readonly DrawOutcome[], measure: DrawMeasure): number[] {
  return outcomes.map((outcome) => measureOf(outcome, measure)).filter((value) => value !== null);
}
