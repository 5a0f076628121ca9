import type { Place } from '../plan/place.ts';
import type { Plan } from '../plan/plan-types.ts';

/** An entry that could not be taken up: it stays in its cell, and the plan keeps the value it had. */
export interface RejectedEntry {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly text: string;
  readonly problem: string;
  readonly remedy: string;
}

/** A text for a field outside the scenarios that could not be taken up; it waits in its cell in the same way. */
export interface MisreadField {
  readonly place: Place;
  readonly text: string;
  readonly problem: string;
  readonly remedy: string;
}

/** What undo and redo go back and forth over: the plan, and the entries that wait to be mended. */
export interface SheetState {
  readonly plan: Plan;
  readonly rejected: readonly RejectedEntry[];
  readonly misread: readonly MisreadField[];
}

/** The entry waiting in a cell; undefined when the cell is in order. */
export function rejectedAt(state: SheetState, scenarioId: string, columnId: string): RejectedEntry | undefined {
  return state.rejected.find((entry) => entry.scenarioId === scenarioId && entry.columnId === columnId);
}
