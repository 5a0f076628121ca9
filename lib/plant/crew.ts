import type { CrewSpec, ShiftSpec, TaskName } from './types.ts';

export const DAY = 86_400;
export const WEEK = 7 * DAY;

/** One person-slot pool: a shift as it falls in one week. */
export interface ShiftPool {
  readonly start: number;
  readonly end: number;
  readonly people: number;
  busy: number;
}

/** Hands-on time of a task for a load [s]. */
export function taskTime(crew: CrewSpec, task: TaskName, wet: number): number {
  const { perBatch, perKilogram } = crew.tasks[task];
  return perBatch + perKilogram * wet;
}

/** The longest stretch one person is there in one go [s]; nights are entered as two shifts, so two weeks are looked at. */
export function longestShift(crew: CrewSpec): number {
  return shiftPools(crew, 2).reduce((longest, pool) => Math.max(longest, pool.end - pool.start), 0);
}

/** People-time on shift in a week [s]. */
export function onShiftTime(crew: CrewSpec): number {
  return crew.shifts.reduce((sum, shift) => sum + shift.people * (shift.end - shift.start), 0);
}

function poolIn(shift: ShiftSpec, week: number): ShiftPool {
  const midnight = week * WEEK + shift.weekday * DAY;
  return { start: midnight + shift.start, end: midnight + shift.end, people: shift.people, busy: 0 };
}

/** Joins a shift that ends at midnight with one of as many people that begins there: they are the same people. */
function joinNights(pools: readonly ShiftPool[]): ShiftPool[] {
  const joined: ShiftPool[] = [];
  for (const pool of pools) {
    const atMidnight = pool.start % DAY === 0;
    const index = joined.findIndex(
      (evening) => atMidnight && evening.end === pool.start && evening.people === pool.people,
    );
    if (index < 0) joined.push(pool);
    else joined[index] = { ...pool, start: (joined[index] as ShiftPool).start };
  }
  return joined;
}

/** Every shift of the first `weeks` weeks, in order of start; those that meet at midnight are one. */
export function shiftPools(crew: CrewSpec, weeks: number): ShiftPool[] {
  const pools: ShiftPool[] = [];
  for (let week = 0; week < weeks; week += 1) {
    for (const shift of crew.shifts) if (shift.people > 0) pools.push(poolIn(shift, week));
  }
  return joinNights(pools.sort((a, b) => a.start - b.start || a.end - b.end));
}

/** A shift with somebody free now who can finish a task of `duration` before going home; undefined when there is none. */
export function freePool(pools: readonly ShiftPool[], now: number, duration: number): ShiftPool | undefined {
  return pools.find((pool) => pool.start <= now && now + duration <= pool.end && pool.busy < pool.people);
}
