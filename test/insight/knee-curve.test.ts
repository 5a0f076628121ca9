import { describe, expect, it } from 'vitest';
import { kneeCurve } from '../../lib/insight/knee-curve.ts';
import { KNEE_THRESHOLD } from '../../lib/insight/knee-threshold.ts';
import { machinesOnly } from '../../lib/insight/machine-output.ts';
import { shopSpec } from '../../lib/model/shop-spec.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import { smallPlan } from '../model/edited-plan.ts';

/** Fruit in tight chambers on the pump that comes with one of them: its knee comes early. */
const SMALL = smallPlan((document) => {
  document.scenarios[1].pump = 'small';
  document.chambers[0].leak = { value: 0.016, unit: 'Pa·m³/s', origin: 'guess' };
});
const CURVE = kneeCurve(SMALL, 'two', 5);

describe('kneeCurve', () => {
  it('has a point for each number of chambers', () => {
    expect(CURVE.points.map((point) => point.chambers)).toEqual([1, 2, 3, 4, 5]);
    expect(CURVE.threshold).toBe(KNEE_THRESHOLD);
  });

  it('gives chambers with pumps of their own the lone chamber’s output times their number', () => {
    const [lone] = CURVE.points;
    expect(lone?.shared).toBe(lone?.own);
    expect(lone?.added).toBeNull();
    for (const { chambers, own } of CURVE.points) expect(own).toBeCloseTo(chambers * (lone?.own ?? 0), 9);
  });

  it('lets chambers on one pump never outdo those with pumps of their own', () => {
    for (const { shared, own } of CURVE.points) expect(shared).toBeLessThanOrEqual((own ?? 0) * (1 + 1e-9));
  });

  it('counts what each chamber adds, against what it would add with its own pump', () => {
    const lone = CURVE.points[0]?.own ?? 0;
    CURVE.points.slice(1).forEach(({ shared, added }, i) => {
      expect(added).toBeCloseTo(((shared ?? 0) - (CURVE.points[i]?.shared ?? 0)) / lone, 12);
    });
  });

  it('has its knee at the first chamber that adds less than the threshold', () => {
    const first = CURVE.points.find((point) => point.added !== null && point.added < KNEE_THRESHOLD);
    expect(CURVE.knee).toBe(first?.chambers);
    expect(CURVE.knee).not.toBeNull();
  });

  it('has no knee where chambers stop before it', () => {
    const before = (CURVE.knee ?? 0) - 1;
    expect(kneeCurve(SMALL, 'two', before)).toEqual({ ...CURVE, points: CURVE.points.slice(0, before), knee: null });
  });

  it('comes later on the pump that is more than twice as fast', () => {
    const good = kneeCurve(smallPlan(), 'two', CURVE.knee ?? 1);
    expect(good.knee).toBeNull();
    expect(good.points.at(-1)?.added).toBeGreaterThan(CURVE.points[(CURVE.knee ?? 1) - 1]?.added ?? 1);
  });

  it('has holes where a number of chambers cannot run, and takes the first for the knee', () => {
    const leaky = smallPlan((document) => {
      document.scenarios[1].pump = 'small';
      document.chambers[0].leak = { value: 0.045, unit: 'Pa·m³/s', origin: 'guess' };
    });
    const curve = kneeCurve(leaky, 'two', 4);
    const hole = curve.points.find((point) => point.shared === null);
    expect(hole).toBeDefined();
    expect(hole?.added).toBeNull();
    expect(curve.knee).toBeLessThanOrEqual(hole?.chambers ?? 0);
  });
});

describe('the demo', () => {
  it('has its knee past the three chambers of its first expansion and no later than the six it asks about', () => {
    const { points, knee } = kneeCurve(DEMO_PLAN, 'six-shared', 6);
    expect(knee).toBeGreaterThan(3);
    expect(knee).toBeLessThanOrEqual(6);
    const before = points.slice(1, (knee ?? 0) - 1).map((point) => point.added ?? Number.NaN);
    expect(before.every((share) => share >= KNEE_THRESHOLD)).toBe(true);
    expect(points[(knee ?? 0) - 1]?.added).toBeLessThan(KNEE_THRESHOLD);
  });
});

describe('machinesOnly', () => {
  it('takes people, market and freezer out of it and leaves the machines as they are', () => {
    const spec = shopSpec(DEMO_PLAN, DEMO_PLAN.scenarios[5] as Scenario);
    const alone = machinesOnly(spec);
    expect(alone.groups).toBe(spec.groups);
    expect(alone.crew.tasks).toBe(spec.crew.tasks);
    expect(alone.mix.map((entry) => entry.weeklyCap)).toEqual([null, null, null, null]);
    expect(alone.mix.map((entry) => entry.share)).toEqual(spec.mix.map((entry) => entry.share));
    const ran = simulateShop(machinesOnly(shopSpec(smallPlan(), smallPlan().scenarios[1] as Scenario)));
    if (!ran.ok) throw new Error(ran.error.kind);
    const { waitingToLoad, waitingToClean, hold, waitingForFreezer, idleNoDemand } = ran.value.phases;
    expect(waitingToLoad + waitingToClean + hold + waitingForFreezer + idleNoDemand).toBeLessThan(60);
  });
});
