import { describe, expect, it } from 'vitest';
import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { computed, demoResult, returnOf } from './computed.ts';
import { smallPlan } from './edited-plan.ts';

const IDS = DEMO_PLAN.scenarios.map((scenario) => scenario.id);
const EXPANSIONS = IDS.slice(1);

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function reversed(plan: Plan): Plan {
  const [first, ...others] = plan.scenarios;
  if (!first) throw new Error('a plan has a first scenario');
  return { ...plan, scenarios: [first, ...others.reverse()] };
}

describe('what every scenario of the demo gives', () => {
  it.each(IDS)('%s: each output is a finite number or nothing', (id) => {
    for (const output of OUTPUTS) {
      const value = output.read(demoResult(id));
      expect(value === null || Number.isFinite(value), `${output.id} is ${value}`).toBe(true);
    }
  });

  it.each(IDS)('%s: parts of the cost sum to what a week, a batch and a kilogram cost', (id) => {
    const { cost, plant } = demoResult(id);
    expect(cost.lines.map((line) => line.part)).toEqual([
      'materials',
      'packaging',
      'oil',
      'electricity',
      'labour',
      'other',
    ]);
    expect(sum(cost.lines.map((line) => line.perWeek))).toBeCloseTo(cost.perWeek, 9);
    expect(sum(cost.lines.map((line) => line.perBatch))).toBeCloseTo(cost.perBatch, 9);
    expect(sum(cost.lines.map((line) => line.perKilogram))).toBeCloseTo(cost.perKilogram, 9);
    expect(cost.perBatch * plant.batches).toBeCloseTo(cost.perWeek, 6);
    expect(cost.perKilogram * plant.dryOut).toBeCloseTo(cost.perWeek, 6);
    expect(cost.salesPerWeek - cost.perWeek).toBeCloseTo(cost.contributionPerWeek, 9);
  });

  it.each(IDS)('%s: lines of the capital sum to its total', (id) => {
    const { capital, capitalTotal } = demoResult(id);
    expect(sum(capital.map((line) => line.amount))).toBeCloseTo(capitalTotal, 6);
  });

  it('shows as many chambers and pumps as the scenario has', () => {
    expect(IDS.map((id) => [demoResult(id).chambers, demoResult(id).pumps])).toEqual([
      [2, 2],
      [3, 1],
      [4, 1],
      [6, 1],
      [6, 2],
      [4, 1],
    ]);
  });
});

describe('today', () => {
  it('is judged against nothing and buys nothing', () => {
    const today = demoResult('today');
    expect(today.finance.versusToday).toBeNull();
    expect(today.capital).toEqual([]);
    expect(today.capitalTotal).toBe(0);
    for (const id of ['payback', 'npv', 'irr']) {
      expect(OUTPUTS.find((output) => output.id === id)?.read(today)).toBeNull();
    }
  });

  it('may carry any month of purchase, which means nothing there', () => {
    const plan = smallPlan((document) => {
      document.scenarios[0].purchaseMonth = 100;
    });
    expect(computed(plan, 'today').finance).toEqual(computed(smallPlan(), 'today').finance);
  });
});

describe('the return against today', () => {
  it.each(EXPANSIONS)('%s: cumulative cash is the running sum of the extra cash', (id) => {
    const { incremental, cumulative } = returnOf(demoResult(id));
    let total = 0;
    for (const [month, flow] of incremental.entries()) {
      total += flow;
      expect(cumulative[month]).toBeCloseTo(total, 5);
    }
    expect(cumulative).toHaveLength(85);
  });

  it.each(EXPANSIONS)('%s: present value is that of the extra cash and what is left, at 12 % a year', (id) => {
    const { incremental, leftAtHorizon, netPresentValue } = returnOf(demoResult(id));
    const discounted = incremental.map((flow, month) => flow / 1.12 ** (month / 12));
    expect(netPresentValue).toBeCloseTo(sum(discounted) + leftAtHorizon / 1.12 ** 7, 4);
  });

  it.each(EXPANSIONS)('%s: the internal rate brings that present value to nothing', (id) => {
    const { incremental, leftAtHorizon, rateOfReturn } = returnOf(demoResult(id));
    if (rateOfReturn.kind !== 'one') throw new Error(`one rate expected, got ${rateOfReturn.kind}`);
    const at = (month: number) => (1 + rateOfReturn.yearly) ** (-month / 12);
    expect(Math.abs(sum(incremental.map((flow, month) => flow * at(month))) + leftAtHorizon * at(84))).toBeLessThan(
      1e-3,
    );
  });

  it.each(EXPANSIONS)('%s: payback lies where the cumulative cash, drawn as a line, crosses zero', (id) => {
    const { cumulative, payback, deepestCash } = returnOf(demoResult(id));
    if (payback.kind !== 'crossed') throw new Error(`payback expected, got ${payback.kind}`);
    const month = Math.floor(payback.months);
    const before = cumulative[month] ?? Number.NaN;
    const after = cumulative[month + 1] ?? Number.NaN;
    expect(before + (payback.months - month) * (after - before)).toBeCloseTo(0, 5);
    expect(before).toBeLessThan(0);
    expect(after).toBeGreaterThanOrEqual(0);
    expect(deepestCash).toBe(Math.min(...cumulative));
  });
});

describe('independence', () => {
  it('gives the same, to the last digit, whatever was worked out before and in whatever order rows stand', () => {
    const first = computed(smallPlan(), 'two');
    computed(smallPlan(), 'today');
    expect(computed(smallPlan(), 'two')).toEqual(first);
    const three = smallPlan((document) => {
      document.scenarios.push({ ...document.scenarios[1], id: 'again', purchaseMonth: 9 });
    });
    expect(computed(reversed(three), 'two')).toEqual(first);
  });
});

describe('what cannot be worked out', () => {
  it('refuses a purchase after the horizon and says at which entry', () => {
    const plan = smallPlan((document) => {
      document.scenarios[1].purchaseMonth = 84;
    });
    const outcome = evaluateScenario(plan, 'two');
    expect(outcome).toMatchObject({ kind: 'refused', scenarioId: 'two', name: 'Two on one pump' });
    expect(outcome.kind === 'refused' && outcome.findings[0]?.field).toBe('scenarios.1.purchaseMonth');
  });

  it('says what is wrong with today of every other scenario too', () => {
    const plan = smallPlan((document) => {
      document.chambers[0].trapCapacity.value = 4;
    });
    const today = evaluateScenario(plan, 'today');
    const two = evaluateScenario(plan, 'two');
    if (today.kind !== 'refused' || two.kind !== 'refused') throw new Error('both should be refused');
    expect(today.findings[0]?.problem).toMatch(/^One batch of "Strawberry slices" gives off/);
    expect(two.findings[0]?.problem).toMatch(/^In the first scenario, against which all are judged: One batch/);
  });

  it('works out today although another scenario cannot run', () => {
    const plan = smallPlan((document) => {
      document.chambers.push({ ...structuredClone(document.chambers[0]), id: 'leaky', name: 'Leaky chamber' });
      document.chambers.at(-1).leak = { value: 0.9, unit: 'Pa·m³/s', origin: 'guess' };
      document.scenarios[1].chambers = [{ chamber: 'leaky', count: 2 }];
    });
    expect(evaluateScenario(plan, 'today').kind).toBe('computed');
    expect(evaluateScenario(plan, 'two')).toMatchObject({ kind: 'refused', findings: [{ field: 'pumps.1.speed' }] });
  });

  it('throws on a scenario that is not there', () => {
    expect(() => evaluateScenario(DEMO_PLAN, 'gone')).toThrow(RangeError);
  });
});
