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

/** A new scenario that starts out as today, at a position of the list or else at its end. */
export function addScenarioLikeToday(plan: Plan, position = plan.scenarios.length): RowGesture {
  const today = plan.scenarios[0];
  const fresh = copyIdentity(plan.scenarios, { id: 'scenario', name: 'Scenario' });
  return {
    command: { kind: 'addScenario', from: today?.id ?? '', ...fresh, position: Math.max(1, position) },
    said: `${fresh.name} starts out as ${today?.name ?? 'today'}; change what differs.`,
    goTo: fresh.id,
  };
}

/** A new scenario that starts out as today, right under another. */
export function insertScenarioBelow(plan: Plan, id: string): RowGesture {
  return addScenarioLikeToday(plan, plan.scenarios.findIndex((scenario) => scenario.id === id) + 1);
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

function movedWords(plan: Plan, ids: readonly string[], position: number): string {
  const others = plan.scenarios.filter((scenario) => !ids.includes(scenario.id));
  const first = position === 0 ? nameOf(plan, ids[0] ?? '') : (others[0]?.name ?? '');
  if (first !== plan.scenarios[0]?.name) return `All rows are now judged against ${first}.`;
  const what = ids.length === 1 ? nameOf(plan, ids[0] ?? '') : countOf(ids.length, 'scenario');
  const isUp = plan.scenarios.findIndex((scenario) => scenario.id === ids[0]) > position;
  return `${what} moved ${isUp ? 'up' : 'down'}.`;
}

/**
 * Moves scenarios, in the order they have, to a position of the list, counted after they are taken out of it. The first row
 * is the one that all others are judged against. Null when they are there already.
 */
export function moveScenariosTo(plan: Plan, ids: readonly string[], position: number): RowGesture | null {
  const others = plan.scenarios.filter((scenario) => !ids.includes(scenario.id));
  const target = Math.max(0, Math.min(others.length, position));
  const [first] = plan.scenarios.filter((scenario) => ids.includes(scenario.id));
  if (!first) return null;
  const isThere = ids.every((id, at) => plan.scenarios[target + at]?.id === id);
  if (isThere) return null;
  const said = movedWords(plan, ids, target);
  return { command: { kind: 'moveScenarios', ids, position: target }, said, goTo: first.id };
}

/**
 * Moves scenarios past the next one that is on screen; null where there is none. @param shownIds ids of the scenarios on
 * screen in the order of the plan, all of them unless some are filtered away
 */
export function moveScenariosBy(
  plan: Plan,
  ids: readonly string[],
  by: 1 | -1,
  shownIds: readonly string[] = plan.scenarios.map((scenario) => scenario.id),
): RowGesture | null {
  const places = ids.map((id) => shownIds.indexOf(id));
  const neighbour = shownIds[by < 0 ? Math.min(...places) - 1 : Math.max(...places) + 1];
  const others = plan.scenarios.filter((scenario) => !ids.includes(scenario.id));
  const position = others.findIndex((scenario) => scenario.id === neighbour);
  return position < 0 ? null : moveScenariosTo(plan, ids, by < 0 ? position : position + 1);
}
