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

/** Steps in one piece of a log: a power of two, so that finding a step is a shift and a mask. */
const PIECE_BITS = 9;
const PIECE = 1 << PIECE_BITS;

/** Every accepted step of a group: LOG_HEAD values of the step, then LOG_SIZE values for each chamber, in pieces of equal size. */
export interface StepLog {
  readonly stride: number;
  readonly pieces: Float64Array[];
  /** The piece that the last appended step lies in. */
  values: Float64Array;
  steps: number;
}

export function stepLog(chambers: number): StepLog {
  const stride = LOG_HEAD + chambers * LOG_SIZE;
  const first = new Float64Array(PIECE * stride);
  return { stride, pieces: [first], values: first, steps: 0 };
}

export function stepCount(log: StepLog): number {
  return log.steps;
}

/** Makes room for one step more in `log.values` and returns where in it its values begin. */
export function appendStep(log: StepLog): number {
  const piece = log.steps >> PIECE_BITS;
  if (piece === log.pieces.length) log.pieces.push(new Float64Array(PIECE * log.stride));
  log.values = log.pieces[piece] as Float64Array;
  const at = (log.steps & (PIECE - 1)) * log.stride;
  log.steps += 1;
  return at;
}

export function stepValue(log: StepLog, step: number, place: number): number {
  const piece = log.pieces[step >> PIECE_BITS] as Float64Array;
  return piece[(step & (PIECE - 1)) * log.stride + place] as number;
}

export function chamberValue(log: StepLog, step: number, chamber: number, place: number): number {
  return stepValue(log, step, LOG_HEAD + chamber * LOG_SIZE + place);
}

/** Forgets every step after the first `count`. */
export function truncateLog(log: StepLog, count: number): void {
  log.steps = count;
}
