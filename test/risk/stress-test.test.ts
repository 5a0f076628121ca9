import { beforeAll, describe, expect, it } from 'vitest';
import { type StageWeeks, stageWeeks, todayWeek, weeksFinance } from '../../lib/model/evaluate-scenario.ts';
import { monthlyTrade } from '../../lib/model/monthly-trade.ts';
import { scenarioCost } from '../../lib/model/scenario-cost.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import { accountWeek } from '../../lib/model/scenario-week.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { reverseStress } from '../../lib/risk/reverse-stress.ts';
import { stressCases, stressTest } from '../../lib/risk/stress-test.ts';
import { stressedFinance } from '../../lib/risk/stressed-finance.ts';
import { NO_STRESS, type Stress, stressedPlan } from '../../lib/risk/stressed-plan.ts';
import { computed, returnOf } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';
import type { Loose } from '../plan/edited-demo.ts';

let plan: Plan;
let scenario: Scenario;
let result: ScenarioResult;
let weeks: StageWeeks;

beforeAll(() => {
  plan = smallPlan();
  scenario = plan.scenarios[1] as Scenario;
  result = computed(plan, 'two');
  const found = stageWeeks(plan, scenario, todayWeek(plan));
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  weeks = found.value;
});

const finance = (stress: Partial<Stress>) => stressedFinance(plan, 'two', weeks, { ...NO_STRESS, ...stress });

function trade(of: Plan) {
  const [own] = weeks.stages;
  if (!own) throw new Error('the scenario is a stage of its own');
  return monthlyTrade(of, [{ month: -1, week: accountWeek(of, scenario, own.plant, null) }], 24);
}

describe('stressedPlan', () => {
  it('makes everything that is paid to run the shop dearer, and nothing else', () => {
    const before = trade(plan);
    const dearer = trade(stressedPlan(plan, { ...NO_STRESS, costRise: 0.1 }));
    dearer.variableCosts.forEach((cost, month) => {
      expect(cost / (before.variableCosts[month] ?? Number.NaN)).toBeCloseTo(1.1, 12);
    });
    dearer.fixedCosts.forEach((cost, month) => {
      expect(cost / (before.fixedCosts[month] ?? Number.NaN)).toBeCloseTo(1.1, 12);
    });
    expect(dearer.revenue).toEqual(before.revenue);
    const capital = computed(stressedPlan(plan, { ...NO_STRESS, costRise: 0.1 }), 'two').capitalTotal;
    expect(capital).toBe(result.capitalTotal);
  });

  it('lowers prices alone when revenue falls', () => {
    const before = trade(plan);
    const poorer = trade(stressedPlan(plan, { ...NO_STRESS, revenueFall: 0.2 }));
    poorer.revenue.forEach((sales, month) => {
      expect(sales / (before.revenue[month] ?? Number.NaN)).toBeCloseTo(0.8, 12);
    });
    expect(poorer.variableCosts).toEqual(before.variableCosts);
  });

  it('raises the interest by points, in whatever unit it was given', () => {
    const perYear = (edit: Plan) => stressedPlan(edit, { ...NO_STRESS, rateRise: 0.03 }).financing.loans[0]?.rate;
    expect(perYear(plan)).toMatchObject({ value: 13.5, unit: '%/year' });
    const bare = smallPlan((document) => {
      document.financing.loans[0].rate = { value: 0.105, unit: '1/year', origin: 'quoted' };
    });
    expect(perYear(bare)?.value).toBeCloseTo(0.135, 12);
  });

  it('keeps low, likely and high together and leaves an unlimited market unlimited', () => {
    const changed = stressedPlan(plan, { ...NO_STRESS, revenueFall: 0.5, customerLost: 0.5 });
    expect(changed.products[0]?.price).toMatchObject({ value: 56, low: 49, high: 62.5 });
    expect(changed.products[0]?.weeklyDemand).toBeNull();
    expect(stressedPlan(plan, NO_STRESS)).toEqual(plan);
  });
});

describe('stressedFinance', () => {
  it('is the plan itself without stress', () => {
    expect(finance({})).toEqual(result.finance);
  });

  it('is the plan with other prices and costs, though nothing is simulated again', () => {
    for (const stress of [{ revenueFall: 0.2 }, { costRise: 0.1 }, { rateRise: 0.03 }]) {
      const anew = computed(stressedPlan(plan, { ...NO_STRESS, ...stress }), 'two');
      expect(finance(stress)).toEqual(anew.finance);
    }
  });

  /** Without tax, which is not paid back on a loss, every flow is a straight line in what is sold. */
  const untaxed = (edit: (document: Loose) => void = () => {}) =>
    smallPlan((document) => {
      document.financing.taxRate.value = 0;
      edit(document);
    });
  const flows = (of: Plan, stress: Partial<Stress>) =>
    stressedFinance(of, 'two', weeks, { ...NO_STRESS, ...stress }).versusToday?.incremental ?? [];

  it('takes the share of a lost customer off sales and running cost of every month', () => {
    const of = untaxed();
    const [whole, quarter, all] = [0, 0.25, 1].map((customerLost) => flows(of, { customerLost }));
    whole?.forEach((flow, month) => {
      expect(Math.abs((quarter?.[month] ?? Number.NaN) - 0.75 * flow - 0.25 * (all?.[month] ?? 0))).toBeLessThan(0.05);
    });
    // Without any customer only what runs on regardless is left: more of it than today.
    const standing = (one: Scenario, plant = result.plant) => scenarioCost(of, one, plant).week.standingCost.week;
    const more = standing(scenario) - standing(plan.scenarios[0] as Scenario, weeks.today.plant);
    expect(all?.[40]).toBeCloseTo((-more * 365.25) / 84, 1);
  });

  it('takes it off a market that is limited as much as off one that is not', () => {
    const sales = (demand: number | null, customerLost: number) => {
      const of = untaxed((document) => {
        document.products[0].weeklyDemand =
          demand === null ? null : { value: demand, unit: 'kg/week', origin: 'guess' };
      });
      const flow = (lost: number) => flows(of, { customerLost: lost })[40] ?? Number.NaN;
      return (flow(customerLost) - flow(1)) / (flow(0) - flow(1));
    };
    // 9 kg a week is what the second chamber can only partly use.
    for (const demand of [null, 9]) expect(sales(demand, 0.4)).toBeCloseTo(0.6, 3);
  });

  it('pays for late machines at once and has them run later', () => {
    const late = flows(untaxed(), { monthsLate: 6 });
    // Bought in month 2: nothing before, nothing earned for six months, and then as if bought in month 8.
    expect(late.slice(0, 3)).toEqual([0, 0, -result.capitalTotal]);
    expect(late.slice(3, 9)).toEqual([0, 0, 0, 0, 0, 0]);
    const bought = untaxed((document) => {
      document.scenarios[1].purchaseMonth += 6;
    });
    expect(late.slice(9)).toEqual(flows(bought, {}).slice(9));
    expect(finance({ monthsLate: 6 }).yearlyDebtService).toBe(finance({}).yearlyDebtService);
  });

  it('knows no later start for today', () => {
    const late = stressedFinance(plan, 'today', { today: weeks.today, stages: [] }, { ...NO_STRESS, monthsLate: 6 });
    expect(late).toEqual(computed(plan, 'today').finance);
    expect(late.versusToday).toBeNull();
  });

  it('refuses shares and delays that make no sense', () => {
    for (const bad of [{ revenueFall: 1.1 }, { customerLost: -0.1 }, { monthsLate: 1.5 }, { monthsLate: -1 }]) {
      expect(() => finance(bad)).toThrow(RangeError);
    }
  });
});

describe('stressTest', () => {
  it('leaves less cover and less value under each stress, least under all', () => {
    const outcomes = stressTest(plan, 'two', weeks);
    expect(outcomes.map((outcome) => outcome.id)).toEqual([
      'asPlanned',
      'revenue',
      'costs',
      'rate',
      'late',
      'customer',
      'all',
    ]);
    const [asPlanned, ...stressed] = outcomes;
    const covers = stressed.map((outcome) => outcome.lowestCover ?? Number.NaN);
    for (const cover of covers) expect(cover).toBeLessThan(asPlanned?.lowestCover ?? Number.NaN);
    expect(Math.min(...covers)).toBe(stressed.at(-1)?.lowestCover);
    const values = stressed.map((outcome) => outcome.netPresentValue ?? Number.NaN);
    for (const value of values) expect(value).toBeLessThanOrEqual(asPlanned?.netPresentValue ?? Number.NaN);
    expect(Math.min(...values)).toBe(values.at(-1));
  });

  it('leaves the return before financing alone when only the interest rises', () => {
    const rate = stressTest(plan, 'two', weeks).find((outcome) => outcome.id === 'rate');
    expect(rate?.netPresentValue).toBe(returnOf(result).netPresentValue);
    expect(rate?.payback).toEqual(returnOf(result).payback);
  });

  it('takes the share of the biggest customer from the plan', () => {
    const large = smallPlan((document) => {
      document.financing.biggestCustomer.value = 40;
    });
    expect(stressCases(large).map(({ stress }) => stress.customerLost)).toEqual([0, 0, 0, 0, 0, 0.4, 0.4]);
  });
});

describe('reverseStress', () => {
  /** A dear product, so that there is something to fall; the machines are the same. */
  const sound = smallPlan((document) => {
    document.products[0].price = { value: 160, unit: 'money/kg', origin: 'guess' };
  });
  const fall = (line: number) => {
    const found = reverseStress(sound, 'two', weeks, line);
    if (found.kind !== 'falls') throw new Error(found.kind);
    return found.revenueFall;
  };

  it('finds the fall at which a plan with those prices just reaches the line, simulated anew', () => {
    for (const line of [1, 1.25]) {
      const anew = computed(stressedPlan(sound, { ...NO_STRESS, revenueFall: fall(line) }), 'two');
      // A cent a month moves the cover by about 1e-5.
      expect(anew.finance.lowestCover).toBeCloseTo(line, 4);
    }
  });

  it('is a straight line: twice the cover to lose takes twice the fall', () => {
    const cover = computed(sound, 'two').finance.lowestCover ?? Number.NaN;
    expect(fall(cover - 0.4) / fall(cover - 0.2)).toBeCloseTo(2, 3);
  });

  it('says when the plan is below the line, has no debt, or would hold without any revenue', () => {
    const cover = result.finance.lowestCover ?? Number.NaN;
    expect(reverseStress(plan, 'two', weeks, cover + 0.1)).toEqual({ kind: 'alreadyBelow', lowestCover: cover });
    expect(reverseStress(plan, 'two', weeks, -1e6)).toMatchObject({ kind: 'never' });
    const own = smallPlan((document) => {
      document.financing.loans = [];
    });
    expect(reverseStress(own, 'two', weeks, 1)).toEqual({ kind: 'noDebt' });
  });
});

describe('weeksFinance', () => {
  it('is what evaluateScenario says of the same weeks', () => {
    expect(weeksFinance(plan, scenario, weeks)).toEqual(result.finance);
  });
});
