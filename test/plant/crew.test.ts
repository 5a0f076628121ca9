import { describe, expect, it } from 'vitest';
import { DAY, freePool, longestShift, onShiftTime, shiftPools, taskTime, WEEK } from '../../lib/plant/crew.ts';
import type { CrewSpec, ShiftSpec } from '../../lib/plant/types.ts';
import { DAY_CREW, FULL_CREW } from './sample-shop.ts';

const HOUR = 3600;

function crewOf(...shifts: readonly ShiftSpec[]): CrewSpec {
  return { shifts, tasks: DAY_CREW.tasks };
}

function shift(weekday: number, from: number, to: number, people = 1): ShiftSpec {
  return { weekday, start: from * HOUR, end: to * HOUR, people };
}

describe('taskTime', () => {
  it('has a part per batch and a part per kilogram', () => {
    expect(taskTime(DAY_CREW, 'load', 12)).toBe(1500 + 12 * 240);
  });
});

describe('shiftPools', () => {
  it('puts every shift of every week in order of time', () => {
    const pools = shiftPools(crewOf(shift(2, 7, 15), shift(0, 7, 15, 2)), 2);
    expect(pools.map((pool) => [pool.start / HOUR, pool.end / HOUR, pool.people])).toEqual([
      [7, 15, 2],
      [55, 63, 1],
      [175, 183, 2],
      [223, 231, 1],
    ]);
  });

  it('takes a night entered as two shifts for one', () => {
    const pools = shiftPools(crewOf(shift(0, 22, 24), shift(1, 0, 6)), 1);
    expect(pools).toEqual([{ start: 22 * HOUR, end: 30 * HOUR, people: 1, busy: 0 }]);
  });

  it('does not join shifts that meet in the day, or at midnight with other people', () => {
    expect(shiftPools(crewOf(shift(0, 6, 14), shift(0, 14, 22)), 1)).toHaveLength(2);
    expect(shiftPools(crewOf(shift(0, 18, 24, 2), shift(1, 0, 6, 1)), 1)).toHaveLength(2);
  });

  it('joins the night from Sunday to Monday', () => {
    const pools = shiftPools(crewOf(shift(6, 22, 24), shift(0, 0, 6)), 2);
    expect(pools.map((pool) => pool.end - pool.start)).toEqual([6 * HOUR, 8 * HOUR, 2 * HOUR]);
  });

  it('joins days and nights to one stretch, and leaves out shifts without people', () => {
    expect(shiftPools(FULL_CREW, 3)).toEqual([{ start: 0, end: 3 * WEEK, people: 40, busy: 0 }]);
    expect(shiftPools(crewOf(shift(0, 7, 15, 0)), 3)).toEqual([]);
  });
});

describe('longestShift and onShiftTime', () => {
  it('count a night as one stretch and every person once', () => {
    const crew = crewOf(shift(0, 7, 15, 2), shift(3, 20, 24), shift(4, 0, 7));
    expect(longestShift(crew)).toBe(11 * HOUR);
    expect(onShiftTime(crew)).toBe((16 + 11) * HOUR);
    expect(longestShift(crewOf())).toBe(0);
  });
});

describe('freePool', () => {
  const pools = shiftPools(crewOf(shift(0, 7, 15)), 1);
  const [pool] = pools;

  it('gives nobody before the shift, after it, or when the task would outlast it', () => {
    expect(freePool(pools, 6 * HOUR, HOUR)).toBeUndefined();
    expect(freePool(pools, 7 * HOUR, 8 * HOUR)).toBe(pool);
    expect(freePool(pools, 14 * HOUR + 1, HOUR)).toBeUndefined();
    expect(freePool(pools, DAY, HOUR)).toBeUndefined();
  });

  it('gives nobody when everybody is busy', () => {
    expect(freePool([{ start: 0, end: DAY, people: 2, busy: 2 }], 0, HOUR)).toBeUndefined();
    expect(freePool([{ start: 0, end: DAY, people: 2, busy: 1 }], 0, HOUR)).toBeDefined();
  });
});
