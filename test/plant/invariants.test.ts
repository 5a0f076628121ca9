import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import { WEEK } from '../../lib/plant/crew.ts';
import { dryLoneLoad } from '../../lib/plant/lone-load.ts';
import { ATMOSPHERE, pumpDown } from '../../lib/plant/pump-down.ts';
import type { PlantReport } from '../../lib/plant/report-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import type { ChamberUnitSpec, ProductSpec, PumpSpec, ShopSpec } from '../../lib/plant/types.ts';
import { anyProduct, anyPump, anyShop, anyUnit } from './any-shop.ts';
import { dryTogether } from './dry-together.ts';
import { reportOf } from './run-shop.ts';
import { GOOD_PUMP, mixOf, ownPumpShop, QUICK_CREW, SMALL_PUMP, SOUP, sharedShop, UNIT } from './sample-shop.ts';

/** Paths of every number in a value that is not finite. */
function notFinite(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}

function expectWaterKept(report: PlantReport): void {
  for (const batch of report.batchRecords) {
    const found = batch.waterOnTrap + batch.waterThroughPump + batch.waterLeft;
    expect(Math.abs(found / batch.waterIn - 1)).toBeLessThan(1e-6);
    expect(batch.waterLeft).toBeGreaterThan(0);
  }
}

function expectTimeFilled(report: PlantReport): void {
  const spent = Object.values(report.phases).reduce((sum, seconds) => sum + seconds, 0);
  expect(Math.abs(spent / (report.chambers * WEEK) - 1)).toBeLessThan(1e-9);
  for (let chamber = 0; chamber < report.chambers; chamber += 1) {
    let reached = 0;
    for (const span of report.week.lanes.filter((lane) => lane.chamber === chamber)) {
      expect(span.start).toBeCloseTo(reached, 6);
      reached = span.end;
    }
    expect(reached).toBeCloseTo(WEEK, 6);
  }
}

/** Heaters give at least the heat that frees the water of the batches begun and ended in the measured week. */
function expectHeatEnough(report: PlantReport, spec: ShopSpec): void {
  const leastHeat = sublimationHeat(273.15);
  const freed = report.batchRecords
    .filter((batch) => batch.start >= spec.warmUpWeeks * WEEK)
    .reduce((sum, batch) => sum + batch.waterOnTrap + batch.waterThroughPump, 0);
  expect(report.energy.heaters * spec.measuredWeeks).toBeGreaterThanOrEqual(freed * leastHeat * (1 - 1e-3));
}

function expectPowerAdds(report: PlantReport): void {
  const used = Object.values(report.energy).reduce((sum, joules) => sum + joules, 0);
  const metered = report.week.power.reduce((sum, watts) => sum + watts * 900, 0);
  expect(Math.abs(metered / used - 1)).toBeLessThan(1e-6);
  expect(Math.max(...report.week.power)).toBeCloseTo(report.peakPower, 6);
}

describe('every shop that works', () => {
  it('keeps its water, fills its time, gives heat enough, adds up its power and has no number that is none', () => {
    let worked = 0;
    fc.assert(
      fc.property(anyShop, (spec) => {
        const outcome = simulateShop(spec);
        if (!outcome.ok) return;
        worked += 1;
        expect(notFinite(outcome.value, 'report')).toEqual([]);
        expectWaterKept(outcome.value);
        expectTimeFilled(outcome.value);
        expectHeatEnough(outcome.value, spec);
        expectPowerAdds(outcome.value);
      }),
      { numRuns: 24 },
    );
    expect(worked).toBeGreaterThan(15);
  });

  it('runs the same to the last bit again, whatever ran before', () => {
    fc.assert(
      fc.property(anyShop, anyShop, (spec, other) => {
        const first = JSON.stringify(simulateShop(spec));
        simulateShop(other);
        expect(JSON.stringify(simulateShop(spec))).toBe(first);
      }),
      { numRuns: 6 },
    );
  });
});

describe('every lone load', () => {
  it('takes up the heat that frees its water and the heat that warms what is left, and no more', () => {
    let dried = 0;
    fc.assert(
      fc.property(anyUnit, anyPump, anyProduct, (unit, pump, product) => {
        const load = chamberLoad(product, unit.chamber);
        const outcome = dryLoneLoad(unit, pump, load);
        if (outcome.kind !== 'dried') return;
        dried += 1;
        const { heat, waterIn, waterLeft } = outcome.load;
        const freed = waterIn - waterLeft;
        // From −60 °C at most to the shelf of secondary drying.
        const warmed = load.dryHeatCapacity * (load.shelfSecondary - 213);
        expect(heat).toBeGreaterThan(freed * sublimationHeat(273.15) * (1 - 1e-3));
        expect(heat).toBeLessThan((freed * sublimationHeat(238.15) + warmed) * (1 + 1e-3));
      }),
      { numRuns: 40 },
    );
    expect(dried).toBeGreaterThan(30);
  });
});

/** Chambers that meet nowhere: one product, people at once, each ready chamber loaded. */
const APART: Partial<ShopSpec> = { crew: QUICK_CREW, startPattern: 'asReady', warmUpWeeks: 1, measuredWeeks: 1 };

function expectSame(report: PlantReport, other: PlantReport, times: number, tolerance: number): void {
  const pick = (of: PlantReport) => [
    of.batches,
    of.waterRemoved,
    of.phases.primary,
    of.phases.secondary,
    of.energy.heaters,
    of.energy.pumps,
    of.groups.reduce((sum, group) => sum + group.waterSwallowed, 0),
  ];
  pick(report).forEach((value, i) => {
    const wanted = (pick(other)[i] as number) * times;
    // Candy has no primary drying: nothing is nothing.
    expect(Math.abs(value - wanted)).toBeLessThanOrEqual(tolerance * wanted);
  });
}

describe('groups of chambers that meet nowhere', () => {
  it('give the same totals in any order', () => {
    const group = fc.record({ pump: anyPump, chambers: fc.array(anyUnit, { minLength: 1, maxLength: 2 }) });
    fc.assert(
      fc.property(group, group, anyProduct, (first, second, product) => {
        const shop = { ...sharedShop(1, GOOD_PUMP, APART), mix: mixOf(product) };
        const forth = reportOf({ ...shop, groups: [first, second] });
        const back = reportOf({ ...shop, groups: [second, first] });
        // Steps of one group are cut at the events of another, so the two differ within the accuracy of the steps.
        expectSame(forth, back, 1, 2e-3);
      }),
      { numRuns: 5 },
    );
  });

  it('N on pumps of their own do N times what one does', () => {
    const one = reportOf(ownPumpShop(1, SMALL_PUMP, { ...APART, mix: mixOf(SOUP) }));
    // The events of one cut the steps of the others, which shows in the fourth digit of the little water that a pump swallows.
    for (const count of [2, 3, 5]) {
      expectSame(reportOf(ownPumpShop(count, SMALL_PUMP, { ...APART, mix: mixOf(SOUP) })), one, count, 3e-4);
    }
  });
});

function chambersOn(pump: PumpSpec, unit: ChamberUnitSpec, count: number, product: ProductSpec) {
  const units = Array.from({ length: count }, () => unit);
  return dryTogether({ name: `${count} together`, pump, units, products: units.map(() => product) });
}

describe('identical chambers started together', () => {
  it('behave as one when the pump grows with them', () => {
    fc.assert(
      fc.property(anyUnit, anyPump, anyProduct, fc.integer({ min: 2, max: 6 }), (unit, pump, product, count) => {
        const one = chambersOn(pump, unit, 1, product);
        const many = chambersOn({ ...pump, speed: count * pump.speed }, unit, count, product);
        expect(Math.abs(many.pumpDown / one.pumpDown - 1)).toBeLessThan(1e-6);
        for (const load of many.loads) {
          expect(Math.abs(load.total / (one.loads[0]?.total as number) - 1)).toBeLessThan(1e-6);
          expect(Math.abs(load.pumped / (one.loads[0]?.pumped as number) - 1)).toBeLessThan(1e-5);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('do so over a whole week', () => {
    const one = reportOf(sharedShop(1, GOOD_PUMP, { ...APART, mix: mixOf(SOUP) }));
    const pump = { ...GOOD_PUMP, speed: 4 * GOOD_PUMP.speed, power: 4 * GOOD_PUMP.power };
    expectSame(reportOf(sharedShop(4, pump, { ...APART, mix: mixOf(SOUP) })), one, 4, 1e-6);
  });
});

/*
 * More pump and fewer neighbours mean less gas in the chamber. That makes drying faster only where the heat does not come
 * through the gas: with gas-borne heat there is a best pressure (clark-2013), and more vacuum can make a load slower. So these
 * hold for contact and radiation alone, as below.
 */
function withoutGasHeat(unit: ChamberUnitSpec, product: ProductSpec): readonly [ChamberUnitSpec, ProductSpec] {
  const heat = { ...unit.chamber.heat, pressureSlope: 0 };
  return [
    { ...unit, chamber: { ...unit.chamber, heat } },
    { ...product, driedConductivitySlope: 0 },
  ];
}

/** From atmosphere to the end of the ice, or of drying where there is none [s]; infinity when the pump stalls above the ceiling. */
function underVacuum(pump: PumpSpec, unit: ChamberUnitSpec, count: number, product: ProductSpec): number {
  const units = Array.from({ length: count }, () => unit);
  const atmosphere = units.map(() => ATMOSPHERE);
  if (pumpDown(units, pump, atmosphere).kind === 'stalls') return Number.POSITIVE_INFINITY;
  const drying = chambersOn(pump, unit, count, product);
  const [load] = drying.loads;
  return drying.pumpDown + (load?.primary || (load?.total as number));
}

/** Accuracy of the steps [-]. */
const STEPS = 1e-3;

describe('with heat that does not come through the gas', () => {
  it('a lone chamber is never slower than the same on a shared pump of the same size', () => {
    fc.assert(
      fc.property(anyUnit, anyPump, anyProduct, fc.integer({ min: 2, max: 5 }), (anyOne, pump, anyLoad, count) => {
        const [unit, product] = withoutGasHeat(anyOne, anyLoad);
        const lone = underVacuum(pump, unit, 1, product);
        expect(lone).toBeLessThanOrEqual(underVacuum(pump, unit, count, product) * (1 + STEPS));
      }),
      { numRuns: 25 },
    );
  });

  it('a larger pump never lengthens drying', () => {
    fc.assert(
      fc.property(
        anyUnit,
        anyPump,
        anyProduct,
        fc.double({ min: 1.1, max: 5, noNaN: true }),
        (anyOne, pump, anyLoad, factor) => {
          const [unit, product] = withoutGasHeat(anyOne, anyLoad);
          const larger = underVacuum({ ...pump, speed: factor * pump.speed }, unit, 2, product);
          expect(larger).toBeLessThanOrEqual(underVacuum(pump, unit, 2, product) * (1 + STEPS));
        },
      ),
      { numRuns: 25 },
    );
  });

  it.each([
    ['heater', { heaterPower: 1.25 }],
    ['tightness', { leak: 0.8 }],
    ['way to the trap', { conductance: 1.25 }],
    ['hose', { diameter: 1.25 }],
  ])('more %s never lengthens drying', (_, by: Readonly<Record<string, number>>) => {
    fc.assert(
      fc.property(anyUnit, anyPump, anyProduct, (anyOne, pump, anyLoad) => {
        const [unit, product] = withoutGasHeat(anyOne, anyLoad);
        const { chamber, hose } = unit;
        const { trap } = chamber;
        const better: ChamberUnitSpec = {
          chamber: {
            ...chamber,
            heaterPower: chamber.heaterPower * (by.heaterPower ?? 1),
            leak: chamber.leak * (by.leak ?? 1),
            trap: { ...trap, vapourConductance: trap.vapourConductance * (by.conductance ?? 1) },
          },
          hose: { ...hose, diameter: hose.diameter * (by.diameter ?? 1) },
        };
        expect(underVacuum(pump, better, 1, product)).toBeLessThanOrEqual(
          underVacuum(pump, unit, 1, product) * (1 + STEPS),
        );
      }),
      { numRuns: 20 },
    );
  });

  it('and with heat through the gas a tighter vacuum can indeed be slower', () => {
    // A bed of pieces in a chamber without contact: its heat comes through the gas and by radiation.
    const heat = { contact: 0, pressureSlope: 0.2, pressureDamping: 0, radiation: 2 };
    const trap = { ...UNIT.chamber.trap, vapourConductance: 1e-4 };
    const slow = { ...UNIT, chamber: { ...UNIT.chamber, trap, heat, leak: 0.03 } };
    const strong = chambersOn({ ...GOOD_PUMP, speed: 10 * GOOD_PUMP.speed }, slow, 1, SOUP).loads[0]?.primary as number;
    expect(strong).toBeGreaterThan(chambersOn(GOOD_PUMP, slow, 1, SOUP).loads[0]?.primary as number);
  });
});
