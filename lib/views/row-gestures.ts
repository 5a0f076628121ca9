import type { Command } from '../plan/commands/command.ts';
import { copyIdentity } from '../plan/commands/fresh-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { countOf } from './format-number.ts';

/** A command with the words for what it does, and the scenario to go to afterwards. */
export interface RowGesture {
  readonly command: Command;
  readonly said: string;
  readonly goTo: string;
}

function nameOf(plan: Plan, id: string): string {
  return plan.scenarios.find((scenario) => scenario.id === id)?.name ?? id;
}

/** A copy of a scenario right under it. */
export function duplicateScenario(plan: Plan, id: string): RowGesture {
  const from = nameOf(plan, id);
  const copy = copyIdentity(plan.scenarios, { id, name: from });
  return {
    command: { kind: 'addScenario', from: id, ...copy },
    said: `${copy.name} is a copy of ${from}.`,
    goTo: copy.id,
  };
}

/** A new scenario at the end that starts out as today. */
export function addScenarioLikeToday(plan: Plan): RowGesture {
  const today = plan.scenarios[0];
  const fresh = copyIdentity(plan.scenarios, { id: 'scenario', name: 'Scenario' });
  return {
    command: { kind: 'addScenario', from: today?.id ?? '', ...fresh },
    said: `${fresh.name} starts out as ${today?.name ?? 'today'}; change what differs.`,
    goTo: fresh.id,
  };
}

/** Removes scenarios; the one that takes the place of the first of them is gone to. */
export function deleteScenarios(plan: Plan, ids: readonly string[]): RowGesture {
  const left = plan.scenarios.filter((scenario) => !ids.includes(scenario.id));
  const place = plan.scenarios.findIndex((scenario) => ids.includes(scenario.id));
  const what = ids.length === 1 ? nameOf(plan, ids[0] ?? '') : countOf(ids.length, 'scenario');
  return {
    command: { kind: 'removeScenarios', ids },
    said: `${what} removed. Undo brings it back.`,
    goTo: (left[place] ?? left.at(-1))?.id ?? '',
  };
}

/** Moves a scenario one row up or down; the first row is the one that all others are judged against. */
export function moveScenarioBy(plan: Plan, id: string, by: 1 | -1): RowGesture | null {
  const place = plan.scenarios.findIndex((scenario) => scenario.id === id);
  const position = place + by;
  if (place < 0 || position < 0 || position >= plan.scenarios.length) return null;
  const first = position === 0 ? id : place === 0 ? plan.scenarios[1]?.id : undefined;
  const said =
    first === undefined
      ? `${nameOf(plan, id)} moved ${by < 0 ? 'up' : 'down'}.`
      : `All rows are now judged against ${nameOf(plan, first)}.`;
  return { command: { kind: 'moveScenario', id, position }, said, goTo: id };
}
