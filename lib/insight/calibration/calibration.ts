import type { Contradiction } from './contradictions.ts';
import type { NextBatch } from './next-batch.ts';

/** How well the log tells a value: by itself, only in company with another, or not at all. */
export type Verdict = 'determined' | 'together' | 'undetermined';

/** A number with the ends of its middle 95 %, in the engine's unit. */
export interface ValueRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Names one input of a chamber type or product. */
export interface InputName {
  readonly list: 'chambers' | 'products';
  readonly id: string;
  readonly key: string;
}

export interface FittedValue extends InputName {
  readonly from: 'hours' | 'weights' | 'riseTests';
  /** Batches or tests that bear on it. */
  readonly count: number;
  /** Value in the plan, with the range it was believed in before the log was read; the two differ after an earlier fit. */
  readonly before: number;
  readonly believed: ValueRange;
  readonly after: ValueRange;
  /** Spread after over spread before: 1 when the log says nothing. */
  readonly narrowed: number;
  /** Standard deviations of the belief from the believed to the fitted value. */
  readonly moved: number;
  readonly verdict: Verdict;
  /** The value that can take its place in explaining the log, when there is one. */
  readonly partner: InputName | null;
  readonly next: NextBatch | null;
}

/** Why a batch had no say. */
export type BatchUse = 'fitted' | 'odd' | 'neverDry' | 'loadOutOfRange';

/** A logged batch against the model [s]; expectations are null where the model cannot dry it. */
export interface ComparedBatch {
  readonly id: string;
  readonly date: string;
  readonly chamber: string;
  readonly product: string;
  readonly wet: number;
  readonly time: number;
  readonly before: number | null;
  readonly after: number | null;
  readonly use: BatchUse;
}

/** What the log says of the shop. Plain data. */
export interface Calibration {
  readonly batches: readonly ComparedBatch[];
  readonly values: readonly FittedValue[];
  /** Among the batches that had a say. */
  readonly contradictions: readonly Contradiction[];
  /** Chamber types with batches but no pressure-rise test: their leak was taken as it stands in the plan. */
  readonly untested: readonly string[];
  /** Chamber types whose longer tests rise more slowly. */
  readonly levellingOff: readonly string[];
  /** Typical miss of the hours as a share, before and after; null without batches. */
  readonly miss: { readonly before: number; readonly after: number } | null;
  /** Standard deviation of like batches about the model, as a share. */
  readonly scatter: number;
  readonly converged: boolean;
  /** Single dryings worked out for it. */
  readonly dryings: number;
}
