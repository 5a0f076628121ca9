import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateScenario, todayWeek } from '../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { ScenarioResult, Statements } from '../../lib/model/scenario-result.ts';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { anyPlan } from './any-money-plan.ts';
import { fakeSimulation } from './fake-plant.ts';

/*
 * Whatever a plan asks for within the ranges of the register, ends included, its three statements balance to the cent and no
 * figure is anything but a number. Weeks are made up, so that hundreds of plans take a moment.
 */

function unbalanced({ income, cash, balance }: Statements): string[] {
  const faults: string[] = [];
  let held = balance.cash[0] ?? Number.NaN;
  let kept = 0;
  balance.totalAssets.forEach((assets, t) => {
    if (assets !== (balance.totalLiabilities[t] ?? 0) + (balance.totalEquity[t] ?? 0)) faults.push(`balance ${t}`);
    if (t === 0) return;
    held += cash.net[t - 1] ?? Number.NaN;
    kept += income.netProfit[t - 1] ?? Number.NaN;
    if (held !== balance.cash[t]) faults.push(`cash ${t}`);
    if (kept !== balance.retainedProfit[t]) faults.push(`profit ${t}`);
  });
  for (const [name, line] of [income, cash, balance].flatMap((statement) => Object.entries(statement))) {
    if (!(line as readonly number[]).every(Number.isSafeInteger)) faults.push(`${name} is not whole cents`);
  }
  return faults;
}

function unfunded({ finance }: ScenarioResult): string[] {
  const sum = (lines: readonly { readonly cents: number }[]) => lines.reduce((total, line) => total + line.cents, 0);
  const { uses, sources, total } = finance.funding;
  const even = sum(uses) === total && sum(sources) === total;
  const paidOff = finance.loans.every((loan) => loan.schedule.at(-1)?.closing === 0);
  return [...(even ? [] : ['uses and sources differ']), ...(paidOff ? [] : ['a loan is left over'])];
}

function notFinite(result: ScenarioResult): string[] {
  return OUTPUTS.filter((output) => {
    const value = output.read(result);
    return value !== null && !Number.isFinite(value);
  }).map((output) => output.id);
}

describe('any plan within the ranges of the register', () => {
  const seen = { computed: 0, refused: 0, unchecked: 0 };
  const simulate = fakeSimulation();

  it('has statements that balance to the cent, funding that is even and figures that are numbers', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => {
        const checked = checkPlan(anyPlan(seed));
        if (!checked.ok) {
          seen.unchecked += 1;
          return;
        }
        const today = todayWeek(checked.value, simulate);
        for (const { id } of checked.value.scenarios) {
          const outcome = evaluateScenario(checked.value, id, today, simulate);
          if (outcome.kind === 'refused') {
            seen.refused += 1;
            continue;
          }
          seen.computed += 1;
          const { result } = outcome;
          expect([...unbalanced(result.finance.statements), ...unfunded(result), ...notFinite(result)]).toEqual([]);
        }
      }),
      { seed: 77, numRuns: 60, endOnFailure: true },
    );
  });

  it('and plans with loans, stages and refusals were among them', () => {
    expect(seen.computed).toBeGreaterThan(80);
    expect(seen.unchecked).toBeLessThan(20);
  });
});
