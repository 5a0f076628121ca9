import { describe, expect, it } from 'vitest';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import { dryOutput, waterInLoad, waterToRemove } from '../../lib/plant/load-law.ts';
import { CANDY, CHAMBER, FRUIT, SOUP } from './sample-shop.ts';

describe('a load', () => {
  it('fills every shelf, and its water is ice and bound water', () => {
    const load = chamberLoad(FRUIT, CHAMBER);
    expect(load.wet).toBeCloseTo(12, 12);
    expect(load.dryMatter).toBeCloseTo(1.2, 12);
    // 0.3 kg per kilogram of dry matter never freezes.
    expect(load.boundMoisture).toBeCloseTo(0.3, 12);
    expect(load.ice).toBeCloseTo(12 * 0.9 - 0.3 * 1.2, 12);
    expect(waterInLoad(load, 0, load.boundMoisture)).toBeCloseTo(12 * 0.9, 12);
  });

  it('of candy has no ice at all', () => {
    const load = chamberLoad(CANDY, CHAMBER);
    expect(load.ice).toBe(0);
    expect(load.boundMoisture).toBeCloseTo(0.06 / 0.94, 12);
  });

  it('gives dry matter with its last moisture, and loses the rest', () => {
    for (const product of [FRUIT, SOUP, CANDY]) {
      const load = chamberLoad(product, CHAMBER);
      expect(dryOutput(load)).toBeCloseTo(load.dryMatter * (1 + product.desorption.target), 12);
      expect(dryOutput(load) + waterToRemove(load)).toBeCloseTo(load.wet, 12);
    }
  });

  it('in pieces dries a share of its depth from the slowest face, poured the whole', () => {
    expect(chamberLoad(FRUIT, CHAMBER).depth).toBeCloseTo((8 / 550) * 0.75, 12);
    expect(chamberLoad({ ...FRUIT, form: 'poured' }, CHAMBER).depth).toBeCloseTo(8 / 550, 12);
    const half = chamberLoad({ ...FRUIT, faceShare: 0.5 }, CHAMBER);
    // Both faces together carry the flow, each its half.
    expect(half.fluxPerFlow * CHAMBER.shelfArea).toBeCloseTo(0.5 * FRUIT.spread, 12);
  });

  it('is heated no hotter than the chamber can', () => {
    const load = chamberLoad({ ...FRUIT, shelfPrimary: 350, shelfSecondary: 320 }, CHAMBER);
    expect(load.shelfPrimary).toBe(CHAMBER.shelfLimit);
    expect(load.shelfSecondary).toBe(320);
  });
});
