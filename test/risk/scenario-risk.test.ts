import { describe, expect, it } from 'vitest';
import { evaluateScenario, stageWeeks, todayWeek } from '../../lib/model/evaluate-scenario.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { type ScenarioRisk, scenarioRisk } from '../../lib/risk/scenario-risk.ts';
import { stressedFinance } from '../../lib/risk/stressed-finance.ts';
import { NO_STRESS } from '../../lib/risk/stressed-plan.ts';
import { smallPlan } from '../model/edited-plan.ts';
import { fakeSimulation } from '../model/fake-plant.ts';
import type { Loose } from '../plan/edited-demo.ts';

const simulate = fakeSimulation();

function failing(edit: (document: Loose) => void = () => {}): Plan {
  return smallPlan((document) => {
    document.pumps[1].failuresPerYear = { value: 3, unit: '1/year', origin: 'guess' };
    edit(document);
  });
}

function resultOf(plan: Plan, id: string): ScenarioResult {
  const outcome = evaluateScenario(plan, id, todayWeek(plan, simulate), simulate);
  if (outcome.kind !== 'computed') throw new Error(JSON.stringify(outcome.findings));
  return outcome.result;
}

function riskOf(plan: Plan, result: ScenarioResult): ScenarioRisk {
  const risk = scenarioRisk(plan, result, simulate);
  if (!risk) throw new Error('the weeks can be run');
  return risk;
}

const PLAN = failing();
const RESULT = resultOf(PLAN, 'two');
const RISK = riskOf(PLAN, RESULT);

describe('what may go wrong with a scenario of a plan', () => {
  it('has pump failures that agree with the outputs and with the simulated years', () => {
    const { expected, spread } = RISK.failures;
    expect(expected).toEqual(RESULT.failures);
    expect(Math.abs(spread.mean - expected.cost.total)).toBeLessThan(4 * spread.standardError);
    expect(spread.worstInTwenty).toBeGreaterThan(expected.cost.total);
  });

  it('has the plan itself as its first stress, and less under every other', () => {
    const [asPlanned, ...others] = RISK.stress;
    expect(asPlanned).toMatchObject({
      lowestCover: RESULT.finance.lowestCover,
      meetsLine: RESULT.finance.meetsLine,
      lowestCash: RESULT.finance.lowestCash,
      netPresentValue: RESULT.finance.versusToday?.netPresentValue,
    });
    for (const { lowestCover } of others) expect(lowestCover).toBeLessThan(asPlanned?.lowestCover ?? 0);
  });

  it('has falls of revenue that bring the cover to 1 and to the lender’s line, and no further', () => {
    const weeks = stageWeeks(PLAN, PLAN.scenarios[1] as Scenario, todayWeek(PLAN, simulate), simulate);
    if (!weeks.ok) throw new Error('the weeks can be run');
    for (const [found, line] of [
      [RISK.untilUncovered, 1],
      [RISK.untilLine, 1.25],
    ] as const) {
      if (found.kind !== 'falls') throw new Error(found.kind);
      const { lowestCover } = stressedFinance(PLAN, 'two', weeks.value, {
        ...NO_STRESS,
        revenueFall: found.revenueFall,
      });
      expect(lowestCover).toBeCloseTo(line, 4);
    }
  });

  it('is none where a week cannot be run', () => {
    const broken: typeof simulate = () => ({ ok: false, error: { kind: 'nothingToMake' } });
    expect(scenarioRisk(PLAN, RESULT, broken)).toBeNull();
  });
});

describe('a spare pump on the shelf', () => {
  const spare = failing((document) => {
    document.scenarios[1].sparePump = 'onShelf';
  });
  const with_ = resultOf(spare, 'two');

  it('is bought, shortens every standstill and is counted in what the scenario brings', () => {
    expect(with_.capitalTotal - RESULT.capitalTotal).toBeCloseTo(3400 * 1.1, 6);
    expect(with_.failures.downtime).toBeLessThan(0.1 * RESULT.failures.downtime);
    const saved = RESULT.failures.cost.total - with_.failures.cost.total;
    const months = (result: ScenarioResult) => result.finance.statements.income.ebitda.slice(36, 48);
    const year = (result: ScenarioResult) => months(result).reduce((sum, amount) => sum + amount, 0) / 100;
    // What a mean year costs less is what the year earns more, small stoppages and closures aside.
    expect(year(with_) - year(RESULT)).toBeCloseTo(saved, -1);
  });

  it('shows its value whatever the scenario has', () => {
    const both = riskOf(spare, with_).spare;
    expect(both.without.expected.cost.total).toBeCloseTo(RESULT.failures.cost.total, 6);
    expect(both.with.expected).toEqual(with_.failures);
    expect(RISK.spare.savedPerYear).toBeCloseTo(both.savedPerYear, 6);
    expect(RISK.spare.price).toBe(3400);
  });
});
