import type { LogEntry } from '../plan-types.ts';
import type { UnnamedEntry } from './read-log-row.ts';

/** Figures are written and read in different units, so equal ones may differ in the third digit. */
function rounded(value: number | null): string {
  return value === null ? '' : value.toPrecision(3);
}

/** Text that is equal for two entries that tell of the same batch or test; notes and highest pressures are left aside. */
export function sameEntryKey(entry: LogEntry | UnnamedEntry): string {
  const { kind, date, chamber } = entry;
  const rest =
    entry.kind === 'batch'
      ? [entry.product, rounded(entry.wet), rounded(entry.dry), rounded(entry.hours)]
      : [rounded(entry.from), rounded(entry.to), rounded(entry.minutes)];
  return [kind, date, chamber, ...rest].join(' | ');
}
