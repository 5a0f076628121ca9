import type { Finding } from '../../result.ts';
import { LIMITS } from '../limits.ts';
import type { Plan, Scenario } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** How far from 100 % the shares of a mix may sum, for rounding by hand. */
const SHARE_SLACK = 0.01;

function repeats(values: readonly string[]): boolean {
  return new Set(values).size < values.length;
}

function mixFindings(scenario: Scenario, path: string): readonly Finding[] {
  const findings: Finding[] = [];
  const sum = scenario.mix.reduce((total, entry) => total + entry.share, 0);
  if (Math.abs(sum - 100) > SHARE_SLACK) {
    const shown = `${Number(sum.toFixed(4))} %`;
    findings.push(
      planError(`${path}.mix`, shown, `The shares of the product mix sum to ${shown}.`, 'Make them sum to 100 %.'),
    );
  }
  if (repeats(scenario.mix.map((entry) => entry.product))) {
    findings.push(
      planError(`${path}.mix`, '', 'A product stands twice in the mix.', 'Keep one line for each product.'),
    );
  }
  return findings;
}

function chamberFindings(scenario: Scenario, path: string): readonly Finding[] {
  const findings: Finding[] = [];
  const count = scenario.chambers.reduce((total, entry) => total + entry.count, 0);
  const most = LIMITS.chambersInScenario;
  if (count < 1 || count > most) {
    const problem = count < 1 ? 'The scenario has no chamber.' : `The scenario has ${count} chambers.`;
    findings.push(planError(`${path}.chambers`, String(count), problem, `Give it 1 to ${most} chambers.`));
  }
  if (repeats(scenario.chambers.map((entry) => entry.chamber))) {
    const problem = 'A chamber type stands twice in the scenario.';
    findings.push(planError(`${path}.chambers`, '', problem, 'Keep one line for each type.'));
  }
  return findings;
}

function roughingFindings(scenario: Scenario, path: string): readonly Finding[] {
  if (scenario.startPractice !== 'roughing' || scenario.roughingPump !== null) return [];
  const problem = 'Chambers start on a roughing pump, but none is chosen.';
  return [planError(`${path}.roughingPump`, '(none)', problem, 'Choose a roughing pump or another way to start.')];
}

/** Each scenario is whole: its mix sums to 100 %, it has chambers, and its way of starting has the pump it needs. */
export function scenarioRule(plan: Plan): readonly Finding[] {
  return plan.scenarios.flatMap((scenario, i) => {
    const path = `scenarios.${i}`;
    return [...mixFindings(scenario, path), ...chamberFindings(scenario, path), ...roughingFindings(scenario, path)];
  });
}
