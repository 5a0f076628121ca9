import { describe, expect, it } from 'vitest';
import { calibrate } from '../../../lib/insight/calibration/calibrate.ts';
import type { Calibration } from '../../../lib/insight/calibration/calibration.ts';
import { fittedIn, holds, loads, missOf } from './fitted-in.ts';
import { bellCurve, type Drying, planWithLog, syntheticLog, type Truth, truePlan } from './synthetic-log.ts';

const FACTORS = [0.5, 0.7, 1, 1, 1.2, 1.5, 1.5, 2];

/** What is made of the log that such a shop writes with hours off by 5 % and weights by 2 %. */
function fitted(truth: Truth, dryings: readonly Drying[]): Calibration {
  const noise = { hours: 0.05, dry: 0.02, next: bellCurve(17) };
  return calibrate(planWithLog(syntheticLog(truePlan(truth), dryings, noise)));
}

/** The value must hold the truth in its range, lie far nearer to it than the plan, and be surer than the belief was. */
function expectFound(found: Calibration, [id, key]: readonly [string, string], truth: number, planned: number): void {
  const value = fittedIn(found, id, key);
  expect(holds(value, truth)).toBe(true);
  expect(missOf(value, truth)).toBeLessThan(0.6 * Math.abs(planned / truth - 1));
  expect(value.narrowed).toBeLessThan(0.9);
}

describe('a log with noise', () => {
  it('leads back to the last drying and the permeability of a poured product', () => {
    const truth = { product: { desorptionRate: 42, permeability: 1e-8 } };
    const found = fitted(truth, loads('bean-soup', 10.5, FACTORS));
    expectFound(found, ['bean-soup', 'desorptionRate'], 42, 60);
    expectFound(found, ['bean-soup', 'permeability'], 1e-8, 15e-9);
    // The hours are as good as their noise allows.
    expect(found.miss?.before).toBeGreaterThan(0.15);
    expect(found.miss?.after).toBeLessThan(0.07);
    expect(found.scatter).toBeGreaterThan(0.03);
    expect(found.scatter).toBeLessThan(0.09);
  });

  it('leads back to heat by contact, though only in company, by products that feel it differently', () => {
    const dryings = [...loads('bean-soup', 10.5, FACTORS), ...loads('sweetcorn', 10.5, FACTORS)];
    const found = fitted({ chamber: { heatContact: 5 } }, dryings);
    expectFound(found, ['mid', 'heatContact'], 5, 8);
    expect(fittedIn(found, 'mid', 'heatContact').verdict).toBe('together');
    // What is as planned is not blamed for it.
    expect(holds(fittedIn(found, 'bean-soup', 'permeability'), 1.5e-8)).toBe(true);
    expect(holds(fittedIn(found, 'sweetcorn', 'spread'), 1.15)).toBe(true);
  });

  it('leads back to the spread of trays', () => {
    const found = fitted({ product: { spread: 1.4 } }, loads('strawberries', 10.5, FACTORS));
    const spread = fittedIn(found, 'strawberries', 'spread');
    expect(holds(spread, 1.4)).toBe(true);
    expect(spread.after.value).toBeGreaterThan(1.22);
  });
});
