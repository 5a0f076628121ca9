import { describe, expect, it } from 'vitest';
import { debtServiceCover } from '../../lib/finance/debt-service-cover.ts';

const months = (count: number, value: number) => new Array<number>(count).fill(value);

describe('debtServiceCover', () => {
  it('gives a ratio for each year and the worst twelve months running', () => {
    const earnings = [...months(12, 200), ...months(6, 100), ...months(6, 300)];
    const cover = debtServiceCover(earnings, months(24, 100));
    expect(cover.byYear).toEqual([2, 2]);
    expect(cover.lowest).toBeCloseTo(1.5, 12);
    expect(cover.lowestEndsIn).toBe(17);
  });

  it('is null where nothing is due', () => {
    const cover = debtServiceCover(months(24, 100), [...months(12, 0), ...months(12, 50)]);
    expect(cover.byYear).toEqual([null, 2]);
    expect(debtServiceCover(months(24, 100), months(24, 0))).toEqual({
      byYear: [null, null],
      lowest: null,
      lowestEndsIn: null,
    });
  });

  it('leaves a broken last year to the trailing figure', () => {
    const cover = debtServiceCover([...months(12, 100), ...months(3, 0)], months(15, 50));
    expect(cover.byYear).toEqual([2]);
    expect(cover.lowest).toBeCloseTo(1.5, 12);
  });

  it('can be negative, and refuses series that do not match', () => {
    expect(debtServiceCover(months(12, -50), months(12, 100)).lowest).toBe(-0.5);
    expect(() => debtServiceCover([1, 2], [1])).toThrow(RangeError);
    expect(() => debtServiceCover([1], [-1])).toThrow(RangeError);
  });
});
