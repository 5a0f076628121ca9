import { bench, describe } from 'vitest';
import { shopSpec } from '../../lib/model/shop-spec.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { FRUIT, GOOD_PUMP, SOUP, sharedShop } from '../plant/sample-shop.ts';
import { requireNear } from './require-near.ts';
import { TIGHT_WEEKS, weekReport } from './week-report.ts';

const SIX = sharedShop(6, GOOD_PUMP, {
  mix: [
    { product: FRUIT, share: 0.5, weeklyCap: null },
    { product: SOUP, share: 0.5, weeklyCap: null },
  ],
});
const demo = DEMO_PLAN.scenarios.find((scenario) => scenario.id === 'six-shared');
if (!demo) throw new Error('the demo has a scenario with six chambers on one pump');
const DEMO = shopSpec(DEMO_PLAN, demo);

const tight = weekReport(SIX, TIGHT_WEEKS);
const standard = weekReport(SIX);
requireNear('hours per batch', standard.cycleTime, tight.cycleTime);
requireNear('dried product', standard.dryOut, tight.dryOut);

describe('six weeks of six chambers on one pump, batch times within 0.1 %', () => {
  bench('as the sheet runs it', () => void weekReport(SIX), {
    time: 1000,
    iterations: 5,
    warmupTime: 0,
    warmupIterations: 1,
  });
  bench('the same with tight steps', () => void weekReport(SIX, TIGHT_WEEKS), {
    time: 0,
    iterations: 3,
    warmupTime: 0,
    warmupIterations: 0,
  });
});

describe('six weeks of the demo with six chambers', () => {
  bench('as the sheet runs it', () => void weekReport(DEMO), {
    time: 1000,
    iterations: 5,
    warmupTime: 0,
    warmupIterations: 1,
  });
});
