import { describe, expect, it } from 'vitest';
import { samplePoints } from '../../lib/risk/sample-points.ts';
import { SOBOL_DIMENSIONS, scrambledSobolPoints } from '../../lib/risk/sobol.ts';

const MANY = SOBOL_DIMENSIONS + 12;

describe('samplePoints', () => {
  it('is the scrambled sequence as far as that goes', () => {
    expect(samplePoints(64, 5, 9)).toEqual(scrambledSobolPoints(64, 5, 9));
    const many = samplePoints(32, MANY, 9).map((point) => point.slice(0, SOBOL_DIMENSIONS));
    expect(many).toEqual(scrambledSobolPoints(32, SOBOL_DIMENSIONS, 9));
  });

  it('hits every stratum of every dimension once, beyond the sequence too', () => {
    const points = samplePoints(128, MANY, 4);
    for (let k = 0; k < MANY; k += 1) {
      expect(new Set(points.map((point) => Math.floor((point[k] ?? Number.NaN) * 128))).size).toBe(128);
    }
  });

  it('has columns beyond the sequence that do not go together', () => {
    // The correlation of two independent columns of 512 scatters by 1/√512 = 0.044; four of those.
    const points = samplePoints(512, MANY, 4);
    const column = (k: number) => points.map((point) => (point[k] ?? Number.NaN) - 0.5);
    for (let k = SOBOL_DIMENSIONS; k < MANY - 1; k += 1) {
      const next = column(k + 1);
      const product = column(k).reduce((sum, value, row) => sum + value * (next[row] ?? Number.NaN), 0) / 512;
      expect(Math.abs(12 * product)).toBeLessThan(0.18);
    }
  });

  it('depends on the seed alone', () => {
    expect(samplePoints(16, MANY, 3)).toEqual(samplePoints(16, MANY, 3));
    expect(samplePoints(16, MANY, 3)).not.toEqual(samplePoints(16, MANY, 4));
  });

  it('knows no points of half a dimension, and empty ones of none', () => {
    expect(() => samplePoints(4, 2.5, 1)).toThrow(RangeError);
    expect(() => samplePoints(4, -1, 1)).toThrow(RangeError);
    expect(samplePoints(3, 0, 1)).toEqual([[], [], []]);
  });
});
