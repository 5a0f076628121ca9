import type { Command } from '../plan/commands/command.ts';
import { LIMITS } from '../plan/limits.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';

/** The note on a cell; empty when there is none. */
export function noteOn(scenario: Scenario, columnId: string): string {
  return Object.hasOwn(scenario.notes, columnId) ? (scenario.notes[columnId] ?? '') : '';
}

export interface NoteGesture {
  readonly command: Command;
  readonly said: string;
}

function withNote(notes: Scenario['notes'], columnId: string, text: string): Scenario['notes'] {
  const others = Object.entries(notes).filter(([id]) => id !== columnId);
  return Object.fromEntries(text === '' ? others : [...others, [columnId, text]]);
}

/** Writes a note on a cell, or takes it away when the text is blank. Null when nothing would change. */
export function writeNote(
  plan: Plan,
  cell: { readonly scenarioId: string; readonly columnId: string },
  text: string,
): NoteGesture | null {
  const scenario = plan.scenarios.find((candidate) => candidate.id === cell.scenarioId);
  const note = text.trim().slice(0, LIMITS.cellNote);
  if (!scenario || note === noteOn(scenario, cell.columnId)) return null;
  const value = withNote(scenario.notes, cell.columnId, note);
  return {
    command: { kind: 'setScenarioFields', changes: [{ scenario: scenario.id, field: 'notes', value }] },
    said: `${scenario.name}: note ${note === '' ? 'removed' : 'written'}.`,
  };
}
