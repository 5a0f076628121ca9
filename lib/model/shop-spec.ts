import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type {
  ChamberType,
  Crew,
  HoseType,
  Plan,
  Product,
  PumpType,
  Scenario,
  ShiftPattern,
} from '../plan/plan-types.ts';
import type {
  ChamberSpec,
  ChamberUnitSpec,
  CompositionSpec,
  CrewSpec,
  FreezerSpec,
  HoseSpec,
  MixShare,
  ProductSpec,
  PumpGroupSpec,
  PumpSpec,
  ShiftSpec,
  ShopSpec,
} from '../plant/types.ts';

/** Weeks run before counting starts, until the pattern has settled, and weeks counted. */
const WARM_UP_WEEKS = 2;
const MEASURED_WEEKS = 4;

/**
 * The shop of one scenario as the week simulation needs it, in SI units. Chambers of one type share one object.
 * @throws RangeError when the scenario mentions something that is not in the plan, which `checkPlan` rules out.
 */
export function shopSpec(plan: Plan, scenario: Scenario): ShopSpec {
  const roughing = scenario.startPractice === 'roughing' ? scenario.roughingPump : null;
  return {
    groups: pumpGroups(plan, scenario),
    startPractice: scenario.startPractice,
    startPattern: scenario.startPattern,
    roughingPump: roughing === null ? null : pumpSpec(findById(plan.pumps, roughing, 'pump')),
    mix: mixShares(plan, scenario),
    crew: crewSpec(plan.crew, findById(plan.crew.patterns, scenario.pattern, 'shift pattern')),
    freezer: freezerSpec(plan, scenario.freezers),
    warmUpWeeks: WARM_UP_WEEKS,
    measuredWeeks: MEASURED_WEEKS,
  };
}

function pumpGroups(plan: Plan, scenario: Scenario): readonly PumpGroupSpec[] {
  const pump = pumpSpec(findById(plan.pumps, scenario.pump, 'pump'));
  const units = chamberUnits(plan, scenario);
  const size = groupSize(scenario, units.length);
  const groups: PumpGroupSpec[] = [];
  for (let first = 0; first < units.length; first += size) {
    groups.push({ pump, chambers: units.slice(first, first + size) });
  }
  return groups;
}

function groupSize(scenario: Scenario, chambers: number): number {
  switch (scenario.pumpArrangement) {
    case 'own':
      return 1;
    case 'shared':
      return Math.max(1, chambers);
    case 'groups':
      return scenario.groupSize;
  }
}

function chamberUnits(plan: Plan, scenario: Scenario): readonly ChamberUnitSpec[] {
  const hose = hoseSpec(findById(plan.hoses, scenario.hose, 'hose'));
  return scenario.chambers.flatMap((entry) => {
    const chamber = chamberSpec(findById(plan.chambers, entry.chamber, 'chamber type'));
    return Array.from({ length: entry.count }, () => ({ chamber, hose }));
  });
}

function chamberSpec(chamber: ChamberType): ChamberSpec {
  const base = baseValues('chamber', chamber);
  const { volume, gasTemperature, leak, outgassing, heaterPower, shelfLimit, pressureCeiling } = base;
  return {
    typeId: chamber.id,
    name: chamber.name,
    shelfArea: base.shelfArea,
    volume,
    gasTemperature,
    leak,
    outgassing,
    heaterPower,
    shelfLimit,
    pressureCeiling,
    heat: {
      contact: base.heatContact,
      pressureSlope: base.heatPressureSlope,
      pressureDamping: base.heatPressureDamping,
      radiation: base.heatRadiation,
    },
    trap: {
      area: base.trapArea,
      capacity: base.trapCapacity,
      iceConductivity: base.trapIceConductivity,
      iceDensity: base.trapIceDensity,
      parasiticLoad: base.trapParasiticLoad,
      curve: [
        { load: 0, temperature: base.trapNoLoadTemperature },
        { load: base.trapRatedLoad, temperature: base.trapRatedTemperature },
      ],
      vapourConductance: base.trapVapourConductance,
    },
    power: { compressor: base.compressorPower, controls: base.controlsPower, defrost: base.defrostPower },
    freezingTemperature: base.freezingTemperature,
    freezingCoefficient: base.freezingCoefficient,
    trapCooling: base.trapCooling,
    defrostTime: base.defrostTime,
  };
}

function hoseSpec(hose: HoseType): HoseSpec {
  const { diameter, length } = baseValues('hose', hose);
  return { diameter, length };
}

function pumpSpec(pump: PumpType): PumpSpec {
  const { speed, ultimate, vapourTolerance, power } = baseValues('pump', pump);
  const table = pump.speedTable.map((point) => baseValues('speedPoint', point));
  return { typeId: pump.id, name: pump.name, speed, ultimate, table, vapourTolerance, power };
}

function mixShares(plan: Plan, scenario: Scenario): readonly MixShare[] {
  const planned = scenario.mix.filter((entry) => entry.share > 0);
  const total = planned.reduce((sum, entry) => sum + entry.share, 0);
  return planned.map((entry) => {
    const product = findById(plan.products, entry.product, 'product');
    return { product: productSpec(product), share: entry.share / total, weeklyCap: weeklyCap(product) };
  });
}

/** Dried product worth making in a week [kg/week]: what sells, and what is unfit for sale on top of it. */
function weeklyCap(product: Product): number | null {
  const { weeklyDemand, saleableYield } = baseValues('product', product);
  return weeklyDemand === null ? null : weeklyDemand / saleableYield;
}

/** Mass fractions that sum to 1; carbohydrate is what the other parts leave, as in food tables. */
function compositionSpec(product: Product): CompositionSpec {
  const { water, protein, fat, fibre, ash } = baseValues('product', product);
  const named = water + protein + fat + fibre + ash;
  const whole = Math.max(1, named);
  return {
    water: water / whole,
    protein: protein / whole,
    fat: fat / whole,
    carbohydrate: Math.max(0, 1 - named),
    fibre: fibre / whole,
    ash: ash / whole,
  };
}

function productSpec(product: Product): ProductSpec {
  const base = baseValues('product', product);
  return {
    id: product.id,
    name: product.name,
    form: base.form,
    composition: compositionSpec(product),
    unfreezable: base.unfreezable,
    load: base.load,
    bulkDensity: base.bulkDensity,
    faceShare: base.faceShare,
    pieceThickness: base.pieceThickness,
    initialFreezing: base.initialFreezing,
    loadingTemperature: base.loadingTemperature,
    preFrozen: base.preFrozen,
    driedConductivity: base.driedConductivity,
    driedConductivitySlope: base.driedConductivitySlope,
    permeability: base.permeability,
    surfaceResistance: base.surfaceResistance,
    frozenLimit: base.frozenLimit,
    scorchLimit: base.scorchLimit,
    shelfPrimary: base.shelfPrimary,
    shelfSecondary: base.shelfSecondary,
    desorption: {
      rate: base.desorptionRate,
      activationEnergy: base.desorptionEnergy,
      equilibrium: base.equilibriumMoisture,
      target: base.targetMoisture,
    },
    spread: base.spread,
  };
}

function crewSpec(crew: Crew, pattern: ShiftPattern): CrewSpec {
  const base = baseValues('crew', crew);
  return {
    shifts: pattern.shifts
      .flatMap(shiftSpecs)
      .sort((a, b) => a.weekday - b.weekday || a.start - b.start || a.end - b.end),
    tasks: {
      load: { perBatch: base.loadPerBatch, perKilogram: base.loadPerKilogram },
      unload: { perBatch: base.unloadPerBatch, perKilogram: base.unloadPerKilogram },
      clean: { perBatch: base.cleanPerBatch, perKilogram: base.cleanPerKilogram },
    },
  };
}

function shiftSpecs(shift: ShiftPattern['shifts'][number]): readonly ShiftSpec[] {
  const { start, end, people } = baseValues('shift', shift);
  return people === 0 ? [] : shift.weekdays.map((weekday) => ({ weekday, start, end, people }));
}

/** All freezers of the shop as one. */
function freezerSpec(plan: Plan, count: number): FreezerSpec | null {
  if (plan.freezer === null || count === 0) return null;
  const { temperature, coefficient, capacity, power } = baseValues('freezer', plan.freezer);
  return { temperature, coefficient, capacity: count * capacity, power: count * power };
}
