import type { Plan } from './plan-types.ts';

/** Steps kept; older ones are forgotten. Steps share all that they do not change, so each is small. */
const LONGEST = 200;

/** One gesture of the user and the plan on the other side of it. */
export interface HistoryStep {
  readonly label: string;
  readonly plan: Plan;
}

/** The plan with what was done to it and what was undone. */
export interface History {
  /** Oldest first; each step holds the plan before it. */
  readonly past: readonly HistoryStep[];
  readonly present: Plan;
  /** Next first; each step holds the plan after it. */
  readonly future: readonly HistoryStep[];
}

/** A history with nothing to undo. */
export function startHistory(plan: Plan): History {
  return { past: [], present: plan, future: [] };
}

/** The history after one more gesture; what had been undone is forgotten. Nothing happens when the plan is the same one. */
export function recordStep(history: History, plan: Plan, label: string): History {
  if (plan === history.present) return history;
  const past = [...history.past, { label, plan: history.present }].slice(-LONGEST);
  return { past, present: plan, future: [] };
}

/** One gesture back; the same history when there is none. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  const future = [{ label: step.label, plan: history.present }, ...history.future];
  return { past: history.past.slice(0, -1), present: step.plan, future };
}

/** One undone gesture forward again; the same history when there is none. */
export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (!step) return history;
  return { past: [...history.past, { label: step.label, plan: history.present }], present: step.plan, future };
}
