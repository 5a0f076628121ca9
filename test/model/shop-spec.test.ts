import { describe, expect, it } from 'vitest';
import { shopSpec } from '../../lib/model/shop-spec.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';

const TODAY = DEMO_PLAN.scenarios[0] as Scenario;

function specOf(change: Partial<Scenario>, plan: Plan = DEMO_PLAN) {
  return shopSpec(plan, { ...TODAY, ...change });
}

function sizes(change: Partial<Scenario>): readonly number[] {
  return specOf(change).groups.map((group) => group.chambers.length);
}

function withProduct(change: Partial<Plan['products'][number]>): Plan {
  return { ...DEMO_PLAN, products: DEMO_PLAN.products.map((item) => ({ ...item, ...change })) };
}

describe('shopSpec', () => {
  it.each([
    ['own', 2, [1, 1, 1, 1, 1]],
    ['shared', 2, [5]],
    ['groups', 2, [2, 2, 1]],
    ['groups', 9, [5]],
  ] as const)('ties five chambers to pumps: %s of %d', (pumpArrangement, groupSize, expected) => {
    expect(sizes({ chambers: [{ chamber: 'mid', count: 5 }], pumpArrangement, groupSize })).toEqual(expected);
  });

  it('keeps the order of chamber types and lets chambers of one type share one object', () => {
    const chambers = [
      { chamber: 'large', count: 1 },
      { chamber: 'mid', count: 2 },
    ];
    const units = specOf({ chambers, pumpArrangement: 'shared' }).groups[0]?.chambers ?? [];
    expect(units.map((unit) => unit.chamber.typeId)).toEqual(['large', 'mid', 'mid']);
    expect(units[1]?.chamber).toBe(units[2]?.chamber);
  });

  it('turns every unit into SI', () => {
    const spec = specOf({ pump: 'good' });
    const unit = spec.groups[0]?.chambers[0];
    expect(unit?.chamber.pressureCeiling).toBeCloseTo((650 * 101325) / 760000, 9);
    expect(unit?.chamber.volume).toBeCloseTo(0.25, 12);
    expect(unit?.chamber.defrostTime).toBe(7200);
    expect(unit?.chamber.trap.curve.map((point) => point.load)).toEqual([0, 1600]);
    expect(unit?.chamber.trap.curve[1]?.temperature).toBeCloseTo(241.15, 9);
    expect(unit?.hose.diameter).toBeCloseTo(0.025, 12);
    expect(spec.groups[0]?.pump.speed).toBeCloseTo(12 / 3600, 12);
    expect(spec.groups[0]?.pump.vapourTolerance).toBeCloseTo(0.25 / 3600, 12);
    expect(spec.crew.tasks.load).toEqual({ perBatch: 1200, perKilogram: 96 });
    expect(spec.freezer?.temperature).toBeCloseTo(247.15, 9);
  });

  it('takes the measured speed curve where there is one', () => {
    const speedTable = [
      { pressure: 1, speed: 3.6 },
      { pressure: 100, speed: 18 },
    ];
    const plan = { ...DEMO_PLAN, pumps: DEMO_PLAN.pumps.map((pump) => ({ ...pump, speedTable })) };
    const table = specOf({}, plan).groups[0]?.pump.table ?? [];
    expect(table.map((point) => point.pressure)).toEqual([1, 100]);
    expect(table.map((point) => point.speed)).toEqual([expect.closeTo(0.001, 12), expect.closeTo(0.005, 12)]);
  });

  it('lays shifts out by weekday and drops those without people', () => {
    const plan: Plan = {
      ...DEMO_PLAN,
      crew: {
        ...DEMO_PLAN.crew,
        patterns: [
          {
            id: 'days',
            name: 'Days',
            shifts: [
              { weekdays: [3, 0], start: 12, end: 24, people: 2 },
              { weekdays: [0], start: 6, end: 12, people: 1 },
              { weekdays: [1], start: 6, end: 12, people: 0 },
            ],
          },
        ],
      },
    };
    expect(specOf({}, plan).crew.shifts).toEqual([
      { weekday: 0, start: 21600, end: 43200, people: 1 },
      { weekday: 0, start: 43200, end: 86400, people: 2 },
      { weekday: 3, start: 43200, end: 86400, people: 2 },
    ]);
  });

  it('gives shares that sum to 1 and leaves out products with none', () => {
    const mix = [
      { product: 'sweetcorn', share: 60.004 },
      { product: 'bean-soup', share: 40 },
      { product: 'strawberries', share: 0 },
    ];
    const shares = specOf({ mix }).mix;
    expect(shares.map((entry) => entry.product.id)).toEqual(['sweetcorn', 'bean-soup']);
    expect(shares.reduce((sum, entry) => sum + entry.share, 0)).toBeCloseTo(1, 15);
  });

  it('counts carbohydrate as what the other parts leave, and fractions sum to 1 even when rounding overshoots', () => {
    for (const entry of specOf({}).mix) {
      const { water, protein, fat, carbohydrate, fibre, ash } = entry.product.composition;
      expect(water + protein + fat + carbohydrate + fibre + ash).toBeCloseTo(1, 12);
    }
    const overshoot = withProduct({
      ash: { value: 9.99 + 0.04, unit: '%', origin: 'guess' },
      protein: { value: 0, unit: '%', origin: 'guess' },
    });
    const { composition } = specOf({ mix: [{ product: 'strawberries', share: 100 }] }, overshoot).mix[0]?.product ?? {};
    expect(composition && Object.values(composition).reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
  });

  it('caps a product at what sells and what is unfit for sale on top of it', () => {
    const plan = withProduct({
      weeklyDemand: { value: 22, unit: 'lb/week', origin: 'guess' },
      saleableYield: { value: 80, unit: '%', origin: 'measured' },
    });
    expect(specOf({}, plan).mix[0]?.weeklyCap).toBeCloseTo((22 * 0.45359237) / 0.8, 12);
    expect(specOf({}, withProduct({ weeklyDemand: null })).mix[0]?.weeklyCap).toBeNull();
  });

  it('brings the roughing pump only where it is used', () => {
    expect(specOf({ roughingPump: 'small' }).roughingPump).toBeNull();
    expect(specOf({ roughingPump: 'small', startPractice: 'roughing' }).roughingPump?.typeId).toBe('small');
  });

  it('has no freezer where the plan has none', () => {
    expect(specOf({}, { ...DEMO_PLAN, freezer: null }).freezer).toBeNull();
  });

  it('throws on a mention of what is not in the plan', () => {
    expect(() => specOf({ pump: 'gone' })).toThrow(RangeError);
  });
});
