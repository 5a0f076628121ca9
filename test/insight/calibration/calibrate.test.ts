import { describe, expect, it } from 'vitest';
import { calibrate } from '../../../lib/insight/calibration/calibrate.ts';
import type { Calibration } from '../../../lib/insight/calibration/calibration.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { FITTED_SOURCE } from '../../../lib/plan/fitted-source.ts';
import type { LogEntry, Plan } from '../../../lib/plan/plan-types.ts';
import { fittedIn, holds, loads, missOf } from './fitted-in.ts';
import { bellCurve, planWithLog, syntheticLog, truePlan } from './synthetic-log.ts';

function expectFinite(calibration: Calibration): void {
  for (const { after, believed, narrowed, moved } of calibration.values) {
    for (const value of [after.value, after.low, after.high, believed.low, believed.high, narrowed, moved]) {
      expect(Number.isFinite(value)).toBe(true);
    }
    expect(after.low).toBeLessThanOrEqual(after.value);
    expect(after.value).toBeLessThanOrEqual(after.high);
  }
}

const SILENT = { hours: 0, dry: 0, next: () => 0 };

describe('a log without noise', () => {
  it('leads back to a last drying and a permeability that differ from the plan', () => {
    const truth = truePlan({ product: { desorptionRate: 40, permeability: 1e-8 } });
    const dryings = [
      ...loads('bean-soup', 10.5, [0.5, 0.75, 1, 1.5, 2]),
      ...loads('strawberries', 10.5, [0.5, 1, 1.5]),
    ];
    const found = calibrate(planWithLog(syntheticLog(truth, dryings, SILENT)));
    expect(found.miss?.before).toBeGreaterThan(0.1);
    expect(found.miss?.after).toBeLessThan(0.02);
    for (const id of ['bean-soup', 'strawberries']) {
      expect(holds(fittedIn(found, id, 'desorptionRate'), 40)).toBe(true);
      expect(holds(fittedIn(found, id, 'permeability'), 1e-8)).toBe(true);
    }
    // With these loads the two are well apart in a poured product: its own belief is 15e-9 s and 60 1/s.
    expect(missOf(fittedIn(found, 'bean-soup', 'permeability'), 1e-8)).toBeLessThan(0.2);
    expect(missOf(fittedIn(found, 'bean-soup', 'desorptionRate'), 40)).toBeLessThan(0.15);
    expect(fittedIn(found, 'bean-soup', 'desorptionRate').verdict).toBe('determined');
  });

  it('leaves a plan that is right as it is', () => {
    const found = calibrate(planWithLog(syntheticLog(DEMO_PLAN, loads('sweetcorn', 11, [0.6, 1, 1.4]), SILENT)));
    for (const { moved } of found.values) expect(Math.abs(moved)).toBeLessThan(0.05);
    expect(found.contradictions).toEqual([]);
  });

  it('shows the water of the food by its weights', () => {
    const truth = truePlan({ product: { water: 91 } });
    const found = calibrate(planWithLog(syntheticLog(truth, loads('strawberries', 10.5, [1, 1, 1, 1, 1, 1]), SILENT)));
    expect(fittedIn(found, 'strawberries', 'water').after.value).toBeCloseTo(0.91, 2);
  });

  it('hears pressures about the way to the trap', () => {
    const truth = truePlan({ chamber: { trapVapourConductance: 2.6e-5 } });
    const dryings = loads('bean-soup', 10.5, [1, 1.4]).map((one) => ({ ...one, withPressure: true }));
    const found = calibrate(planWithLog(syntheticLog(truth, dryings, SILENT)));
    expect(fittedIn(found, 'mid', 'trapVapourConductance').after.value).toBeGreaterThan(1.52e-5);
  });
});

describe('hard logs', () => {
  it('one batch moves little, explodes nowhere, and says what it could not tell', () => {
    const truth = truePlan({ product: { spread: 1.4 } });
    const found = calibrate(planWithLog(syntheticLog(truth, loads('strawberries', 10.5, [1]), SILENT)));
    expectFinite(found);
    expect(found.miss?.after).toBeLessThan(found.miss?.before ?? 0);
    for (const value of found.values) expect(Math.abs(value.moved)).toBeLessThan(1.5);
    expect(fittedIn(found, 'strawberries', 'permeability').verdict).toBe('undetermined');
    expect(found.untested).toEqual(['mid']);
  });

  it('hours that no value explains are called scatter and leave the values near belief', () => {
    const log = syntheticLog(DEMO_PLAN, loads('strawberries', 10.5, [1, 1, 1]), SILENT);
    const tenfold = log.map((entry) => (entry.kind === 'batch' ? { ...entry, hours: 10 * entry.hours } : entry));
    const found = calibrate(planWithLog(tenfold));
    expectFinite(found);
    for (const { moved } of found.values) expect(Math.abs(moved)).toBeLessThan(5);
    expect(found.scatter).toBeGreaterThan(0.5);
    expect(found.miss?.after).toBeGreaterThan(0.5);
  });

  it('two camps are called a contradiction and widen everything', () => {
    const calm = syntheticLog(DEMO_PLAN, loads('sweetcorn', 11, [1, 1, 1, 1]), SILENT);
    const torn = calm.map((entry, i) =>
      entry.kind === 'batch' && i % 2 ? { ...entry, hours: 1.8 * entry.hours } : entry,
    );
    const [sure, unsure] = [calibrate(planWithLog(calm)), calibrate(planWithLog(torn))];
    expect(unsure.contradictions).toHaveLength(1);
    expect(unsure.contradictions[0]?.pairs).toBe(4);
    expect(unsure.scatter).toBeGreaterThan(3 * sure.scatter);
    expect(fittedIn(unsure, 'sweetcorn', 'desorptionRate').narrowed).toBeGreaterThan(
      fittedIn(sure, 'sweetcorn', 'desorptionRate').narrowed,
    );
  });

  it('one forgotten batch among many is set aside by name', () => {
    const log = syntheticLog(DEMO_PLAN, loads('sweetcorn', 11, [0.8, 0.9, 1, 1.1, 1.2, 1]), SILENT);
    const forgotten = log.map((entry, i) => (entry.kind === 'batch' && i === 2 ? { ...entry, hours: 60 } : entry));
    const found = calibrate(planWithLog(forgotten));
    expect(found.batches.filter(({ use }) => use === 'odd').map(({ id }) => id)).toEqual(['b2']);
    expect(found.miss?.after).toBeLessThan(0.02);
  });

  it('a load no tray could hold, and one that would never dry, have no say', () => {
    const [entry] = syntheticLog(DEMO_PLAN, loads('sweetcorn', 11, [1]), SILENT) as [LogEntry];
    const heavy = { ...entry, id: 'heavy', wet: 400 } as LogEntry;
    const found = calibrate(planWithLog([entry, heavy]));
    expect(found.batches.map(({ use }) => use)).toEqual(['fitted', 'loadOutOfRange']);
    const stuck: Plan = {
      ...planWithLog([entry]),
      chambers: DEMO_PLAN.chambers.map((chamber) => ({
        ...chamber,
        leak: { ...chamber.leak, value: 5, low: 5, high: 5 },
      })),
    };
    const never = calibrate(stuck);
    expect(never.batches[0]).toMatchObject({ use: 'neverDry', before: null, after: null });
    expectFinite(never);
    expect(never.miss).toBeNull();
  });

  it('an empty log says nothing, and tests alone give the leak', () => {
    expect(calibrate(planWithLog([]))).toMatchObject({ values: [], batches: [], miss: null });
    const test: LogEntry = {
      kind: 'pressureRise',
      id: 't',
      date: '2026-05-03',
      chamber: 'mid',
      from: 30,
      to: 90,
      minutes: 10,
      note: '',
    };
    const { values } = calibrate(planWithLog([test]));
    expect(values).toHaveLength(1);
    expect(values[0]?.after.value).toBeCloseTo((0.25 * 60) / 600, 9);
  });

  it('values of an earlier fit are no belief, so that fitting twice does not make the log count twice', () => {
    const truth = truePlan({ product: { desorptionRate: 40 } });
    const log = syntheticLog(truth, loads('sweetcorn', 11, [0.6, 1, 1.4]), SILENT);
    const once = calibrate(planWithLog(log));
    const fitted = fittedIn(once, 'sweetcorn', 'desorptionRate');
    const products = DEMO_PLAN.products.map((product) => {
      const { value, low, high } = fitted.after;
      const source = FITTED_SOURCE;
      return product.id === 'sweetcorn'
        ? { ...product, desorptionRate: { value, low, high, unit: '1/s', origin: 'measured' as const, source } }
        : product;
    });
    const twice = calibrate({ ...planWithLog(log), products });
    const again = fittedIn(twice, 'sweetcorn', 'desorptionRate');
    expect(again.narrowed).toBeCloseTo(fitted.narrowed, 2);
    expect(again.after.value / fitted.after.value).toBeCloseTo(1, 2);
  });

  it('is the same every time and tells how far it is', () => {
    const log = syntheticLog(DEMO_PLAN, loads('sweetcorn', 11, [0.6, 1]), {
      hours: 0.05,
      dry: 0.02,
      next: bellCurve(3),
    });
    const heard: number[] = [];
    const worked: number[] = [];
    const first = calibrate(planWithLog(log), ({ passes, dryings }) => {
      heard.push(passes);
      worked.push(dryings);
    });
    expect(calibrate(planWithLog(log))).toEqual(first);
    expect(heard.length).toBeGreaterThan(1);
    // Never backwards, and no pass left out; the first drying may be told of before the first pass is done.
    const passes = [...new Set(heard)];
    expect(passes[0]).toBeLessThanOrEqual(1);
    expect(passes).toEqual(passes.map((_, i) => i + (passes[0] ?? 0)));
    expect(heard).toEqual([...heard].sort((a, b) => a - b));
    expect(worked).toEqual([...worked].sort((a, b) => a - b));
    expect(worked[0]).toBeGreaterThan(0);
  });
});
