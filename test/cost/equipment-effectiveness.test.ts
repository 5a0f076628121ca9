import { describe, expect, it } from 'vitest';
import { equipmentEffectiveness } from '../../lib/cost/equipment-effectiveness.ts';

describe('equipmentEffectiveness', () => {
  it('is good ideal time over planned time, however it is split', () => {
    const found = equipmentEffectiveness({ plannedTime: 100, runningTime: 80, idealTime: 60, goodShare: 0.9 });
    expect(found.overall).toBeCloseTo((60 * 0.9) / 100, 12);
    expect(found).toMatchObject({ availability: 0.8, performance: 0.75, quality: 0.9 });
  });

  it('is nothing where nothing ran', () => {
    expect(equipmentEffectiveness({ plannedTime: 0, runningTime: 0, idealTime: 0, goodShare: 1 }).overall).toBe(0);
  });

  it('refuses negative times and shares beyond one', () => {
    const terms = { plannedTime: 10, runningTime: 8, idealTime: 6, goodShare: 1 };
    expect(() => equipmentEffectiveness({ ...terms, runningTime: -1 })).toThrow(RangeError);
    expect(() => equipmentEffectiveness({ ...terms, goodShare: 1.1 })).toThrow(RangeError);
  });
});
