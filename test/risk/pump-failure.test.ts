import { beforeAll, describe, expect, it } from 'vitest';
import { type PumpFailureTerms, pumpFailureTerms } from '../../lib/model/pump-failure-terms.ts';
import { scenarioCost } from '../../lib/model/scenario-cost.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { pumpFailureRisk, sparePump } from '../../lib/risk/pump-failure.ts';
import { computed } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';
import type { Loose } from '../plan/edited-demo.ts';

const RUN = { years: 4000, seed: 7 };

/** Two chambers on one pump that fails four times in a year of running and takes five days to mend. */
function often(document: Loose): void {
  document.pumps[1].failuresPerYear = { value: 4, unit: '1/year', origin: 'guess' };
  document.pumps[1].repairTime.value = 5;
  document.pumps[1].repairBill.value = 750;
}

function termsOf(of: Plan, scenario: Scenario, outcome: ScenarioResult, choice?: { spare: boolean }): PumpFailureTerms {
  return pumpFailureTerms(of, scenario, outcome.plant, outcome.account.week, choice);
}

let plan: Plan;
let shared: Scenario;
let result: ScenarioResult;
let terms: PumpFailureTerms;

beforeAll(() => {
  plan = smallPlan(often);
  shared = plan.scenarios[1] as Scenario;
  result = computed(plan, shared.id);
  terms = termsOf(plan, shared, result, { spare: false });
});

describe('pumpFailureTerms', () => {
  it('has the pump fail while it runs: weeks open × availability × running hours of a week', () => {
    const [group] = result.plant.groups;
    const weeks = (365.25 / 7 - 3) * 0.95;
    expect(terms.pumps).toHaveLength(1);
    const rate = (4 * (group?.pumpTime ?? Number.NaN) * weeks) / (365.25 * 86_400);
    expect(terms.pumps[0]?.failuresPerYear).toBeCloseTo(rate, 9);
    expect(terms.repairTime).toBe(5 * 86_400);
    expect(terms.repairBill).toBe(750);
  });

  it('finds as many loads under vacuum as the time of all chambers makes', () => {
    const { phases, groups } = result.plant;
    const time = phases.pumpDown + phases.primary + phases.secondary + phases.hold;
    const [pump] = terms.pumps;
    expect((pump?.loadsUnderVacuum ?? 0) * (groups[0]?.pumpTime ?? 0)).toBeCloseTo(time, 3);
    expect(pump?.loadsUnderVacuum).toBeGreaterThan(1);
    expect(pump?.loadsUnderVacuum).toBeLessThanOrEqual(2);
  });

  it('values a load of one product at what it fetches less its packaging', () => {
    // Finished batches differ in nothing, so that the load met by chance is the mean load: saleable kilograms × (112 − 12).
    const { saleableYield } = plan.products[0] as Plan['products'][number];
    const [batch] = result.plant.batchRecords;
    const value = ((batch?.dryOut ?? 0) * saleableYield.value * (112 - 12)) / 100;
    expect(terms.pumps[0]?.loadValue).toBeCloseTo(value, 6);
  });

  it('shares out all that is made in a year', () => {
    const weeks = (365.25 / 7 - 3) * 0.95;
    const { week } = scenarioCost(plan, shared, result.plant);
    const own = { ...shared, pumpArrangement: 'own' as const };
    for (const scenario of [shared, own]) {
      const outcome =
        scenario === shared ? result : computed({ ...plan, scenarios: [plan.scenarios[0] as Scenario, own] }, own.id);
      const { pumps } = termsOf(plan, scenario, outcome, { spare: false });
      const account = scenario === shared ? week : scenarioCost(plan, own, outcome.plant).week;
      const sum = (key: 'contributionPerYear' | 'batchesPerYear' | 'chambers') =>
        pumps.reduce((total, pump) => total + pump[key], 0);
      expect(sum('chambers')).toBe(2);
      expect(sum('contributionPerYear')).toBeCloseTo(account.contribution.week * weeks, 6);
      expect(sum('batchesPerYear')).toBeCloseTo(outcome.plant.batches * weeks, 9);
    }
  });

  it('takes from the plan what a spare saves, and has none where the scenario has none', () => {
    expect(terms.spoiledShare).toBe(0.5);
    expect(terms.swapTime).toBeNull();
    expect(termsOf(plan, shared, result).swapTime).toBeNull();
    expect(termsOf(plan, { ...shared, sparePump: 'onShelf' }, result).swapTime).toBe(4 * 3600);
    const instant = smallPlan((document) => {
      document.pumps[1].swapTime.value = 0;
    });
    expect(termsOf(instant, shared, result, { spare: true }).swapTime).toBeGreaterThan(0);
  });
});

describe('pumpFailureRisk', () => {
  it('has a closed form and a simulation that agree', () => {
    for (const spare of [false, true]) {
      const { expected, spread } = pumpFailureRisk(plan, shared, result, RUN, { spare });
      expect(Math.abs(spread.mean - expected.cost.total)).toBeLessThan(4 * spread.standardError);
      expect(spread.worstInTwenty).toBeGreaterThan(expected.cost.total);
      expect(spread.withoutFailure).toBeGreaterThan(0);
    }
  });

  it('loses more the more loads are spoiled and the longer mending takes', () => {
    const cost = (spoiledShare: number, edit: (document: Loose) => void) => {
      const changed = smallPlan((document) => {
        edit(document);
        document.pumps[1].spoiledShare = { value: spoiledShare, unit: '1', origin: 'guess' };
      });
      return pumpFailureRisk(changed, shared, result, { ...RUN, years: 10 }, { spare: false }).expected.cost;
    };
    expect(cost(1, often).spoiled).toBeCloseTo(4 * cost(0.25, often).spoiled, 9);
    expect(cost(0, often).spoiled).toBe(0);
    const slow = cost(0.5, (document) => {
      often(document);
      document.pumps[1].repairTime.value = 10;
    });
    expect(slow.idle).toBeGreaterThan(1.8 * cost(0.5, often).idle);
  });

  it('stops one chamber at a time where each has its own pump', () => {
    const own: Scenario = { ...shared, pumpArrangement: 'own' };
    const separate = computed({ ...plan, scenarios: [plan.scenarios[0] as Scenario, own] }, own.id);
    const { expected } = pumpFailureRisk(plan, own, separate, RUN, { spare: false });
    const { expected: together } = pumpFailureRisk(plan, shared, result, RUN, { spare: false });
    expect(expected.failures).toBeGreaterThan(1.5 * together.failures);
    expect(expected.stopped.at(-1)).toBeLessThan(0.1 * (together.stopped.at(-1) ?? 0));
  });

  it('is all zero for a pump that never fails, and stands still with a plant that does', () => {
    const sound = smallPlan((document) => {
      document.pumps[1].failuresPerYear = { value: 0, unit: '1/year', origin: 'guess' };
    });
    const { expected, spread } = pumpFailureRisk(sound, shared, result, RUN, { spare: false });
    expect([expected.cost.total, spread.mean, spread.worstInTwenty, spread.withoutFailure]).toEqual([0, 0, 0, 1]);
    const idle = {
      ...result,
      plant: { ...result.plant, groups: result.plant.groups.map((g) => ({ ...g, pumpTime: 0 })) },
    };
    expect(pumpFailureRisk(plan, shared, idle, RUN, { spare: false }).expected.cost.total).toBe(0);
  });
});

describe('sparePump', () => {
  it('saves most of the waiting for repair and pays its price back accordingly', () => {
    const spare = sparePump(plan, shared, result, { ...RUN, years: 1000 });
    const { without, with: fitted, price, savedPerYear, payback } = spare;
    expect(price).toBe(3400);
    expect(savedPerYear).toBeCloseTo(without.expected.cost.total - fitted.expected.cost.total, 9);
    expect(payback).toBeCloseTo(price / savedPerYear, 12);
    // Four hours instead of five days: a thirtieth of the standstill, and a little for the second failure meanwhile.
    const ratio = fitted.expected.downtime / without.expected.downtime;
    expect(ratio).toBeGreaterThan(1 / 30);
    expect(ratio).toBeLessThan(1 / 10);
  });

  it('never pays where putting it in takes as long as mending', () => {
    const slow = smallPlan((document) => {
      often(document);
      document.pumps[1].swapTime = { value: 3, unit: 'week', origin: 'guess' };
    });
    const { payback } = sparePump(slow, shared, result, { ...RUN, years: 10 });
    expect(payback).toBeNull();
  });
});
