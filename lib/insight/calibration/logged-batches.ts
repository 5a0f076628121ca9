import { baseValues } from '../../inputs/base-values.ts';
import type { LogEntry, Plan } from '../../plan/plan-types.ts';

/** One finished batch in SI units. */
export interface LoggedBatch {
  readonly id: string;
  readonly date: string;
  readonly chamber: string;
  readonly product: string;
  /** [kg] */
  readonly wet: number;
  /** [kg] */
  readonly dry: number;
  /** From the start of the vacuum until it was dry [s]. */
  readonly time: number;
  /** [Pa]; null when nobody looked. */
  readonly highestPressure: number | null;
}

/** One pressure-rise test in SI units. */
export interface RiseTest {
  readonly id: string;
  readonly date: string;
  readonly chamber: string;
  /** Pressures at the start and the end [Pa]. */
  readonly from: number;
  readonly to: number;
  /** [s] */
  readonly time: number;
}

function batchOf(entry: LogEntry): LoggedBatch[] {
  if (entry.kind !== 'batch') return [];
  const { id, date, chamber, product } = entry;
  const { wet, dry, hours, highestPressure } = baseValues('loggedBatch', entry);
  return [{ id, date, chamber, product, wet, dry, time: hours, highestPressure }];
}

function testOf(entry: LogEntry): RiseTest[] {
  if (entry.kind !== 'pressureRise') return [];
  const { id, date, chamber } = entry;
  const { from, to, minutes } = baseValues('pressureRise', entry);
  return [{ id, date, chamber, from, to, time: minutes }];
}

/** The batches of the log, in its order. */
export function loggedBatches(plan: Plan): readonly LoggedBatch[] {
  return plan.batchLog.flatMap(batchOf);
}

/** The pressure-rise tests of the log, in its order. */
export function riseTests(plan: Plan): readonly RiseTest[] {
  return plan.batchLog.flatMap(testOf);
}
