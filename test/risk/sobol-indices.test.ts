import { describe, expect, it } from 'vitest';
import { indexDesign, sobolIndices } from '../../lib/risk/sobol-indices.ts';

describe('sobolIndices', () => {
  it('shares the variance of a plain sum as the squares of its weights', () => {
    const weights = [1, 2, 3, 0];
    const model = (point: readonly number[]) => point.reduce((sum, x, k) => sum + (weights[k] ?? 0) * x, 7);
    const design = indexDesign(2048, 4, 3);
    const result = sobolIndices(
      design.a.map(model),
      design.b.map(model),
      design.mixed.map((rows) => rows.map(model)),
    );
    [1 / 14, 4 / 14, 9 / 14, 0].forEach((share, k) => {
      expect(Math.abs((result.first?.[k] ?? Number.NaN) - share)).toBeLessThan(0.005);
      expect(Math.abs((result.total?.[k] ?? Number.NaN) - share)).toBeLessThan(0.005);
    });
    expect(result.mean).toBeCloseTo(10, 3);
    expect(result.variance).toBeCloseTo(14 / 12, 2);
  });

  it('gives all to the total index where inputs only work together', () => {
    const model = ([x = 0, y = 0]: readonly number[]) => (x - 0.5) * (y - 0.5);
    const design = indexDesign(4096, 2, 9);
    const result = sobolIndices(
      design.a.map(model),
      design.b.map(model),
      design.mixed.map((rows) => rows.map(model)),
    );
    for (const share of result.first ?? [Number.NaN]) expect(Math.abs(share)).toBeLessThan(0.03);
    for (const share of result.total ?? [Number.NaN]) expect(Math.abs(share - 1)).toBeLessThan(0.03);
  });

  it('has no shares where nothing varies', () => {
    expect(sobolIndices([3, 3], [3, 3], [[3, 3]])).toEqual({ mean: 3, variance: 0, first: null, total: null });
  });

  it('refuses results that do not fit', () => {
    expect(() => sobolIndices([1, 2], [1], [[1, 2]])).toThrow(RangeError);
    expect(() => sobolIndices([1], [1], [[1]])).toThrow(RangeError);
    expect(() => indexDesign(8, -1, 1)).toThrow(RangeError);
  });
});

describe('indexDesign', () => {
  it('has room for more inputs than there are Sobol numbers', () => {
    const { a, b, mixed } = indexDesign(16, 100, 1);
    expect([a[0]?.length, b[0]?.length, mixed.length]).toEqual([100, 100, 100]);
    for (const column of [5, 90]) {
      expect(new Set(b.map((point) => Math.floor(16 * (point[column] ?? 0)))).size).toBe(16);
    }
  });

  it('mixes one coordinate at a time', () => {
    const design = indexDesign(4, 3, 1);
    expect(design.mixed).toHaveLength(3);
    design.mixed.forEach((rows, input) => {
      rows.forEach((point, row) => {
        point.forEach((value, k) => {
          expect(value).toBe(k === input ? design.b[row]?.[k] : design.a[row]?.[k]);
        });
      });
    });
  });
});
