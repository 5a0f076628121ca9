import { describe, expect, it } from 'vitest';
import { isSameData, keepSame } from '../../lib/views/keep-same.ts';

describe('keepSame', () => {
  const before = [{ id: 1 }, { id: 2 }];

  it('is the list before when nothing has changed', () => {
    expect(keepSame(before, [{ id: 1 }, { id: 2 }], isSameData)).toBe(before);
  });

  it('keeps the items that are as before and takes the others', () => {
    const next = keepSame(before, [{ id: 1 }, { id: 3 }], isSameData);
    expect(next[0]).toBe(before[0]);
    expect(next).toEqual([{ id: 1 }, { id: 3 }]);
  });

  it('sees a list that has grown or shrunk', () => {
    expect(keepSame(before, [{ id: 1 }], isSameData)).toEqual([{ id: 1 }]);
    expect(keepSame(before, [...before, { id: 3 }], isSameData)).toHaveLength(3);
  });
});
