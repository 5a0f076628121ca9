import { describe, expect, it } from 'vitest';
import { evaluateScenario, todayWeek } from '../../lib/model/evaluate-scenario.ts';
import type { ScenarioOutcome, ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { Loose } from '../plan/edited-demo.ts';
import { smallPlan } from './edited-plan.ts';
import { fakeSimulation } from './fake-plant.ts';

/** Today one chamber; two on one pump from month 2; four from month 14, after the two. */
function staged(edit: (document: Loose) => void = () => {}): Plan {
  return smallPlan((document) => {
    const two = document.scenarios[1];
    document.scenarios.push({
      ...structuredClone(two),
      id: 'four',
      name: 'Four on one pump',
      chambers: [{ chamber: 'mid', count: 4 }],
      purchaseMonth: 14,
      after: 'two',
    });
    document.site.rampMonths.value = 0;
    edit(document);
  });
}

const simulate = fakeSimulation();

function outcomeOf(plan: Plan, id: string): ScenarioOutcome {
  return evaluateScenario(plan, id, todayWeek(plan, simulate), simulate);
}

function result(plan: Plan, id: string): ScenarioResult {
  const outcome = outcomeOf(plan, id);
  if (outcome.kind !== 'computed') throw new Error(JSON.stringify(outcome.findings));
  return outcome.result;
}

describe('a purchase in stages', () => {
  const plan = staged();
  const four = result(plan, 'four');

  it('pays at each stage for what that one adds', () => {
    const months = new Set(four.capital.map((line) => line.month));
    expect([...months]).toEqual([2, 14]);
    const chambers = four.capital.filter((line) => line.label === 'Mid-size chamber');
    expect(chambers.map((line) => line.amount)).toEqual([22400, 2 * 22400]);
    const pumps = four.capital.filter((line) => line.label === 'Good pump with gas ballast');
    expect(pumps.map((line) => line.month)).toEqual([2]);
    const paid = four.finance.statements.cash.purchases;
    const at = (month: number) => four.capital.filter((line) => line.month === month);
    for (const month of [2, 14]) {
      expect(paid[month]).toBe(-Math.round(100 * at(month).reduce((sum, line) => sum + line.amount, 0)));
    }
  });

  it('sells as each stage can make: one, two, then four chambers', () => {
    const { revenue } = four.finance.statements.income;
    const [one, two, all] = [1, 10, 20].map((month) => revenue[month] ?? Number.NaN) as [number, number, number];
    expect(two / one).toBeCloseTo(2, 6);
    expect(all / one).toBeCloseTo(4, 6);
    expect(revenue[13]).toBe(two);
    expect(revenue[14]).toBe(all);
  });

  it('draws the loan at each stage', () => {
    expect(four.finance.loans.map((loan) => loan.drawMonth)).toEqual([2, 14]);
    const drawn = four.finance.statements.cash.loansDrawn;
    expect(drawn[2]).toBe(-0.8 * (four.finance.statements.cash.purchases[2] ?? 0));
    expect(drawn[14]).toBeGreaterThan(0);
  });

  it('is the two alone until the second stage', () => {
    const two = result(plan, 'two').finance.statements.cash.net;
    expect(four.finance.statements.cash.net.slice(0, 14)).toEqual(two.slice(0, 14));
    expect(four.finance.statements.cash.net[14]).not.toBe(two[14]);
  });

  it('costs as much in all as when it is bought at once, but for one more delivery', () => {
    const once = result(
      staged((document) => {
        document.scenarios[2].after = null;
      }),
      'four',
    );
    expect(four.capitalTotal - once.capitalTotal).toBeCloseTo(950 * 1.1, 6);
  });

  it('is refused when it is bought no later than the stage before', () => {
    const wrong = staged((document) => {
      document.scenarios[2].purchaseMonth = 2;
    });
    expect(outcomeOf(wrong, 'four')).toMatchObject({
      kind: 'refused',
      findings: [{ field: 'scenarios.2.purchaseMonth' }],
    });
    expect(outcomeOf(wrong, 'two').kind).toBe('computed');
  });

  it('looks no further back than today, whichever scenario that is', () => {
    const moved = staged((document) => {
      const [today, two, more] = document.scenarios;
      document.scenarios = [two, today, more];
    });
    expect(result(moved, 'four').capital.every((line) => line.month === 14)).toBe(true);
  });
});
