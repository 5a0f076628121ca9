import { type DrawMeasure, measureOf } from './draw-measure.ts';
import type { DrawOutcome } from './evaluate-draws.ts';
import { type SampleSpread, sampleSpread } from './sample-spread.ts';
import { standardError } from './standard-error.ts';

/** One scenario less another, draw by draw: what is uncertain for both alike drops out. */
export interface PairedDifference {
  /** Of the draws that have the figure in both; null when there is none. */
  readonly spread: SampleSpread | null;
  /** By which the mean is uncertain for the number of draws, as if they were independent [same unit]. */
  readonly standardError: number;
  /** Share of those draws in which the first has more [–]. */
  readonly firstIsMore: number | null;
}

/**
 * Difference of a figure between two scenarios under the same draws, first less second.
 * Throws RangeError when the two have not been through as many draws.
 * @param measure any but payback, which has no value beyond the horizon to take a difference of
 */
export function pairedDifference(
  first: readonly DrawOutcome[],
  second: readonly DrawOutcome[],
  measure: Exclude<DrawMeasure, 'payback'>,
): PairedDifference {
  if (first.length !== second.length) throw new RangeError(`${first.length} draws against ${second.length}`);
  const differences = first.flatMap((outcome, k) => {
    const other = second[k];
    const mine = measureOf(outcome, measure);
    const theirs = other ? measureOf(other, measure) : null;
    return mine === null || theirs === null ? [] : [mine - theirs];
  });
  const spread = sampleSpread(differences);
  return {
    spread,
    standardError: standardError(differences),
    firstIsMore: spread && differences.filter((difference) => difference > 0).length / differences.length,
  };
}
