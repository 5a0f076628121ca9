import type { Finding } from '../../result.ts';
import type { LogEntry, Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** What is wrong with one entry as a whole. */
export function logEntryFindings(entry: LogEntry, path: string): readonly Finding[] {
  if (entry.kind === 'batch') {
    if (entry.dry <= entry.wet) return [];
    const problem = 'The batch came out heavier than it went in.';
    return [planError(`${path}.dry`, `${entry.dry} kg`, problem, 'Check the two weights; they may be swapped.')];
  }
  if (entry.to >= entry.from) return [];
  const problem = 'The pressure fell while the valve was shut.';
  return [planError(`${path}.to`, `${entry.to} Pa`, problem, 'Check the two readings; they may be swapped.')];
}

/** Logged batches lose weight, and pressure rises in a pressure-rise test. */
export function logRule(plan: Plan): readonly Finding[] {
  return plan.batchLog.flatMap((entry, i) => logEntryFindings(entry, `batchLog.${i}`));
}
