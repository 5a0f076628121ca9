/**
 * What the week simulation needs to know of a shop. Everything is SI: Pa, K, kg, m, s, W, J; gas loads in Pa·m³/s.
 * These types carry no origin or unit: `lib/model` makes them from the plan.
 */

/** Heat from shelf to product: K(p) = contact + slope·p/(1 + damping·p) + radiation [W/(m²·K)]. */
export interface HeatTransferSpec {
  /** Contact part [W/(m²·K)]. */
  readonly contact: number;
  /** Gas part per pascal [W/(m²·K·Pa)]. */
  readonly pressureSlope: number;
  /** Damping of the gas part [1/Pa]. */
  readonly pressureDamping: number;
  /** Radiation part [W/(m²·K)]. */
  readonly radiation: number;
}

/** One point of a refrigeration curve: at this heat load the evaporating surface settles at this temperature. */
export interface RefrigerationPoint {
  /** Heat load [W]. */
  readonly load: number;
  /** Evaporating temperature [K]. */
  readonly temperature: number;
}

export interface TrapSpec {
  /** Cold surface [m²]. */
  readonly area: number;
  /** Ice it can hold before it must be defrosted [kg]. */
  readonly capacity: number;
  /** Conductivity of the ice or frost that grows on it [W/(m·K)]. */
  readonly iceConductivity: number;
  /** Density of that ice or frost [kg/m³]. */
  readonly iceDensity: number;
  /** Heat leaking in with no load [W]. */
  readonly parasiticLoad: number;
  /** At least two points, load and temperature both rising. */
  readonly curve: readonly RefrigerationPoint[];
  /** How easily vapour reaches the cold surface: flow per pressure difference [kg/(s·Pa)]. */
  readonly vapourConductance: number;
}

/** Electric draw of a chamber by consumer [W]. Heaters are counted by the heat they give. */
export interface ChamberPowerSpec {
  readonly compressor: number;
  readonly controls: number;
  readonly defrost: number;
}

export interface ChamberSpec {
  readonly typeId: string;
  readonly name: string;
  readonly shelfArea: number;
  /** Free volume that must be pumped out [m³]. */
  readonly volume: number;
  readonly gasTemperature: number;
  /** Air leaking in [Pa·m³/s]. */
  readonly leak: number;
  /** Outgassing coefficient a of a/t, t since the valve opened [Pa·m³]. */
  readonly outgassing: number;
  /** Total shelf heating [W]. */
  readonly heaterPower: number;
  /** Hottest the shelf can run [K]. */
  readonly shelfLimit: number;
  /** Heating is throttled at this chamber pressure [Pa]. */
  readonly pressureCeiling: number;
  readonly heat: HeatTransferSpec;
  readonly trap: TrapSpec;
  readonly power: ChamberPowerSpec;
  /** Shelf temperature when it freezes a load itself [K]. */
  readonly freezingTemperature: number;
  /** Heat transfer while freezing [W/(m²·K)]. */
  readonly freezingCoefficient: number;
  /** Time the trap needs from room temperature to working cold [s]. */
  readonly trapCooling: number;
  readonly defrostTime: number;
}

/** Mass fractions of the wet load; they sum to 1. */
export interface CompositionSpec {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

/** dw/dt = −rate·exp(−E/(R·T))·(w − equilibrium), w in kg water per kg dry matter. */
export interface DesorptionSpec {
  /** Pre-exponential rate [1/s]. */
  readonly rate: number;
  /** Activation energy [J/mol]. */
  readonly activationEnergy: number;
  /** Moisture it would settle at [kg/kg dry]. */
  readonly equilibrium: number;
  /** Moisture at which it is done [kg/kg dry]. */
  readonly target: number;
}

/** Poured: flat in the tray, dries from its free top. Pieces: a bed drying inward from heated faces. Bound: no ice at all. */
export type LoadForm = 'poured' | 'pieces' | 'bound';

export interface ProductSpec {
  readonly id: string;
  readonly name: string;
  readonly form: LoadForm;
  readonly composition: CompositionSpec;
  /** Water that never freezes [kg/kg dry]. */
  readonly unfreezable: number;
  /** Wet load per shelf area [kg/m²]. */
  readonly load: number;
  /** Density of the load as it lies in the tray, voids included [kg/m³]; depth = load/bulkDensity. */
  readonly bulkDensity: number;
  /** Share of the depth dried from the slowest face: 1 heated on one side, 0.5 on both. */
  readonly faceShare: number;
  /** Thickness of one piece (or of the poured layer) as it freezes [m]. */
  readonly pieceThickness: number;
  readonly initialFreezing: number;
  readonly loadingTemperature: number;
  /** True when it arrives frozen from a freezer. */
  readonly preFrozen: boolean;
  /** Dried-layer conductivity at zero pressure [W/(m·K)] and its rise with pressure [W/(m·K·Pa)]. */
  readonly driedConductivity: number;
  readonly driedConductivitySlope: number;
  /** Dried-layer permeability Π [s] and surface resistance R0 [m/s]. */
  readonly permeability: number;
  readonly surfaceResistance: number;
  /** Hottest the frozen part may get before it melts back or collapses [K]. */
  readonly frozenLimit: number;
  /** Hottest the dried surface may get [K]. */
  readonly scorchLimit: number;
  /** Programme maximum of the shelf in primary and in secondary drying [K]. */
  readonly shelfPrimary: number;
  readonly shelfSecondary: number;
  readonly desorption: DesorptionSpec;
  /** How much longer the slowest tray takes than the average one (≥ 1). */
  readonly spread: number;
}

export interface HoseSpec {
  /** Inner diameter [m]. */
  readonly diameter: number;
  /** Length, fittings and valves included as equivalent length [m]. */
  readonly length: number;
}

export interface PumpSpeedPoint {
  readonly pressure: number;
  readonly speed: number;
}

export interface PumpSpec {
  readonly typeId: string;
  readonly name: string;
  /** Rated speed S0 [m³/s]. */
  readonly speed: number;
  /** Ultimate pressure [Pa]. */
  readonly ultimate: number;
  /** Measured speeds; empty means the law S0·(1 − p_ult/p). */
  readonly table: readonly PumpSpeedPoint[];
  /** Water vapour it can swallow with gas ballast open [kg/s]. */
  readonly vapourTolerance: number;
  /** Electric draw [W]. */
  readonly power: number;
}

/** What the shop does with the other chambers while one is pumped down from atmosphere. */
export type StartPractice = 'isolate' | 'allOpen' | 'roughing';

/** When a chamber that is ready may be loaded. */
export type StartPattern = 'together' | 'staggered' | 'asReady';

export interface ChamberUnitSpec {
  readonly chamber: ChamberSpec;
  readonly hose: HoseSpec;
}

/** One pump and the chambers that hang on it. */
export interface PumpGroupSpec {
  readonly pump: PumpSpec;
  readonly chambers: readonly ChamberUnitSpec[];
}

export interface ShiftSpec {
  /** 0 = Monday … 6 = Sunday. */
  readonly weekday: number;
  /** Seconds after midnight; end > start, end ≤ 86 400. */
  readonly start: number;
  readonly end: number;
  readonly people: number;
}

/** Hands-on time of a task: perBatch + perKilogram·kg wet [s]. */
export interface TaskSpec {
  readonly perBatch: number;
  readonly perKilogram: number;
}

export type TaskName = 'load' | 'unload' | 'clean';

export interface CrewSpec {
  readonly shifts: readonly ShiftSpec[];
  readonly tasks: Readonly<Record<TaskName, TaskSpec>>;
}

export interface MixShare {
  readonly product: ProductSpec;
  /** Planned share of batches; shares sum to 1. */
  readonly share: number;
  /** Most dry kilograms the market takes in a week [kg/week]; null = no limit. */
  readonly weeklyCap: number | null;
}

/** The freezer that prepares pre-frozen loads; null = loads arrive frozen from elsewhere. */
export interface FreezerSpec {
  /** Air temperature [K]. */
  readonly temperature: number;
  /** Heat transfer to the trays [W/(m²·K)]. */
  readonly coefficient: number;
  /** Most wet kilograms it holds at once [kg]. */
  readonly capacity: number;
  /** Mean electric draw [W]. */
  readonly power: number;
}

export interface ShopSpec {
  readonly groups: readonly PumpGroupSpec[];
  readonly startPractice: StartPractice;
  readonly startPattern: StartPattern;
  /** The small pump used by the practice 'roughing'; null otherwise. */
  readonly roughingPump: PumpSpec | null;
  readonly mix: readonly MixShare[];
  readonly crew: CrewSpec;
  readonly freezer: FreezerSpec | null;
  readonly warmUpWeeks: number;
  readonly measuredWeeks: number;
}
