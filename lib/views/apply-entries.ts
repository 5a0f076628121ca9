import type { Scenario } from '../plan/plan-types.ts';
import type { EntryColumn } from './entry-column.ts';
import { countOf } from './format-number.ts';
import { withUnit } from './format-quantity.ts';
import { type RejectedEntry, rejectedAt, type SheetState } from './sheet-state.ts';

/** A text for one cell. */
export interface CellEntry {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly text: string;
}

export interface AppliedEntries {
  readonly state: SheetState;
  readonly taken: number;
  readonly rejected: number;
  /** What the gesture did, in one sentence. */
  readonly said: string;
}

function withScenario(state: SheetState, scenario: Scenario): SheetState {
  const scenarios = state.plan.scenarios.map((other) => (other.id === scenario.id ? scenario : other));
  return { ...state, plan: { ...state.plan, scenarios } };
}

function withoutRejected(state: SheetState, scenarioId: string, columnId: string): SheetState {
  if (!rejectedAt(state, scenarioId, columnId)) return state;
  const keep = (entry: RejectedEntry) => entry.scenarioId !== scenarioId || entry.columnId !== columnId;
  return { ...state, rejected: state.rejected.filter(keep) };
}

function scenarioOf(state: SheetState, id: string): Scenario | undefined {
  return state.plan.scenarios.find((scenario) => scenario.id === id);
}

interface Step {
  readonly state: SheetState;
  readonly fault: RejectedEntry | null;
}

function applyOne(state: SheetState, entry: CellEntry, columns: readonly EntryColumn[]): Step {
  const scenario = scenarioOf(state, entry.scenarioId);
  const column = columns.find((candidate) => candidate.id === entry.columnId);
  if (!scenario || !column) return { state, fault: null };
  const cleared = withoutRejected(state, entry.scenarioId, entry.columnId);
  const edited = column.edit(scenario, entry.text);
  if (edited.ok) return { state: withScenario(cleared, edited.value), fault: null };
  const fault = { ...entry, ...edited.error };
  return { state: { ...cleared, rejected: [...cleared.rejected, fault] }, fault };
}

/** "Pump type: good pump", and how a text was understood when the cell does not show it as it was typed. */
function saidOfOne(state: SheetState, entry: CellEntry, columns: readonly EntryColumn[]): string {
  const scenario = scenarioOf(state, entry.scenarioId);
  const column = columns.find((candidate) => candidate.id === entry.columnId);
  if (!scenario || !column) return 'Nothing was changed.';
  const text = column.text(scenario);
  const shown = withUnit(text, column.unit);
  const typed = entry.text.trim();
  const asTyped = typed === text || typed === column.plainText(scenario);
  const understood = asTyped ? '' : ` (understood from "${typed}")`;
  return `${scenario.name}, ${column.label.toLowerCase()}: ${shown}${understood}.`;
}

function saidOf(done: AppliedEntries, last: CellEntry | undefined, columns: readonly EntryColumn[]): string {
  const fault = done.state.rejected.at(-1);
  if (done.taken + done.rejected === 1 && last) {
    return done.rejected === 1 && fault ? `${fault.problem} ${fault.remedy}` : saidOfOne(done.state, last, columns);
  }
  const taken = `${countOf(done.taken, 'cell')} changed`;
  return done.rejected === 0 ? `${taken}.` : `${taken}, ${done.rejected} not understood: they are marked.`;
}

/**
 * Takes up texts for cells, all in one gesture. A text that is not understood stays in its cell with what is wrong and
 * what mends it; the others are taken up all the same.
 */
export function applyEntries(
  state: SheetState,
  entries: readonly CellEntry[],
  columns: readonly EntryColumn[],
): AppliedEntries {
  let current = state;
  let rejected = 0;
  for (const entry of entries) {
    const step = applyOne(current, entry, columns);
    current = step.state;
    if (step.fault) rejected += 1;
  }
  const done = { state: current, taken: entries.length - rejected, rejected, said: '' };
  return { ...done, said: saidOf(done, entries.at(-1), columns) };
}

/** A cell by scenario and column. */
export type CellName = Omit<CellEntry, 'text'>;

interface Emptied {
  readonly state: SheetState;
  readonly changed: boolean;
}

function emptyOne(state: SheetState, { scenarioId, columnId }: CellName, columns: readonly EntryColumn[]): Emptied {
  const scenario = scenarioOf(state, scenarioId);
  const column = columns.find((candidate) => candidate.id === columnId);
  if (!scenario || !column) return { state, changed: false };
  if (rejectedAt(state, scenarioId, columnId)) {
    return { state: withoutRejected(state, scenarioId, columnId), changed: true };
  }
  const emptied = column.emptied(scenario);
  return emptied ? { state: withScenario(state, emptied), changed: true } : { state, changed: false };
}

/** Empties cells: an entry that was not understood is dropped, anything else goes back to its usual value. */
export function emptyCells(
  state: SheetState,
  cells: readonly CellName[],
  columns: readonly EntryColumn[],
): AppliedEntries {
  let current = state;
  let taken = 0;
  for (const cell of cells) {
    const step = emptyOne(current, cell, columns);
    current = step.state;
    if (step.changed) taken += 1;
  }
  const left = cells.length - taken;
  const kept = left === 0 ? '' : ` ${countOf(left, 'cell')} cannot be empty.`;
  return { state: current, taken, rejected: 0, said: `${countOf(taken, 'cell')} set back.${kept}` };
}
