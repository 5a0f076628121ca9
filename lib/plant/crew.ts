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

/** The longest stretch one person is there in one go [s]. */
export function longestShift(crew: CrewSpec): number {
  return crew.shifts.reduce((longest, shift) => Math.max(longest, shift.people > 0 ? shift.end - shift.start : 0), 0);
}

/** People-time on shift in a week [s]. */
export function onShiftTime(crew: CrewSpec): number {
  return crew.shifts.reduce((sum, shift) => sum + shift.people * (shift.end - shift.start), 0);
}

function poolIn(shift: ShiftSpec, week: number): ShiftPool {
  const midnight = week * WEEK + shift.weekday * DAY;
  return { start: midnight + shift.start, end: midnight + shift.end, people: shift.people, busy: 0 };
}

/** Every shift of the first `weeks` weeks, in order of start. */
export function shiftPools(crew: CrewSpec, weeks: number): ShiftPool[] {
  const pools: ShiftPool[] = [];
  for (let week = 0; week < weeks; week += 1) {
    for (const shift of crew.shifts) if (shift.people > 0) pools.push(poolIn(shift, week));
  }
  return pools.sort((a, b) => a.start - b.start || a.end - b.end);
}

/** A shift with somebody free now who can finish a task of `duration` before going home; undefined when there is none. */
export function freePool(pools: readonly ShiftPool[], now: number, duration: number): ShiftPool | undefined {
  return pools.find((pool) => pool.start <= now && now + duration <= pool.end && pool.busy < pool.people);
}
