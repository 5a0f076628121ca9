/** Values logged per chamber and step. */
export const LOG_LOST = 0;
export const LOG_PUMPED = 1;
export const LOG_HEAT = 2;
export const LOG_PRESSURE = 3;
export const LOG_GAS = 4;
export const LOG_LIMIT = 5;
export const LOG_DRIED = 6;
export const LOG_HOSE = 7;
export const LOG_SIZE = 8;

/** Values logged per step. */
export const LOG_START = 0;
export const LOG_END = 1;
export const LOG_MANIFOLD = 2;
export const LOG_VAPOUR = 3;
export const LOG_HEAD = 4;

/** Every accepted step of a group, flat: LOG_HEAD values of the step, then LOG_SIZE values for each chamber. */
export interface StepLog {
  readonly stride: number;
  readonly values: number[];
}

export function stepLog(chambers: number): StepLog {
  return { stride: LOG_HEAD + chambers * LOG_SIZE, values: [] };
}

export function stepCount(log: StepLog): number {
  return log.values.length / log.stride;
}

export function stepValue(log: StepLog, step: number, place: number): number {
  return log.values[step * log.stride + place] as number;
}

export function chamberValue(log: StepLog, step: number, chamber: number, place: number): number {
  return log.values[step * log.stride + LOG_HEAD + chamber * LOG_SIZE + place] as number;
}

/** Forgets every step after the first `count`. */
export function truncateLog(log: StepLog, count: number): void {
  log.values.length = count * log.stride;
}
