import type { Scenario } from '../../plan/plan-types.ts';
import type { Resource } from '../insight-types.ts';

/** How many chambers of one type an option may have. */
export interface ChamberRange {
  readonly chamber: string;
  readonly least: number;
  readonly most: number;
}

/** What may be combined: every option takes one value of each list. Ids are those of the plan. */
export interface OptionSpace {
  /** In the order in which chambers are hung on pumps. */
  readonly chambers: readonly ChamberRange[];
  /** Of all types together. */
  readonly mostChambers: number;
  readonly arrangements: readonly Scenario['pumpArrangement'][];
  readonly pumps: readonly string[];
  readonly hoses: readonly string[];
  readonly patterns: readonly string[];
  readonly practices: readonly Scenario['startPractice'][];
  /** For the practice 'roughing'; none means that it is left out. */
  readonly roughingPumps: readonly string[];
  readonly spares: readonly Scenario['sparePump'][];
  readonly freezers: { readonly least: number; readonly most: number };
}

/** One way to set the shop up: the fields of a scenario that the search chooses. */
export type OptionChoice = Pick<
  Scenario,
  | 'chambers'
  | 'pumpArrangement'
  | 'groupSize'
  | 'pump'
  | 'hose'
  | 'pattern'
  | 'startPractice'
  | 'roughingPump'
  | 'sparePump'
  | 'freezers'
>;

/** What the owner will not go beyond; null for no limit. */
export interface OptionLimits {
  /** Purchase with delivery and contingency, and the working capital of its first year [money]. */
  readonly budget: number | null;
  /** Least debt cover of any twelve months [–]. */
  readonly dscrLine: number | null;
  /** Rating of the supply [A]. */
  readonly supplyCurrent: number | null;
  /** Circuits for machines. */
  readonly circuits: number | null;
  /** Floor for machines [m²]. */
  readonly floorSpace: number | null;
}

/** What an option asks for, known without running its week. */
export interface OptionNeeds {
  /** Purchase with delivery and contingency, less old equipment given in [money]. */
  readonly capital: number;
  /** Rating of the supply it calls for [A]. */
  readonly supplyCurrent: number;
  readonly circuits: number;
  /** [m²] */
  readonly floorSpace: number;
}

/** Limits that can be checked before a week is run. */
export type EarlyLimit = 'budget' | 'supplyCurrent' | 'circuits' | 'floorSpace';

/** Why an option is not to be had. */
export type Unfit = EarlyLimit | 'workingCapital' | 'cover' | 'cannotRun';

/** An option that might do, before its week is run. */
export interface Candidate {
  readonly choice: OptionChoice;
  /** Place in the order of the space: decides between equals. */
  readonly place: number;
  /** Equal for options that differ in money alone and share their weeks. */
  readonly family: string;
  readonly capital: number;
  /** No run of its week can bring more than this [money/year]; see `cashCeiling`. */
  readonly ceiling: number;
  /** What it looks like bringing [money/year]: decides the order of work and nothing else. */
  readonly estimate: number;
}

/** What has been worked out about an option that keeps to every limit. */
export interface OptionFigures {
  readonly capital: number;
  /** Most money tied up beyond today's in goods and unpaid bills in the first year from the purchase on, ≥ 0 [money]. */
  readonly workingCapital: number;
  /** Both together [money]: what the budget has to cover. */
  readonly money: number;
  /**
   * Cash beyond today's of an average year from the purchase on, after tax and replacements, before loans, the purchase itself and
   * working capital left out [money/year].
   */
  readonly yearlyCash: number;
  /** Months; 0 where nothing is spent, null where the horizon ends before. */
  readonly payback: number | null;
  readonly netPresentValue: number;
  /** Of any twelve months [–]; null without debt. */
  readonly lowestCover: number | null;
  /** [kg/week] */
  readonly dryOut: number;
  readonly needs: OptionNeeds;
  /** What keeps it from growing: limits that one chamber more would break. */
  readonly binds: readonly Binding[];
  /** What works hardest, and how hard [–]. */
  readonly busiest: { readonly resource: Resource; readonly use: number } | null;
}

/** What stands in the way of one chamber more. */
export type Binding = EarlyLimit | 'mostChambers' | 'market';

export type OptionOutcome =
  | { readonly kind: 'fit'; readonly place: number; readonly choice: OptionChoice; readonly figures: OptionFigures }
  | { readonly kind: 'unfit'; readonly place: number; readonly reason: Unfit };

export type FitOption = Extract<OptionOutcome, { kind: 'fit' }>;
