import { applyCommand } from '../plan/commands/apply-command.ts';
import type { Command, ScenarioChange } from '../plan/commands/command.ts';
import { commandLabel } from '../plan/commands/command-label.ts';
import { type History, recordStep, redo, startHistory, undo } from '../plan/history.ts';
import { pathOfPlace } from '../plan/place.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { Finding } from '../result.ts';
import type { AppliedEntries } from './apply-entries.ts';
import type { AppliedFields } from './fields/apply-fields.ts';
import { countOf } from './format-number.ts';
import type { SheetState } from './sheet-state.ts';
import type { Waiting } from './waiting-entries.ts';

/** The plan's history, and beside each of its plans the entries that waited to be mended at that point. */
export interface SheetHistory {
  readonly history: History;
  readonly waiting: ReadonlyMap<Plan, Waiting>;
}

/** What a gesture came to: the history after it, and what to tell the user. */
export interface Gesture {
  readonly sheet: SheetHistory;
  readonly said: string;
  readonly done: boolean;
}

/** A history with nothing to undo. @param waiting entries that wait to be mended from before */
export function startSheet(plan: Plan, waiting: Waiting = NOTHING_WAITING): SheetHistory {
  return {
    history: startHistory(plan),
    waiting: kept(startHistory(plan), new Map([[plan, waitingIn({ plan, ...waiting })]])),
  };
}

const NOTHING_WAITING: Waiting = { rejected: [], misread: [] };

/** The plan as it is now, with the entries that wait to be mended. */
export function presentState({ history, waiting }: SheetHistory): SheetState {
  return { plan: history.present, ...(waiting.get(history.present) ?? NOTHING_WAITING) };
}

/** What waits beside plans that are forgotten need not be kept. */
function kept(history: History, waiting: SheetHistory['waiting']): SheetHistory['waiting'] {
  const plans = new Set([history.present, ...[...history.past, ...history.future].map((step) => step.plan)]);
  return new Map(
    [...waiting].filter(([plan, { rejected, misread }]) => plans.has(plan) && rejected.length + misread.length > 0),
  );
}

/** What still waits: entries of scenarios and items that are gone are dropped. */
function waitingIn({ plan, rejected, misread }: SheetState): Waiting {
  const scenarios = new Set(plan.scenarios.map((scenario) => scenario.id));
  return {
    rejected: rejected.filter((entry) => scenarios.has(entry.scenarioId)),
    misread: misread.filter((entry) => pathOfPlace(plan, entry.place) !== null),
  };
}

function record(sheet: SheetHistory, state: SheetState, label: string): SheetHistory {
  const before = presentState(sheet);
  const isSameWaiting = state.rejected === before.rejected && state.misread === before.misread;
  if (state.plan === before.plan && isSameWaiting) return sheet;
  // A step in which only a rejected entry came or went needs a plan object of its own to hang that entry on.
  const plan = state.plan === before.plan ? { ...state.plan } : state.plan;
  const history = recordStep(sheet.history, plan, label);
  return { history, waiting: kept(history, new Map(sheet.waiting).set(plan, waitingIn({ ...state, plan }))) };
}

/** Plans hold plain data only, and edits keep the order of keys. */
function isEqual(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function fieldChanges(before: Scenario, after: Scenario): ScenarioChange[] {
  const fields = Object.keys(after) as (keyof Scenario)[];
  const changed = fields.filter((field) => field !== 'id' && !isEqual(after[field], before[field]));
  return changed.map((field) => ({ scenario: after.id, field, value: after[field] }) as ScenarioChange);
}

/** The changes, field by field, that lead from one plan's scenarios to those of another with the same rows. */
export function scenarioChanges(before: Plan, after: Plan): readonly ScenarioChange[] {
  return after.scenarios.flatMap((scenario, place) => {
    const was = before.scenarios[place];
    return !was || was === scenario ? [] : fieldChanges(was, scenario);
  });
}

function firstWords(findings: readonly Finding[]): string {
  const [first] = findings;
  return first ? `${first.problem} ${first.remedy}` : 'That could not be done.';
}

/** One gesture that is a command, as one step of the history. @param label for the undo button */
export function performCommand(
  sheet: SheetHistory,
  command: Command,
  said: string,
  label = commandLabel(command),
): Gesture {
  const before = presentState(sheet);
  const outcome = applyCommand(before.plan, command);
  if (!outcome.ok) return { sheet, said: firstWords(outcome.error), done: false };
  return { sheet: record(sheet, { ...before, plan: outcome.value }, label), said, done: true };
}

/** One gesture that wrote into cells, as one step of the history. */
export function performEntries(sheet: SheetHistory, applied: AppliedEntries): Gesture {
  const before = presentState(sheet);
  const changes = scenarioChanges(before.plan, applied.state.plan);
  const command = { kind: 'setScenarioFields', changes } as const;
  const outcome = changes.length === 0 ? { ok: true as const, value: before.plan } : applyCommand(before.plan, command);
  if (!outcome.ok) return { sheet, said: firstWords(outcome.error), done: false };
  const label = changes.length === 0 ? `mark ${countOf(applied.rejected, 'cell')}` : commandLabel(command);
  const after = { ...before, plan: outcome.value, rejected: applied.state.rejected };
  return { sheet: record(sheet, after, label), said: applied.said, done: applied.rejected === 0 };
}

/** One gesture over fields of the catalogues, as one step of the history. */
export function performFields(sheet: SheetHistory, applied: AppliedFields): Gesture {
  const { state, taken, refused, said } = applied;
  const label = taken > 0 ? `change ${countOf(taken, 'cell')}` : `mark ${countOf(refused, 'cell')}`;
  return { sheet: record(sheet, state, label), said, done: refused === 0 };
}

/** A new state as one step of the history. @param label for the undo button */
export function performState(sheet: SheetHistory, state: SheetState, label: string, said: string): Gesture {
  return { sheet: record(sheet, state, label), said, done: true };
}

/** Another plan in the place of this one, as one step that can be undone. */
export function replacePlan(
  sheet: SheetHistory,
  plan: Plan,
  label: string,
  said: string,
  waiting: Waiting = NOTHING_WAITING,
): Gesture {
  return { sheet: record(sheet, { plan, ...waiting }, label), said, done: true };
}

/** One gesture back. */
export function undoGesture(sheet: SheetHistory): Gesture {
  const step = sheet.history.past.at(-1);
  if (!step) return { sheet, said: 'There is nothing to undo.', done: false };
  return { sheet: { ...sheet, history: undo(sheet.history) }, said: `Undone: ${step.label}.`, done: true };
}

/** One undone gesture forward again. */
export function redoGesture(sheet: SheetHistory): Gesture {
  const step = sheet.history.future[0];
  if (!step) return { sheet, said: 'There is nothing to redo.', done: false };
  return { sheet: { ...sheet, history: redo(sheet.history) }, said: `Done again: ${step.label}.`, done: true };
}
