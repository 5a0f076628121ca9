import { describe, expect, it } from 'vitest';
import type { ScenarioFinance } from '../../lib/model/scenario-result.ts';
import { scenarioWarnings } from '../../lib/model/scenario-warnings.ts';
import { supplyNeed } from '../../lib/model/supply-need.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { GroupWeek, PlantReport } from '../../lib/plant/report-types.ts';
import { computed } from './computed.ts';
import { smallPlan } from './edited-plan.ts';

const PLAN = smallPlan();
const { plant: PLANT, finance: FINANCE } = computed(PLAN, 'today');
const GROUP = PLANT.groups[0] as GroupWeek;

/** The only scenario of a shop with one chamber of so many amperes, a pump of so many watts and a supply. */
function shop(chamber: number, pump: number, volts: number, supply: number): Plan {
  return smallPlan((document) => {
    document.chambers[0].ratedCurrent = { value: chamber, unit: 'A', origin: 'quoted' };
    document.pumps[0].power = { value: pump, unit: 'W', origin: 'quoted' };
    document.site.powerFactor = { value: 1, unit: '1', origin: 'guess' };
    document.chambers[0].circuitRating = null;
    document.site.panelCircuits = null;
    document.site.supplyVoltage = { value: volts, unit: 'V', origin: 'measured' };
    document.site.supplyCurrent = { value: supply, unit: 'A', origin: 'measured' };
  });
}

function warnings(plan: Plan, plant: PlantReport = PLANT) {
  return scenarioWarnings(plan, plan.scenarios[0] as Scenario, plant, { ...FINANCE, lowestCash: 0 });
}

describe('the electrical warning', () => {
  // Continuous load at 125 %, its inverse the four fifths of the breaker's rating [nec-210-20]; recomputed.
  it.each([
    [120, 15, 1440],
    [120, 20, 1920],
    [240, 20, 3840],
    [240, 30, 5760],
    [240, 50, 9600],
  ])('at %d V and %d A lets %d W run on end and not a watt more', (volts, supply, power) => {
    expect(warnings(shop(0, power, volts, supply))).toEqual([]);
    expect(warnings(shop(0, power + 1, volts, supply))[0]?.field).toBe('site.supplyCurrent');
  });

  it.each([
    [16, 20, false],
    [17, 20, true],
    [17, 25, false],
  ])('%d A on end and a supply of %d A: warns %s', (current, supply, warns) => {
    expect(warnings(shop(current, 0, 240, supply))).toHaveLength(warns ? 1 : 0);
  });

  it('counts every chamber, pump and the freezer', () => {
    const six = DEMO_PLAN.scenarios.find((scenario) => scenario.id === 'six-groups') as Scenario;
    const [good] = DEMO_PLAN.pumps.filter((pump) => pump.id === 'good');
    const watts = 2 * (good?.power.value ?? 0) + (DEMO_PLAN.freezer?.power.value ?? 0);
    const need = supplyNeed(DEMO_PLAN, six);
    expect(need.continuous).toBeCloseTo(6 * 16 + watts / (240 * 0.8), 9);
    expect(need.rating).toBeCloseTo(1.25 * need.continuous, 9);
    expect(need.circuits).toBe(6 + 2 + 1);
  });

  it('counts what runs for minutes as it is, and a spare on the shelf not at all', () => {
    const [three] = DEMO_PLAN.scenarios.filter((scenario) => scenario.id === 'three-shared') as [Scenario];
    const plain = supplyNeed(DEMO_PLAN, three);
    const roughing = supplyNeed(DEMO_PLAN, { ...three, startPractice: 'roughing', roughingPump: 'small' });
    expect(roughing.rating - plain.rating).toBeCloseTo(370 / (240 * 0.8), 9);
    expect(roughing.circuits - plain.circuits).toBe(1);
    expect(supplyNeed(DEMO_PLAN, { ...three, sparePump: 'onShelf' })).toEqual(plain);
  });

  it('tells the rating that is called for in whole amperes, never the same figure twice', () => {
    const said = (current: number) => warnings(shop(current, 0, 240, 20))[0]?.problem ?? '';
    expect(said(16.01)).toContain('draw about 16 A for hours on end');
    expect(said(16.01)).toContain('a supply of 21 A; yours is rated 20 A.');
    expect(said(17)).toContain('a supply of 22 A; yours is rated 20 A.');
  });

  it('looks at the circuit of each chamber type in use', () => {
    // 16 A on end need a circuit of exactly 20 A [nec-210-20], 17 A one of 21.25 A; recomputed.
    const on = (current: number) =>
      warnings(
        smallPlan((document) => {
          document.chambers[0].ratedCurrent.value = current;
          document.chambers[0].circuitRating = { value: 20, unit: 'A', origin: 'measured' };
        }),
      );
    expect(on(16)).toEqual([]);
    const [found] = on(17);
    expect(found).toMatchObject({ field: 'chambers.0.circuitRating', value: '20 A' });
    expect(found?.problem).toContain('draws 17 A for hours on end, which calls for a circuit of 22 A');
  });

  it('counts circuits against the panel where their number is known', () => {
    const panel = (circuits: number | null) =>
      warnings(
        smallPlan((document) => {
          document.site.panelCircuits = circuits === null ? null : { value: circuits, unit: '', origin: 'measured' };
        }),
      );
    expect(panel(null)).toEqual([]);
    expect(panel(2)).toEqual([]);
    expect(panel(1)[0]?.problem).toContain('2 are needed; the panel has 1 for machines');
  });

  it('leaves the judgement to an electrician', () => {
    expect(warnings(shop(17, 0, 240, 20))[0]).toMatchObject({ severity: 'warning', value: '20 A' });
    expect(warnings(shop(17, 0, 240, 20))[0]?.remedy).toMatch(/licensed electrician/);
  });
});

describe('the floor warning', () => {
  const withFloor = (room: number | null) =>
    smallPlan((document) => {
      document.chambers[0].floorSpace = { value: 2, unit: 'm²', origin: 'guess' };
      document.pumps[0].floorSpace = { value: 0.5, unit: 'm²', origin: 'guess' };
      document.site.floorSpace = room === null ? null : { value: room, unit: 'm²', origin: 'guess' };
    });

  it('speaks when one chamber and its pump do not fit, and not before', () => {
    expect(warnings(withFloor(2.4))[0]).toMatchObject({ field: 'site.floorSpace', value: '2.4 m²' });
    expect(warnings(withFloor(2.5))).toEqual([]);
    expect(warnings(withFloor(null))).toEqual([]);
  });
});

describe('the warnings of a lender and a bank', () => {
  const found = (change: Partial<ScenarioFinance>) =>
    scenarioWarnings(PLAN, PLAN.scenarios[0] as Scenario, PLANT, { ...FINANCE, lowestCash: 0, ...change });

  it('come when the lowest cover misses the line, and never read as if it reached it', () => {
    expect(found({ lowestCover: 1.25, line: 1.25, meetsLine: true })).toEqual([]);
    expect(found({ lowestCover: null, meetsLine: null })).toEqual([]);
    const [near] = found({ lowestCover: 1.2499, line: 1.25, meetsLine: false });
    expect(near).toMatchObject({ field: 'financing.dscrLine', value: '1.25' });
    expect(near?.problem).toContain('earns 1.24 times its loan payments');
  });

  it('come when money runs out, with the month', () => {
    const statements = {
      ...FINANCE.statements,
      balance: { ...FINANCE.statements.balance, cash: [0, 100, -20, 50, -90] },
    };
    const [broke] = found({ lowestCash: -0.9, statements });
    expect(broke).toMatchObject({ field: 'financing.openingCash', value: 'month 2' });
    expect(broke?.problem).toContain('at the worst 1 USD are missing');
  });
});

describe('the vapour warning', () => {
  const loaded = (mean: number, tolerance: number): PlantReport => ({
    ...PLANT,
    groups: [GROUP, { ...GROUP, vapourLoadMean: mean / 3600, vapourTolerance: tolerance / 3600 }],
  });

  it('comes when a pump swallows more than it passes, with both told', () => {
    expect(warnings(PLAN, loaded(0.25, 0.25))).toEqual([]);
    const [found] = warnings(PLAN, loaded(0.3, 0.25));
    expect(found).toMatchObject({ field: 'pumps.vapourTolerance', value: '0.25 kg/h' });
    expect(found?.problem).toContain('0.30 kg of water');
  });

  it('does not come where no tolerance is known', () => {
    expect(warnings(PLAN, loaded(0.3, 0))).toEqual([]);
  });
});

describe('the trap warning', () => {
  it.each([
    [0.9, 0],
    [0.91, 1],
  ])('of a trap filled to %d: %d', (trapFill, count) => {
    const found = warnings(PLAN, { ...PLANT, trapFill });
    expect(found).toHaveLength(count);
    if (count > 0) expect(found[0]?.value).toBe('91 %');
  });
});

describe('the freezer warning', () => {
  const waiting = (hours: number) =>
    warnings(PLAN, { ...PLANT, phases: { ...PLANT.phases, waitingForFreezer: hours * 3600 } });

  it('comes when chambers wait for it for more than a twentieth of the week', () => {
    expect(waiting(8.4)).toEqual([]);
    const [found] = waiting(8.6);
    expect(found).toMatchObject({ field: 'freezer.capacity', value: '9 h' });
    expect(found?.problem).toContain('wait 9 h a week');
  });
});
