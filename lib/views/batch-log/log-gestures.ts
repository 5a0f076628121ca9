import type { Command } from '../../plan/commands/command.ts';
import type { LogImport } from '../../plan/log-text/import-log.ts';
import type { LogEntry, Plan } from '../../plan/plan-types.ts';
import { countOf } from '../format-number.ts';

/** A command and what is said when it is done. */
export interface LogGesture {
  readonly command: Command;
  readonly said: string;
}

function nameOf(plan: Plan, entry: LogEntry): string {
  if (entry.kind === 'pressureRise') return `The test of ${entry.date}`;
  return `${plan.products.find(({ id }) => id === entry.product)?.name ?? 'The batch'} of ${entry.date}`;
}

/** Writes an entry into the log, in the place of the one with its id or at the end. */
export function logEntryGesture(plan: Plan, entry: LogEntry): LogGesture {
  const place = plan.batchLog.findIndex(({ id }) => id === entry.id);
  const said = `${nameOf(plan, entry)} is ${place < 0 ? 'in the log' : 'changed'}.`;
  if (place < 0) return { command: { kind: 'addLogEntries', entries: [entry] }, said };
  return { command: { kind: 'setValues', changes: [{ path: `batchLog.${place}`, value: entry }] }, said };
}

/** Takes an entry out of the log. */
export function forgetEntryGesture(plan: Plan, id: string): LogGesture {
  const entry = plan.batchLog.find((candidate) => candidate.id === id);
  const said = `${entry ? nameOf(plan, entry) : 'The entry'} is out of the log. Undo brings it back.`;
  return { command: { kind: 'removeLogEntries', ids: [id] }, said };
}

/** Brings what an import has found into the log, all at once. */
export function importGesture({ entries, known, leftOut }: LogImport): LogGesture {
  const rest = [
    ...(known.length > 0 ? [`${countOf(known.length, 'row')} known already`] : []),
    ...(leftOut.length > 0 ? [`${countOf(leftOut.length, 'row')} left out`] : []),
  ];
  const said = `${countOf(entries.length, 'entry', 'entries')} came into the log${rest.map((words) => `, ${words}`).join('')}.`;
  return { command: { kind: 'addLogEntries', entries }, said };
}
