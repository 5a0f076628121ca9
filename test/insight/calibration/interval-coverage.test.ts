import { describe, expect, it } from 'vitest';
import type { QuantityField } from '../../../lib/inputs/input-field.ts';
import { fieldOf } from '../../../lib/inputs/register.ts';
import { calibrate } from '../../../lib/insight/calibration/calibrate.ts';
import { fitParameters, valueAtPlace } from '../../../lib/insight/calibration/fit-parameter.ts';
import { loggedBatches } from '../../../lib/insight/calibration/logged-batches.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { fromBase } from '../../../lib/units/convert.ts';
import { bellCurve, planWithLog, syntheticLog } from './synthetic-log.ts';

describe('intervals', () => {
  const dryings = [0.6, 1, 1.5, 1].map((factor) => ({ product: 'bean-soup', wet: 10.5 * factor }));

  /** A shop drawn from what the plan believes, each product for itself. */
  function drawnShop(next: () => number) {
    const kinds = loggedBatches(planWithLog(syntheticLog(DEMO_PLAN, dryings, { hours: 0, dry: 0, next: () => 0 })));
    const drawn = fitParameters(DEMO_PLAN, kinds).map((parameter) => ({
      ...parameter,
      value: valueAtPlace(parameter, Math.min(parameter.most, Math.max(parameter.least, next()))),
    }));
    const changed = <Item extends { readonly id: string }>(list: string, items: readonly Item[]) =>
      items.map((item) => {
        const own = drawn.filter((one) => one.list === list && one.id === item.id);
        const entries = own.map(({ key, value }) => {
          const field = fieldOf(`${list === 'chambers' ? 'chamber' : 'product'}.${key}`) as QuantityField;
          const { unit } = field;
          return [key, { value: fromBase(value, field.dimension, unit), unit, origin: 'measured' }];
        });
        return { ...item, ...Object.fromEntries(entries) };
      });
    const plan: Plan = {
      ...DEMO_PLAN,
      chambers: changed('chambers', DEMO_PLAN.chambers),
      products: changed('products', DEMO_PLAN.products),
    };
    return { plan, drawn };
  }

  it('hold the truth about as often as they say', () => {
    let held = 0;
    let all = 0;
    for (let run = 0; run < 8; run += 1) {
      const next = bellCurve(300 + run);
      const { plan, drawn } = drawnShop(next);
      const log = syntheticLog(plan, dryings, { hours: 0.05, dry: 0.02, next });
      const found = calibrate(planWithLog(log));
      for (const { id, key, value } of drawn) {
        const after = found.values.find((one) => one.id === id && one.key === key)?.after;
        held += after && after.low <= value && value <= after.high ? 1 : 0;
        all += 1;
      }
    }
    // 95 % asked for. 32 values that hang together in fours: fewer than 85 % would be a fault. Over 60 shops with two
    // products it was 94 %.
    expect(held / all).toBeGreaterThan(0.85);
  });
});
