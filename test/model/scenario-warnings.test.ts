import { describe, expect, it } from 'vitest';
import { continuousCurrent, scenarioWarnings } from '../../lib/model/scenario-warnings.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { GroupWeek, PlantReport } from '../../lib/plant/report-types.ts';
import { computed } from './computed.ts';
import { smallPlan } from './edited-plan.ts';

const PLAN = smallPlan();
const { plant: PLANT } = computed(PLAN, 'today');
const GROUP = PLANT.groups[0] as GroupWeek;

/** The only scenario of a shop with one chamber of so many amperes, a pump of so many watts and a supply. */
function shop(chamber: number, pump: number, volts: number, supply: number): Plan {
  return smallPlan((document) => {
    document.chambers[0].ratedCurrent = { value: chamber, unit: 'A', origin: 'quoted' };
    document.pumps[0].power = { value: pump, unit: 'W', origin: 'quoted' };
    document.site.supplyVoltage = { value: volts, unit: 'V', origin: 'measured' };
    document.site.supplyCurrent = { value: supply, unit: 'A', origin: 'measured' };
  });
}

function warnings(plan: Plan, plant: PlantReport = PLANT) {
  return scenarioWarnings(plan, plan.scenarios[0] as Scenario, plant);
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
    expect(continuousCurrent(DEMO_PLAN, six)).toBeCloseTo(6 * 16 + watts / 240, 9);
  });

  it('never says that a figure is more than the same figure', () => {
    const said = (current: number) => warnings(shop(current, 0, 240, 20))[0]?.problem ?? '';
    expect(said(16.1)).toContain('20.1 A of supply are needed (continuous load × 125 %), and there are 20.0 A.');
    expect(said(16.01)).toContain('20.01 A of supply are needed (continuous load × 125 %), and there are 20.00 A.');
    expect(said(17)).toContain('21 A of supply are needed (continuous load × 125 %), and there are 20 A.');
  });

  it('leaves the judgement to an electrician', () => {
    expect(warnings(shop(17, 0, 240, 20))[0]).toMatchObject({ severity: 'warning', value: '20 A' });
    expect(warnings(shop(17, 0, 240, 20))[0]?.remedy).toMatch(/licensed electrician/);
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
