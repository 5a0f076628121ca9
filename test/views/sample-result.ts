import type { Bottleneck } from '../../lib/insight/insight-types.ts';
import type {
  BreakEvenPoint,
  CostPart,
  ScenarioResult,
  ScenarioReturn,
  WeekAccount,
} from '../../lib/model/scenario-result.ts';
import type { GroupWeek, PhaseHours, PlantReport } from '../../lib/plant/report-types.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { SAMPLE_FINANCE } from './sample-finance.ts';

const HOUR = 3600;

const NO_PHASES: PhaseHours = {
  waitingToLoad: 0,
  loading: 0,
  freezing: 0,
  waitingForPump: 0,
  pumpDown: 0,
  primary: 0,
  secondary: 0,
  hold: 0,
  unloading: 0,
  defrost: 0,
  waitingToClean: 0,
  cleaning: 0,
  idleNoDemand: 0,
  waitingForFreezer: 0,
};

const GROUP: GroupWeek = {
  pumpTypeId: 'pump',
  chambers: 2,
  pumpTime: 100 * HOUR,
  pumpStarts: 5,
  vapourLoadMean: 0,
  vapourLoadPeak: 0,
  vapourTolerance: 1e-4,
  waterSwallowed: 0,
  manifoldPressurePeak: 90,
  manifoldPressure95: 80,
  manifoldPressureMean: 40,
  ceilingShare: 0.21,
};

/** A made-up week of two chambers: 168 chamber hours of drying, 84 of waiting for people, the rest of handling. */
export const SAMPLE_PLANT: PlantReport = {
  chambers: 2,
  products: [],
  batches: 10,
  wetIn: 100,
  dryOut: 20,
  waterRemoved: 80,
  cycleTime: 20 * HOUR,
  phases: { ...NO_PHASES, primary: 100 * HOUR, secondary: 68 * HOUR, hold: 84 * HOUR, loading: 84 * HOUR },
  limits: {
    shelfTemperature: 0,
    heaterPower: 0,
    frozenLimit: 0,
    scorchLimit: 0,
    ceilingByTrap: 0,
    ceilingByGas: 0,
    flooded: 0,
    desorption: 0,
  },
  groups: [GROUP],
  energy: { heaters: 0, refrigeration: 0, pumps: 0, freezer: 0, defrost: 0, controls: 0 },
  peakPower: 0,
  roomHeat: 0,
  crew: { load: 0, unload: 0, clean: 0, onShift: 0 },
  utilisation: { chambers: 0.5, pump: 0.1, hose: 0, trap: 0, heater: 0, freezer: null, crew: 0.2, demand: null },
  trapFill: 0,
  chamberPressurePeak: 90,
  chamberPressureMean: 60,
  week: {
    lanes: [
      { chamber: 0, start: 0, end: 84 * HOUR, phase: 'primary', productId: 'strawberries' },
      { chamber: 0, start: 84 * HOUR, end: 168 * HOUR, phase: 'hold', productId: 'strawberries' },
      { chamber: 1, start: 0, end: 168 * HOUR, phase: 'idleNoDemand', productId: '' },
    ],
    samples: [
      [
        { time: 0, pumpOn: true, manifoldPressure: 40, vapourLoad: 2e-5, trapLoad: 1e-4, chamberPressure: 60 },
        { time: 84 * HOUR, pumpOn: false, manifoldPressure: null, vapourLoad: 0, trapLoad: 0, chamberPressure: null },
      ],
    ],
    crew: [
      [0, 0],
      [8 * HOUR, 1],
      [9 * HOUR, 0],
    ],
    power: [],
  },
  batchRecords: [],
};

const NOTHING_PER_UNIT = { week: 0, perBatch: null, perDryKilogram: null, perSaleableKilogram: null };
const NOTHING_RUNNING = { ingredients: 0, packaging: 0, other: 0, energy: 0, upkeep: 0, labour: 0 };

/** Accounts of a week in which nothing moved: for views that show none of them. */
const ACCOUNT: WeekAccount = {
  week: {
    products: [],
    revenue: 0,
    running: NOTHING_RUNNING,
    standing: { demandCharge: 0, electricityFixed: 0, labour: 0, fixed: {} },
    runningCost: NOTHING_PER_UNIT,
    standingCost: NOTHING_PER_UNIT,
    totalCost: NOTHING_PER_UNIT,
    contribution: NOTHING_PER_UNIT,
    contributionPerHour: {},
    profit: 0,
    profitAfterOwner: 0,
  },
  electricity: {
    energy: 0,
    meanPrice: 0,
    byConsumer: {},
    energyCharge: 0,
    demandCharge: 0,
    fixedCharge: 0,
    total: 0,
  },
  labour: {
    handsOn: 0,
    paidTime: 0,
    loadedWage: 0,
    paid: 0,
    byTask: {},
    idle: 0,
    ownerUnpaid: 0,
    flexible: true,
  },
  upkeep: [],
};

const COST: Readonly<Record<CostPart, number>> = {
  materials: 40,
  packaging: 20,
  oil: 2,
  electricity: 8,
  labour: 25,
  other: 5,
};

const NO_POINT: BreakEvenPoint = { perWeek: null, salesPerWeek: null, marginOfSafety: null };

const NO_FAILURES: ScenarioResult['failures'] = {
  failures: 0,
  downtime: 0,
  stopped: [1, 0],
  availability: 1,
  spoiledLoads: 0,
  lostBatches: 0,
  cost: { spoiled: 0, idle: 0, repairs: 0, total: 0 },
};

export interface SampleChange {
  readonly versusToday?: Partial<ScenarioReturn> | null;
  readonly cost?: Partial<Record<CostPart, number>>;
  readonly plant?: Partial<PlantReport>;
  readonly chambers?: number;
  readonly warnings?: ScenarioResult['warnings'];
}

/** No month moves anything. */
export const NO_LINES = {
  operations: [],
  workingCapital: [],
  equipment: [],
  tax: [],
  taxWithoutLoans: [],
  loansDrawn: [],
  loanPayments: [],
};

const RETURN: ScenarioReturn = {
  incremental: [],
  cumulative: [-100, -40, 20, 80],
  payback: { kind: 'crossed', months: 1.667, recrosses: false },
  discountedPayback: { kind: 'crossed', months: 1.8, recrosses: false },
  netPresentValue: 70,
  yearlyWorth: 20,
  rateOfReturn: { kind: 'one', yearly: 0.5 },
  modifiedRate: 0.3,
  profitabilityIndex: 1.7,
  deepestCash: -100,
  cashNeeded: {
    amount: -20,
    month: 1,
    equipment: -100,
    workingCapital: 0,
    operations: 0,
    tax: 0,
    loansDrawn: 80,
    loanPayments: 0,
  },
  financed: {
    incremental: [],
    cumulative: [],
    payback: { kind: 'crossed', months: 1.5, recrosses: false },
    netPresentValue: 75,
    rateOfReturn: { kind: 'one', yearly: 0.9 },
  },
  lines: NO_LINES,
  left: { equipment: 0, workingCapital: 0, loans: 0, tax: 0, taxWithoutLoans: 0 },
  leftAtHorizon: 0,
};

/** A made-up result whose figures are plain enough to check by hand. */
export function sampleResult(change: SampleChange = {}): ScenarioResult {
  const parts = { ...COST, ...change.cost };
  const perBatch = Object.values(parts).reduce((sum, amount) => sum + amount, 0);
  const versusToday = change.versusToday === null ? null : { ...RETURN, ...change.versusToday };
  return {
    scenarioId: 'sample',
    name: 'Sample',
    chambers: change.chambers ?? 2,
    pumps: 1,
    plant: { ...SAMPLE_PLANT, ...change.plant },
    cost: {
      lines: (Object.entries(parts) as [CostPart, number][]).map(([part, amount]) => ({
        part,
        perBatch: amount,
        perWeek: amount * 10,
        perKilogram: amount / 2,
      })),
      perWeek: perBatch * 10,
      perBatch,
      perKilogram: perBatch / 2,
      salesPerWeek: 2000,
      contributionPerWeek: 1000,
      contributionPerBatch: 100,
      ownerTimePerWeek: 0,
      oilChangesPerWeek: 0.1,
      oilLimit: 'hours',
    },
    account: ACCOUNT,
    capital: [],
    capitalTotal: 100,
    finance: { ...SAMPLE_FINANCE, versusToday },
    trade: { products: [], fixedCosts: [] },
    bestMix: null,
    breakEven: { fixedPerWeek: 100, operating: NO_POINT, withLoans: NO_POINT },
    failures: NO_FAILURES,
    pumpsPerYear: -500,
    warnings: change.warnings ?? [],
  };
}

export function sampleView(name: string, place: number, change: SampleChange = {}): ScenarioView {
  return { id: `s${place}`, name, place, result: sampleResult(change) };
}

/** A bottleneck that people are, with a quarter more of them worth an eighth. */
export const SAMPLE_BOTTLENECK: Bottleneck = {
  scenarioId: 's1',
  resource: 'crew',
  gainShare: 0.125,
  reliefs: [
    { resource: 'chambers', utilisation: 0.5, gain: 20, gainShare: 0.02 },
    { resource: 'crew', utilisation: 0.4, gain: 125, gainShare: 0.125 },
    { resource: 'heater', utilisation: 0.3, gain: 0.2, gainShare: 0.0002 },
    { resource: 'freezer', utilisation: null, gain: null, gainShare: null },
    { resource: 'power', utilisation: 0.9, gain: null, gainShare: null },
  ],
  outputPerChamber: null,
  lastChamberAdds: null,
  sharedOutputs: null,
  yardstick: 1000,
  thresholds: { gain: 0.005, lastChamber: 0.8 },
  sharedPumpJams: false,
};
