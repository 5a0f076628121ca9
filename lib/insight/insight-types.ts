import type { DryingLimit } from '../plant/report-types.ts';

/** What a shop can have too little of. */
export type Resource = 'chambers' | 'pump' | 'hose' | 'trap' | 'heater' | 'freezer' | 'crew' | 'power' | 'demand';

/** One resource: how hard it works, and what a quarter more of it would bring. */
export interface ResourceRelief {
  readonly resource: Resource;
  /** 0–1; null when the shop has no such resource or it has no limit. */
  readonly utilisation: number | null;
  /** Change of weekly contribution with 25 % more [money/week]; null when a rerun means nothing. */
  readonly gain: number | null;
  /** That change over the present weekly contribution; null when that is not positive. */
  readonly gainShare: number | null;
}

/** What a shared pump's machines make with one chamber alone on such a pump, with one fewer than there are, and with all [kg/week]. */
export interface SharedOutputs {
  readonly lone: number;
  readonly fewer: number;
  readonly all: number;
}

export interface Bottleneck {
  readonly scenarioId: string;
  /** The resource with the largest relief gain; null when none gains more than half a percent. */
  readonly resource: Resource | null;
  /** Its gain over the present weekly contribution, or over the weekly sales where that is not positive. */
  readonly gainShare: number;
  readonly reliefs: readonly ResourceRelief[];
  /** Output per chamber against one chamber alone on a pump of its own of the same type, 0–1; null when the pump is not shared. */
  readonly outputPerChamber: number | null;
  /** What the last chamber adds over what it would add with a pump of its own, 0–1; null when the pump is not shared. */
  readonly lastChamberAdds: number | null;
  /** What that is reckoned from; null when the pump is not shared or one of the three cannot run. */
  readonly sharedOutputs: SharedOutputs | null;
  /** What gains are measured by [money/week]: the present weekly contribution, or the sales where that is not positive. */
  readonly yardstick: number;
  /** Shares below which a gain is none worth naming, and the last chamber adds too little. */
  readonly thresholds: { readonly gain: number; readonly lastChamber: number };
  /** True when the shared pump is the largest relief, or the set-up is beyond its knee. */
  readonly sharedPumpJams: boolean;
}

/** Output with a number of chambers, on one shared pump and on a pump each. */
export interface KneePoint {
  readonly chambers: number;
  /** Dry kilograms per week; null when that set-up cannot run. */
  readonly shared: number | null;
  readonly own: number | null;
  /** What the last chamber added on the shared pump over what it added with its own; null for the first. */
  readonly added: number | null;
  /** What holds the drying back most on the shared pump; null when that set-up cannot run. */
  readonly binds: DryingLimit | null;
}

export interface KneeCurve {
  readonly points: readonly KneePoint[];
  /** First number of chambers at which one more adds less than the threshold; null when not reached. */
  readonly knee: number | null;
  readonly threshold: number;
}

export interface KneeMapCell {
  readonly chambers: number;
  /** Dry kilograms per week; null when that set-up cannot run. */
  readonly output: number | null;
  /** What the last chamber added over what it would add alone on such a pump; null for the first. */
  readonly added: number | null;
}

export interface KneeMapRow {
  /** Pump speed over the pump's own. */
  readonly factor: number;
  readonly cells: readonly KneeMapCell[];
  /** First number of chambers at which one more adds less than the threshold; null when not reached. */
  readonly knee: number | null;
}

/** The knee over number of chambers and pump speed. */
export interface KneeMap {
  readonly rows: readonly KneeMapRow[];
  readonly threshold: number;
}
