import type { LogEntry } from '../plan-types.ts';
import type { UnnamedEntry } from './read-log-row.ts';

/** Entries with ids that no entry of the log has yet. */
export function withLogIds(entries: readonly UnnamedEntry[], log: readonly LogEntry[]): readonly LogEntry[] {
  const taken = new Set(log.map((entry) => entry.id));
  let number = log.length;
  return entries.map((entry) => {
    do number += 1;
    while (taken.has(`log-${number}`));
    return { ...entry, id: `log-${number}` } as LogEntry;
  });
}
