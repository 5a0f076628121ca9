import { DEMO_BATCH_LOG } from './demo/demo-batch-log.ts';
import { DEMO_CHAMBERS, DEMO_FREEZER, DEMO_HOSES, DEMO_PUMPS } from './demo/demo-equipment.ts';
import { DEMO_PRODUCTS } from './demo/demo-products.ts';
import { DEMO_SCENARIOS } from './demo/demo-scenarios.ts';
import { DEMO_CREW, DEMO_FINANCING, DEMO_SITE } from './demo/demo-shop.ts';
import type { Plan } from './plan-types.ts';
import { PLAN_FORMAT, PLAN_VERSION } from './schema.ts';

/** The plan shown on a first visit: an invented shop with two chambers that thinks of more. */
export const DEMO_PLAN: Plan = {
  format: PLAN_FORMAT,
  version: PLAN_VERSION,
  name: 'Pellowick expansion',
  site: DEMO_SITE,
  crew: DEMO_CREW,
  freezer: DEMO_FREEZER,
  financing: DEMO_FINANCING,
  products: DEMO_PRODUCTS,
  chambers: DEMO_CHAMBERS,
  pumps: DEMO_PUMPS,
  hoses: DEMO_HOSES,
  scenarios: DEMO_SCENARIOS,
  batchLog: DEMO_BATCH_LOG,
};
