import type { BatchRecord, GroupWeek, PhaseHours, PlantReport } from '../../lib/plant/report-types.ts';
import type { simulateShop } from '../../lib/plant/simulate-shop.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';

const HOUR = 3600;
const WEEK = 168 * HOUR;

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

function groupWeek(group: ShopSpec['groups'][number]): GroupWeek {
  return {
    pumpTypeId: group.pump.typeId,
    chambers: group.chambers.length,
    pumpTime: 0.7 * WEEK,
    pumpStarts: 5,
    vapourLoadMean: 1e-5,
    vapourLoadPeak: 2e-5,
    vapourTolerance: group.pump.vapourTolerance,
    waterSwallowed: 4,
    manifoldPressurePeak: 80,
    manifoldPressure95: 60,
    manifoldPressureMean: 40,
    ceilingShare: 0.1,
  };
}

/** A batch that has its chamber for a day, an hour of it with hands on. */
function record(spec: ShopSpec, chamber: number): BatchRecord {
  return {
    chamber,
    productId: spec.mix[chamber % spec.mix.length]?.product.id ?? '',
    start: 0,
    phases: { loading: HOUR, primary: 15 * HOUR, secondary: 5 * HOUR, hold: 2 * HOUR, unloading: HOUR },
    wetIn: 10,
    dryOut: 2,
    waterIn: 8,
    waterOnTrap: 7.5,
    waterThroughPump: 0.3,
    waterLeft: 0.2,
    iceOnTrap: 7.5,
    pressurePeak: 80,
    pressureMean: 60,
  };
}

/**
 * A week in place of the simulated one, for tests of money alone: each chamber dries a batch of two kilograms a day, shared out by
 * the planned mix, of each product no more than the market takes.
 * @param perChamber batches of a chamber in a week
 */
export function fakeWeek(spec: ShopSpec, perChamber = 7): PlantReport {
  const chambers = spec.groups.reduce((sum, group) => sum + group.chambers.length, 0);
  const products = spec.mix.map(({ product, share, weeklyCap }) => {
    const batches = Math.min(share * perChamber * chambers, (weeklyCap ?? Number.POSITIVE_INFINITY) / 2);
    const made = { batches, wetIn: 10 * batches, dryOut: 2 * batches, waterRemoved: 7.8 * batches };
    return { productId: product.id, ...made, cycleTime: 24 * HOUR };
  });
  const batches = products.reduce((sum, product) => sum + product.batches, 0);
  const busy = chambers > 0 ? batches / (perChamber * chambers) : 0;
  return {
    chambers,
    products,
    batches,
    wetIn: 10 * batches,
    dryOut: 2 * batches,
    waterRemoved: 7.8 * batches,
    cycleTime: 24 * HOUR,
    phases: { ...NO_PHASES, primary: 15 * batches * HOUR, secondary: 5 * batches * HOUR, hold: 2 * batches * HOUR },
    limits: {
      shelfTemperature: 15 * batches * HOUR,
      heaterPower: 0,
      frozenLimit: 0,
      scorchLimit: 0,
      ceilingByTrap: 0,
      ceilingByGas: 0,
      flooded: 0,
      desorption: 5 * batches * HOUR,
    },
    groups: spec.groups.map(groupWeek),
    energy: { heaters: 3e8, refrigeration: 4e8, pumps: 1e8, freezer: 5e7, defrost: 1e7, controls: 1e7 },
    peakPower: 4000,
    roomHeat: 1000,
    crew: { load: batches * HOUR, unload: batches * HOUR, clean: 0.5 * batches * HOUR, onShift: 40 * HOUR },
    utilisation: {
      chambers: busy,
      pump: 0.5,
      hose: 0.2,
      trap: 0.4,
      heater: 0.6,
      freezer: null,
      crew: 0.5,
      demand: null,
    },
    trapFill: 0.6,
    chamberPressurePeak: 80,
    chamberPressureMean: 60,
    week: { lanes: [], samples: [], crew: [], power: new Array<number>(672).fill(1500) },
    batchRecords: Array.from({ length: chambers }, (_, chamber) => record(spec, chamber)),
  };
}

/** Runs such weeks and nothing else. @param perChamber batches of a chamber in a week */
export function fakeSimulation(perChamber = 7): typeof simulateShop {
  return (spec) => ({ ok: true, value: fakeWeek(spec, perChamber) });
}
