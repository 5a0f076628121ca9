import type {
  ChamberSpec,
  ChamberUnitSpec,
  CrewSpec,
  HoseSpec,
  MixShare,
  ProductSpec,
  PumpSpec,
  ShopSpec,
} from '../../lib/plant/types.ts';

/** An invented mid-size chamber; the numbers are the defaults of the register. */
export const CHAMBER: ChamberSpec = {
  typeId: 'mid',
  name: 'Mid-size',
  shelfArea: 1.5,
  volume: 0.25,
  gasTemperature: 293.15,
  leak: 0.01,
  outgassing: 20,
  heaterPower: 2000,
  shelfLimit: 338.15,
  pressureCeiling: 86.66,
  heat: { contact: 8, pressureSlope: 0.05, pressureDamping: 0.01, radiation: 4 },
  trap: {
    area: 1.2,
    capacity: 16,
    iceConductivity: 1.5,
    iceDensity: 800,
    parasiticLoad: 150,
    vapourConductance: 1.5e-5,
    curve: [
      { load: 0, temperature: 223.15 },
      { load: 1600, temperature: 241.15 },
    ],
  },
  power: { compressor: 1100, controls: 60, defrost: 1000 },
  freezingTemperature: 241.15,
  freezingCoefficient: 20,
  trapCooling: 2700,
  defrostTime: 7200,
};

export const HOSE: HoseSpec = { diameter: 0.04, length: 3 };

export const UNIT: ChamberUnitSpec = { chamber: CHAMBER, hose: HOSE };

export const GOOD_PUMP: PumpSpec = {
  typeId: 'good',
  name: 'Good pump',
  speed: 16 / 3600,
  ultimate: 0.5,
  table: [],
  vapourTolerance: 0.25 / 3600,
  power: 550,
};

export const SMALL_PUMP: PumpSpec = {
  typeId: 'small',
  name: 'Small pump',
  speed: 5 / 3600,
  ultimate: 5,
  table: [],
  vapourTolerance: 0.05 / 3600,
  power: 350,
};

/** Strawberry slices: composition of SR28 no. 09040-family fruit, rounded; the rest invented. */
export const FRUIT: ProductSpec = {
  id: 'fruit',
  name: 'Fruit slices',
  form: 'pieces',
  composition: { water: 0.9, protein: 0.007, fat: 0.003, carbohydrate: 0.066, fibre: 0.02, ash: 0.004 },
  unfreezable: 0.3,
  load: 8,
  bulkDensity: 550,
  faceShare: 0.75,
  pieceThickness: 0.008,
  initialFreezing: 272.35,
  loadingTemperature: 255.15,
  preFrozen: true,
  driedConductivity: 0.045,
  driedConductivitySlope: 5e-5,
  permeability: 2e-8,
  surfaceResistance: 2e4,
  frozenLimit: 259.15,
  scorchLimit: 333.15,
  shelfPrimary: 325.15,
  shelfSecondary: 330.15,
  desorption: { rate: 60, activationEnergy: 35_000, equilibrium: 0.01, target: 0.03 },
  spread: 1.15,
};

export const SOUP: ProductSpec = {
  ...FRUIT,
  id: 'soup',
  name: 'Soup',
  form: 'poured',
  composition: { water: 0.88, protein: 0.02, fat: 0.02, carbohydrate: 0.06, fibre: 0.01, ash: 0.01 },
  load: 9,
  bulkDensity: 1000,
  faceShare: 1,
  pieceThickness: 0.009,
  permeability: 1.5e-8,
};

export const CANDY: ProductSpec = {
  ...FRUIT,
  id: 'candy',
  name: 'Puffed candy',
  form: 'bound',
  composition: { water: 0.06, protein: 0, fat: 0, carbohydrate: 0.94, fibre: 0, ash: 0 },
  load: 5,
  bulkDensity: 700,
  faceShare: 1,
  loadingTemperature: 293.15,
  preFrozen: false,
  desorption: { rate: 2e3, activationEnergy: 42_000, equilibrium: 0.01, target: 0.025 },
};

export const DAY_CREW: CrewSpec = {
  shifts: [0, 1, 2, 3, 4, 5].map((weekday) => ({ weekday, start: 7 * 3600, end: 19 * 3600, people: 2 })),
  tasks: {
    load: { perBatch: 1500, perKilogram: 240 },
    unload: { perBatch: 900, perKilogram: 180 },
    clean: { perBatch: 1800, perKilogram: 30 },
  },
};

/** Somebody there day and night, so that people never hold a chamber up. */
export const FULL_CREW: CrewSpec = {
  shifts: [0, 1, 2, 3, 4, 5, 6].map((weekday) => ({ weekday, start: 0, end: 86_400, people: 40 })),
  tasks: DAY_CREW.tasks,
};

/** Tasks that take no time: chambers meet at the pump alone. */
export const QUICK_CREW: CrewSpec = {
  shifts: FULL_CREW.shifts,
  tasks: {
    load: { perBatch: 0, perKilogram: 0 },
    unload: { perBatch: 0, perKilogram: 0 },
    clean: { perBatch: 0, perKilogram: 0 },
  },
};

export function mixOf(product: ProductSpec): readonly MixShare[] {
  return [{ product, share: 1, weeklyCap: null }];
}

/** `count` chambers on one pump. */
export function sharedShop(count: number, pump: PumpSpec, change: Partial<ShopSpec> = {}): ShopSpec {
  return {
    groups: [{ pump, chambers: Array.from({ length: count }, () => UNIT) }],
    startPractice: 'isolate',
    startPattern: 'asReady',
    roughingPump: null,
    mix: mixOf(FRUIT),
    crew: FULL_CREW,
    freezer: null,
    warmUpWeeks: 2,
    measuredWeeks: 4,
    ...change,
  };
}

/** `count` chambers with a pump each. */
export function ownPumpShop(count: number, pump: PumpSpec, change: Partial<ShopSpec> = {}): ShopSpec {
  const groups = Array.from({ length: count }, () => ({ pump, chambers: [UNIT] }));
  return { ...sharedShop(count, pump, change), groups };
}
