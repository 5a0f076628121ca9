/** One product of a simulated week. */
export interface BasisProduct {
  readonly productId: string;
  readonly batches: number;
  /** [kg/week] */
  readonly wetIn: number;
  readonly dryOut: number;
  /** Time it holds chambers and hands [s/week]: what current, upkeep and wages are shared out by. */
  readonly chamberTime: number;
  readonly handsOn: number;
}

/** A simulated week in counts, no money in it. */
export interface BasisWeek {
  /** Of the scenario it is of. */
  readonly name: string;
  /** True for the week that faces the market of the busiest month. */
  readonly isLarger: boolean;
  readonly products: readonly BasisProduct[];
  /** [kWh/week]: at the basic price first, then at that of each price band in the plan's order. */
  readonly energy: readonly number[];
  /** [W] */
  readonly peakPower: number;
  /** Hired time that is paid [s/week]. */
  readonly paidTime: number;
  /** Oil changes and rebuilds [1/week] by kind of pump. */
  readonly pumps: readonly { readonly pumpId: string; readonly oilChanges: number; readonly rebuilds: number }[];
  readonly chambers: readonly { readonly chamberId: string; readonly count: number }[];
}

/** A way of running the shop, from a month on. */
export interface BasisPhase {
  /** First month, 0 = first of the plan; below 0 for what runs already. */
  readonly month: number;
  /** Place of its weeks in the list: for today's market, and for a larger one where there is such a week. */
  readonly week: number;
  readonly larger: number | null;
  /** Share of each month of the plan that would be run as for the larger market [–]. */
  readonly largerShares: readonly number[];
  readonly pumpId: string;
  /** Share of time that a chamber has a running pump to call on [–]. */
  readonly availability: number;
  /** [1/year] */
  readonly failuresPerYear: number;
  /** Dried food lost with failing pumps by product [kg/year]. */
  readonly spoiled: readonly { readonly productId: string; readonly perYear: number }[];
}

/** Things of one kind from the month they are bought to the month they go. */
export interface BasisHolding {
  readonly name: string;
  /** Kind of thing, such as `chamber mid`; null for old equipment given in, which brings money and no cost. */
  readonly key: string | null;
  readonly count: number;
  /** Month of the purchase that began it, of which this may be a replacement. */
  readonly stageMonth: number;
  readonly from: number;
  /** Month at whose start it goes; null when it is held beyond the plan. */
  readonly until: number | null;
  /** Kept; worn out and sold at its salvage; or given up for what the scenario gets. */
  readonly end: 'kept' | 'worn' | 'given';
  /** [months] */
  readonly life: number;
}

/** The shop projected one way. */
export interface BasisPath {
  readonly phases: readonly BasisPhase[];
  /** Dried product that a running week can bring by month of the plan, new machines coming up to speed [kg/week]. */
  readonly capacity: readonly { readonly productId: string; readonly perWeek: readonly number[] }[];
  readonly holdings: readonly BasisHolding[];
}

/** One purchase. */
export interface BasisStage {
  readonly scenarioId: string;
  readonly name: string;
  readonly month: number;
  readonly items: readonly { readonly key: string; readonly name: string; readonly count: number }[];
}

/** A loan as it is drawn. */
export interface BasisLoan {
  readonly id: string;
  readonly name: string;
  readonly drawMonth: number;
  readonly isRunning: boolean;
}

/** What a projection is made of before any price is put to it. */
export interface LenderBasis {
  readonly horizonMonths: number;
  /** Calendar month in which the plan starts, 0 = January. */
  readonly startMonth: number;
  readonly weeks: readonly BasisWeek[];
  readonly today: BasisPath;
  /** Null for today itself. */
  readonly path: BasisPath | null;
  readonly stages: readonly BasisStage[];
  readonly loans: readonly BasisLoan[];
  /** Published yearly shares by which things are written off [%]; null where they are written off evenly. */
  readonly writeOffTable: readonly number[] | null;
}
