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
  /** Room for steps; only the first `steps`·`stride` values count. */
  values: Float64Array;
  steps: number;
}

const FIRST_ROOM = 512;

export function stepLog(chambers: number): StepLog {
  const stride = LOG_HEAD + chambers * LOG_SIZE;
  return { stride, values: new Float64Array(FIRST_ROOM * stride), steps: 0 };
}

export function stepCount(log: StepLog): number {
  return log.steps;
}

/** Makes room for one step more and returns where its values begin. */
export function appendStep(log: StepLog): number {
  const at = log.steps * log.stride;
  if (at === log.values.length) {
    const larger = new Float64Array(2 * log.values.length);
    larger.set(log.values);
    log.values = larger;
  }
  log.steps += 1;
  return at;
}

export function stepValue(log: StepLog, step: number, place: number): number {
  return log.values[step * log.stride + place] as number;
}

export function chamberValue(log: StepLog, step: number, chamber: number, place: number): number {
  return log.values[step * log.stride + LOG_HEAD + chamber * LOG_SIZE + place] as number;
}

/** Forgets every step after the first `count`. */
export function truncateLog(log: StepLog, count: number): void {
  log.steps = count;
}
