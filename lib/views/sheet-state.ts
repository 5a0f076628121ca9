import type { Plan } from '../plan/plan-types.ts';

/** An entry that could not be taken up: it stays in its cell, and the plan keeps the value it had. */
export interface RejectedEntry {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly text: string;
  readonly problem: string;
  readonly remedy: string;
}

/** What undo and redo go back and forth over: the plan, and the entries that wait to be mended. */
export interface SheetState {
  readonly plan: Plan;
  readonly rejected: readonly RejectedEntry[];
}

/** The entry waiting in a cell; undefined when the cell is in order. */
export function rejectedAt(state: SheetState, scenarioId: string, columnId: string): RejectedEntry | undefined {
  return state.rejected.find((entry) => entry.scenarioId === scenarioId && entry.columnId === columnId);
}
