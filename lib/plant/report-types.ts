/** What the week simulation gives back. SI units; "per week" figures are means over the measured weeks. */

/** What a chamber is doing. */
export type Phase =
  | 'waitingToLoad'
  | 'loading'
  | 'freezing'
  | 'waitingForPump'
  | 'pumpDown'
  | 'primary'
  | 'secondary'
  | 'hold'
  | 'unloading'
  | 'defrost'
  | 'waitingToClean'
  | 'cleaning'
  | 'idleNoDemand'
  | 'waitingForFreezer';

/** What holds the drying rate back at an instant. */
export type DryingLimit =
  | 'shelfTemperature'
  | 'heaterPower'
  | 'frozenLimit'
  | 'scorchLimit'
  | 'ceilingByTrap'
  | 'ceilingByGas'
  | 'flooded'
  | 'desorption';

export interface ProductWeek {
  readonly productId: string;
  readonly batches: number;
  readonly wetIn: number;
  readonly dryOut: number;
  readonly waterRemoved: number;
  /** Mean time from loading to ready again [s]; 0 when none was made. */
  readonly cycleTime: number;
}

/** Seconds per week that the chambers together spend in each phase. */
export type PhaseHours = Readonly<Record<Phase, number>>;

/** Seconds per week of drying held back by each limit, all chambers together. */
export type LimitHours = Readonly<Record<DryingLimit, number>>;

export interface GroupWeek {
  readonly pumpTypeId: string;
  readonly chambers: number;
  /** Pump running time [s/week]. */
  readonly pumpTime: number;
  readonly pumpStarts: number;
  /** Vapour load while the pump runs [kg/s]: mean, peak. */
  readonly vapourLoadMean: number;
  readonly vapourLoadPeak: number;
  readonly vapourTolerance: number;
  /** Water swallowed by the pump [kg/week]. */
  readonly waterSwallowed: number;
  /** Manifold pressure while any valve is open for drying [Pa]. */
  readonly manifoldPressurePeak: number;
  readonly manifoldPressure95: number;
  readonly manifoldPressureMean: number;
  /** Share of drying time at the pressure ceiling, 0–1. */
  readonly ceilingShare: number;
}

/** Energy by consumer [J/week]. */
export interface EnergyWeek {
  readonly heaters: number;
  readonly refrigeration: number;
  readonly pumps: number;
  readonly freezer: number;
  readonly defrost: number;
  readonly controls: number;
}

/** Hands-on time by task [s/week]. */
export interface CrewWeek {
  readonly load: number;
  readonly unload: number;
  readonly clean: number;
  /** People-time on shift [s/week]. */
  readonly onShift: number;
}

/** Utilisation 0–1 of each resource; null where the shop has no such resource. */
export interface Utilisation {
  readonly chambers: number;
  readonly pump: number;
  readonly hose: number;
  readonly trap: number;
  readonly heater: number;
  readonly freezer: number | null;
  readonly crew: number;
  readonly demand: number | null;
}

/** One stretch of a chamber's lane in the typical week, times from Monday 00:00 [s]. */
export interface LaneSpan {
  readonly chamber: number;
  readonly start: number;
  readonly end: number;
  readonly phase: Phase;
  readonly productId: string;
}

/** One sample of a pump group over the typical week. */
export interface GroupSample {
  readonly time: number;
  readonly pumpOn: boolean;
  /** Manifold pressure [Pa]; null while the pump is off. */
  readonly manifoldPressure: number | null;
  /** Water going to the pump [kg/s]. */
  readonly vapourLoad: number;
  /** Water going to the traps [kg/s]. */
  readonly trapLoad: number;
  /** Highest chamber pressure in the group [Pa]; null when none is under vacuum. */
  readonly chamberPressure: number | null;
}

export interface TypicalWeek {
  readonly lanes: readonly LaneSpan[];
  /** By group. */
  readonly samples: readonly (readonly GroupSample[])[];
  /** Busy people at each change: [time s, people]. */
  readonly crew: readonly (readonly [number, number])[];
  /** Electric power by quarter hour, 672 values [W]. */
  readonly power: readonly number[];
}

/** What became of one batch. Times in seconds, water in kg. */
export interface BatchRecord {
  readonly chamber: number;
  readonly productId: string;
  readonly start: number;
  readonly phases: Readonly<Partial<Record<Phase, number>>>;
  readonly wetIn: number;
  readonly dryOut: number;
  readonly waterIn: number;
  readonly waterOnTrap: number;
  readonly waterThroughPump: number;
  readonly waterLeft: number;
  readonly iceOnTrap: number;
  /** Highest and mean chamber pressure in primary drying [Pa]. */
  readonly pressurePeak: number;
  readonly pressureMean: number;
}

export interface PlantReport {
  readonly chambers: number;
  readonly products: readonly ProductWeek[];
  /** Totals per week, all products. */
  readonly batches: number;
  readonly wetIn: number;
  readonly dryOut: number;
  readonly waterRemoved: number;
  /** Mean batch time over all batches, loading to ready again [s]. */
  readonly cycleTime: number;
  readonly phases: PhaseHours;
  readonly limits: LimitHours;
  readonly groups: readonly GroupWeek[];
  readonly energy: EnergyWeek;
  /** Highest quarter-hour mean power [W]. */
  readonly peakPower: number;
  /** Mean heat given off to the room [W]. */
  readonly roomHeat: number;
  readonly crew: CrewWeek;
  readonly utilisation: Utilisation;
  /** Most ice on a trap in one batch over its capacity, 0–1. */
  readonly trapFill: number;
  /** Highest and time-mean chamber pressure in primary drying [Pa]. */
  readonly chamberPressurePeak: number;
  readonly chamberPressureMean: number;
  readonly week: TypicalWeek;
  readonly batchRecords: readonly BatchRecord[];
}

/** Why a shop cannot be simulated: a named problem, never a NaN. */
export type PlantProblem =
  | {
      readonly kind: 'trapOverfill';
      readonly productId: string;
      readonly chamber: string;
      readonly water: number;
      readonly capacity: number;
    }
  | { readonly kind: 'pumpCannotReach'; readonly pump: string; readonly pressure: number; readonly reached: number }
  | {
      readonly kind: 'dryingStalls';
      readonly productId: string;
      readonly chamber: string;
      readonly reason: DryingLimit;
    }
  | { readonly kind: 'neverDry'; readonly productId: string; readonly chamber: string }
  | { readonly kind: 'nobodyCanDo'; readonly task: string; readonly needed: number; readonly longestShift: number }
  | { readonly kind: 'freezingImpossible'; readonly productId: string; readonly chamber: string }
  | { readonly kind: 'freezerTooSmall'; readonly productId: string; readonly load: number; readonly capacity: number }
  /** Pressures of a pump's chambers change faster than can be followed: the inputs describe no real machine. */
  | { readonly kind: 'cannotFollow'; readonly pump: string }
  | { readonly kind: 'nothingToMake' };
