import type { FittedValue, InputName, ValueRange, Verdict } from './calibration.ts';
import type { LogFit } from './fit-log.ts';
import { type FitParameter, valueAtPlace } from './fit-parameter.ts';
import type { LoggedBatch } from './logged-batches.ts';
import type { NextBatch } from './next-batch.ts';
import { WIDTH_OF_RANGE } from './prior.ts';

/** A value whose spread is halved at least is known by the log; one that keeps almost all of it is not. */
const KNOWN = 0.5;
const UNKNOWN = 0.9;
/** A value that moved this far, in standard deviations of the belief, has been spoken of even if it stayed as wide. */
const MOVED = 0.3;
/** Two values this closely tied explain the same hours. */
const TIED = 0.3;

function verdictOf(narrowed: number, moved: number): Verdict {
  if (narrowed <= KNOWN) return 'determined';
  return narrowed <= UNKNOWN || Math.abs(moved) >= MOVED ? 'together' : 'undetermined';
}

function nameOf({ list, id, key }: FitParameter): InputName {
  return { list, id, key };
}

/** The parameter most closely tied to parameter k, when one is. */
function partnerOf(parameters: readonly FitParameter[], fit: LogFit, k: number): InputName | null {
  const variance = (i: number) => (fit.covariance[i] as readonly number[])[i] as number;
  const ties = parameters.map((parameter, j) => {
    const shared = (fit.covariance[k] as readonly number[])[j] as number;
    return { parameter, tie: j === k ? 0 : Math.abs(shared) / Math.sqrt(variance(k) * variance(j)) };
  });
  const closest = ties.sort((a, b) => b.tie - a.tie)[0];
  return closest && closest.tie > TIED ? nameOf(closest.parameter) : null;
}

/** Middle and ends of the middle 95 % of a bell curve on a parameter's own scale, within what the register allows. */
function rangeAt(parameter: FitParameter, place: number, deviation: number): ValueRange {
  const at = (side: number) => {
    const wanted = place + (side * deviation * WIDTH_OF_RANGE) / 2;
    return valueAtPlace(parameter, Math.min(parameter.most, Math.max(parameter.least, wanted)));
  };
  return { value: at(0), low: at(-1), high: at(1) };
}

function batchesOn({ list, id }: FitParameter, batches: readonly LoggedBatch[]): number {
  return batches.filter((batch) => (list === 'chambers' ? batch.chamber : batch.product) === id).length;
}

/** Every fitted parameter with its ranges before and after, and how well the log tells it. */
export function fittedValues(
  parameters: readonly FitParameter[],
  fit: LogFit,
  batches: readonly LoggedBatch[],
  next: readonly (NextBatch | null)[],
): readonly FittedValue[] {
  return parameters.map((parameter, k) => {
    const moved = fit.places[k] as number;
    const narrowed = Math.sqrt((fit.covariance[k] as readonly number[])[k] as number);
    const verdict = verdictOf(narrowed, moved);
    return {
      ...nameOf(parameter),
      from: 'hours',
      count: batchesOn(parameter, batches),
      before: parameter.before,
      believed: rangeAt(parameter, 0, 1),
      after: rangeAt(parameter, moved, narrowed),
      narrowed,
      moved,
      verdict,
      partner: verdict === 'determined' ? null : partnerOf(parameters, fit, k),
      next: verdict === 'determined' ? null : (next[k] ?? null),
    };
  });
}
