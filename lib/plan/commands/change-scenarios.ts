import { fail, succeed } from '../../result.ts';
import type { Plan, Scenario } from '../plan-types.ts';
import { planError } from '../rules/plan-error.ts';
import type { ScenarioChange } from './command.ts';
import type { PlanChange } from './plan-change.ts';

function withScenarios(plan: Plan, scenarios: readonly Scenario[]): PlanChange {
  return succeed({ ...plan, scenarios });
}

function unknownScenario(id: string): PlanChange {
  return fail([planError('scenarios', id, `There is no scenario "${id}".`, 'Choose one that is in the sheet.')]);
}

function positionOf(plan: Plan, id: string): number {
  return plan.scenarios.findIndex((scenario) => scenario.id === id);
}

/** The plan with fields of scenarios set; scenarios that are not touched stay the same objects. */
export function setScenarioFields(plan: Plan, changes: readonly ScenarioChange[]): PlanChange {
  const scenarios = [...plan.scenarios];
  for (const { scenario, field, value } of changes) {
    const position = positionOf(plan, scenario);
    const current = scenarios[position];
    if (!current) return unknownScenario(scenario);
    scenarios[position] = { ...current, [field]: value };
  }
  return withScenarios(plan, scenarios);
}

interface NewScenario {
  readonly from: string;
  readonly id: string;
  readonly name: string;
  readonly position?: number;
}

/** The plan with a copy of a scenario, right after it or at a position of the list. */
export function addScenario(plan: Plan, { from, id, name, position }: NewScenario): PlanChange {
  const place = positionOf(plan, from);
  const original = plan.scenarios[place];
  if (!original) return unknownScenario(from);
  return withScenarios(plan, plan.scenarios.toSpliced(position ?? place + 1, 0, { ...original, id, name }));
}

/** The plan with a scenario made elsewhere, at a position of the list or at its end; position 0 is today's and stays. */
export function insertScenario(plan: Plan, scenario: Scenario, position = plan.scenarios.length): PlanChange {
  return withScenarios(plan, plan.scenarios.toSpliced(Math.max(1, position), 0, scenario));
}

/** The plan without some scenarios. The first is the shop as it is, which the others are judged against, and stays. */
export function removeScenarios(plan: Plan, ids: readonly string[]): PlanChange {
  const missing = ids.find((id) => positionOf(plan, id) < 0);
  if (missing !== undefined) return unknownScenario(missing);
  const [today, ...others] = plan.scenarios;
  if (today && ids.includes(today.id)) {
    const problem = 'The first scenario is the shop as it is today; the others are judged against it.';
    return fail([planError('scenarios.0', today.name, problem, 'Move another scenario to the top first.')]);
  }
  return withScenarios(plan, today ? [today, ...others.filter((scenario) => !ids.includes(scenario.id))] : []);
}

/** The plan with scenarios moved, in the order they have, to a position of the list, which is kept within its ends. */
export function moveScenarios(plan: Plan, ids: readonly string[], position: number): PlanChange {
  const missing = ids.find((id) => positionOf(plan, id) < 0);
  if (missing !== undefined) return unknownScenario(missing);
  const moved = plan.scenarios.filter((scenario) => ids.includes(scenario.id));
  const others = plan.scenarios.filter((scenario) => !ids.includes(scenario.id));
  const target = Math.min(Math.max(0, Math.trunc(position)), others.length);
  const next = others.toSpliced(target, 0, ...moved);
  return next.every((scenario, at) => scenario === plan.scenarios[at]) ? succeed(plan) : withScenarios(plan, next);
}
