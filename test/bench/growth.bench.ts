import { bench, describe } from 'vitest';
import type { ShopSpec } from '../../lib/plant/types.ts';
import { FRUIT, GOOD_PUMP, mixOf, sharedShop } from '../plant/sample-shop.ts';
import { requireNear } from './require-near.ts';
import { weekReport } from './week-report.ts';

/** Chambers on one pump that grows with them, so that each does what a lone one does. */
function shop(chambers: number): ShopSpec {
  return sharedShop(chambers, { ...GOOD_PUMP, speed: chambers * GOOD_PUMP.speed }, { mix: mixOf(FRUIT) });
}

const lone = weekReport(shop(1));

describe('six weeks of so many chambers on one pump', () => {
  for (const chambers of [1, 2, 4, 8, 16, 32]) {
    // Chambers that share start in step with each other, and one pumped down alone has a faster pump: within some percent.
    requireNear(`dried product of ${chambers}`, weekReport(shop(chambers)).dryOut, chambers * lone.dryOut, 0.05);
    bench(`${chambers}`, () => void weekReport(shop(chambers)), {
      time: 500,
      iterations: 3,
      warmupTime: 0,
      warmupIterations: 1,
    });
  }
});
