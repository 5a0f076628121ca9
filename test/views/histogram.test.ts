import { describe, expect, it } from 'vitest';
import { histogram } from '../../lib/views/histogram.ts';

describe('histogram', () => {
  it('counts every value once, in equal bins with round ends', () => {
    const values = [1.2, 3.9, 4.1, 7, 7.5, 9.99, -2.3];
    const bins = histogram(values, 6);
    expect(bins.reduce((sum, bin) => sum + bin.count, 0)).toBe(values.length);
    for (const { from, to, count } of bins) {
      expect(values.filter((value) => value >= from && value < to)).toHaveLength(count);
      expect(to - from).toBeCloseTo(2.5, 9);
    }
  });

  it('has one bin for values that are all the same, and none for none', () => {
    expect(histogram([5, 5, 5], 10).map((bin) => bin.count)).toEqual([3]);
    expect(histogram([0], 10).map((bin) => bin.count)).toEqual([1]);
    expect(histogram([], 10)).toEqual([]);
  });

  it('puts a value on an edge into the bin that begins there', () => {
    const bins = histogram([0, 1, 2, 3], 3);
    expect(bins.map((bin) => [bin.from, bin.count])).toEqual([
      [0, 1],
      [1, 1],
      [2, 1],
      [3, 1],
    ]);
  });
});
