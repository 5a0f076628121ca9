import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickestDrying } from '../../../lib/insight/options/quickest-drying.ts';
import { chamberLoad } from '../../../lib/plant/chamber-load.ts';
import { dryLoneLoad } from '../../../lib/plant/lone-load.ts';
import { simulateShop } from '../../../lib/plant/simulate-shop.ts';
import { anyProduct, anyPump, anyShop, anyUnit } from '../../plant/any-shop.ts';
import { CHAMBER, FRUIT, GOOD_PUMP, UNIT } from '../../plant/sample-shop.ts';

describe('the quickest drying', () => {
  it('is never slower than a load alone on any pump', () => {
    fc.assert(
      fc.property(anyUnit, anyPump, anyProduct, (unit, pump, product) => {
        const outcome = dryLoneLoad(unit, pump, chamberLoad(product, unit.chamber));
        if (outcome.kind !== 'dried') return;
        const { primary, secondary } = outcome.load;
        expect(quickestDrying(product, unit.chamber)).toBeLessThanOrEqual(primary + secondary);
      }),
      { numRuns: 60 },
    );
  });

  it('is never slower than any batch of any week, neighbours and all', () => {
    fc.assert(
      fc.property(anyShop, (shop) => {
        const outcome = simulateShop(shop);
        const units = shop.groups.flatMap((group) => group.chambers);
        for (const { chamber, productId, phases } of outcome.ok ? outcome.value.batchRecords : []) {
          const product = shop.mix.find((entry) => entry.product.id === productId)?.product;
          const unit = units[chamber];
          if (!product || !unit) throw new Error(`no ${productId} in chamber ${chamber}`);
          const took = (phases.primary ?? 0) + (phases.secondary ?? 0);
          expect(quickestDrying(product, unit.chamber)).toBeLessThanOrEqual(took);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('is not far below what a good pump does', () => {
    const outcome = dryLoneLoad(UNIT, GOOD_PUMP, chamberLoad(FRUIT, CHAMBER));
    if (outcome.kind !== 'dried') throw new Error(outcome.kind);
    expect(quickestDrying(FRUIT, CHAMBER)).toBeGreaterThan(0.7 * (outcome.load.primary + outcome.load.secondary));
  });
});
