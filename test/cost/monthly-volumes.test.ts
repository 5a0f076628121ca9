import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WEEKS_PER_MONTH } from '../../lib/cost/month-length.ts';
import { monthlyVolumes, type VolumeTerms } from '../../lib/cost/monthly-volumes.ts';
import { phasedCapacity } from '../../lib/cost/phased-capacity.ts';

const flat = (count: number, value: number) => new Array<number>(count).fill(value);

const even: VolumeTerms = {
  horizonMonths: 12,
  startMonth: 0,
  capacity: flat(12, 10),
  saleableYield: 0.9,
  closedWeeks: [],
  availability: flat(12, 0.95),
  demand: { perMonth: null, seasonality: [], growth: 0 },
  unsold: { kind: 'makeToOrder' },
};

describe('monthlyVolumes', () => {
  it('sells all it can make when customers take it', () => {
    const [first] = monthlyVolumes(even);
    expect(first?.sold).toBeCloseTo(10 * 0.9 * 0.95 * WEEKS_PER_MONTH, 9);
    expect(first?.used).toBe(1);
    expect(first?.runningWeeks).toBeCloseTo(0.95 * WEEKS_PER_MONTH, 9);
  });

  it('makes no more than is ordered', () => {
    const months = monthlyVolumes({ ...even, demand: { perMonth: 20, seasonality: [], growth: 0 } });
    for (const month of months) expect(month).toMatchObject({ sold: 20, made: 20, stock: 0, discarded: 0 });
    expect(months[0]?.used).toBeCloseTo(20 / (months[0]?.capacity ?? 0), 12);
  });

  it('throws away what it makes for no one under that rule', () => {
    const [first] = monthlyVolumes({
      ...even,
      demand: { perMonth: 20, seasonality: [], growth: 0 },
      unsold: { kind: 'discard' },
    });
    expect(first?.used).toBe(1);
    expect(first?.discarded).toBeCloseTo((first?.capacity ?? 0) - 20, 9);
  });

  it('stores for the season when it may', () => {
    const seasonality = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 12];
    const months = monthlyVolumes({
      ...even,
      demand: { perMonth: 20, seasonality, growth: 0 },
      unsold: { kind: 'keep', mostKept: 100 },
    });
    expect(months[10]?.stock).toBeCloseTo(100, 9);
    expect(months[11]?.sold).toBeCloseTo(100 + (months[11]?.capacity ?? 0), 9);
    expect(months[11]?.stock).toBe(0);
  });

  it('follows season, growth and the month the plan starts in', () => {
    const seasonality = [3, ...flat(11, 1)];
    const demand = { perMonth: 14, seasonality, growth: 0.21 };
    const months = monthlyVolumes({
      ...even,
      horizonMonths: 25,
      availability: flat(25, 1),
      capacity: flat(25, 1e6),
      startMonth: 11,
      demand,
    });
    expect(months[0]?.demand).toBeCloseTo(12, 9);
    expect(months[1]?.demand).toBeCloseTo(36 * 1.21 ** (1 / 12), 9);
    expect(months[24]?.demand).toBeCloseTo(12 * 1.21 ** 2, 9);
  });

  it('makes less in months with closed weeks, and nothing when closed throughout', () => {
    const closedWeeks = [2, 9, ...flat(10, 0)];
    const months = monthlyVolumes({ ...even, closedWeeks });
    expect(months[0]?.sold).toBeCloseTo(10 * 0.9 * 0.95 * (WEEKS_PER_MONTH - 2), 9);
    expect(months[1]).toMatchObject({ sold: 0, used: 0, runningWeeks: 0 });
  });

  it('loses nothing: made = sold + discarded + change of stock', () => {
    const rule = fc.oneof(
      fc.constant({ kind: 'makeToOrder' as const }),
      fc.constant({ kind: 'discard' as const }),
      fc.integer({ min: 0, max: 300 }).map((mostKept) => ({ kind: 'keep' as const, mostKept })),
    );
    fc.assert(
      fc.property(
        rule,
        fc.integer({ min: 0, max: 80 }),
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 12, maxLength: 12 }),
        (unsold, perMonth, weights) => {
          const seasonality = weights.some((weight) => weight > 0) ? weights : [];
          const months = monthlyVolumes({ ...even, unsold, demand: { perMonth, seasonality, growth: 0.05 } });
          let stock = 0;
          for (const month of months) {
            expect(month.made).toBeCloseTo(month.sold + month.discarded + month.stock - stock, 8);
            expect(month.made).toBeLessThanOrEqual(month.capacity + 1e-9);
            expect(month.sold).toBeLessThanOrEqual((month.demand ?? 0) + 1e-9);
            stock = month.stock;
          }
        },
      ),
      { seed: 51 },
    );
  });

  it('refuses lengths and shares that do not fit', () => {
    expect(() => monthlyVolumes({ ...even, capacity: [1] })).toThrow(RangeError);
    expect(() => monthlyVolumes({ ...even, closedWeeks: [1] })).toThrow(RangeError);
    expect(() => monthlyVolumes({ ...even, availability: flat(12, 1.1) })).toThrow(RangeError);
    expect(() => monthlyVolumes({ ...even, startMonth: 12 })).toThrow(RangeError);
    const demand = { perMonth: 1, seasonality: flat(12, 0), growth: 0 };
    expect(() => monthlyVolumes({ ...even, demand })).toThrow(RangeError);
    expect(() => monthlyVolumes({ ...even, demand: { ...even.demand, growth: -1 } })).toThrow(RangeError);
  });
});

describe('phasedCapacity', () => {
  const phases = [
    { month: 0, perWeek: flat(12, 10) },
    { month: 4, perWeek: flat(12, 30) },
  ];

  it('ramps only what is new', () => {
    expect(phasedCapacity(phases, { months: 4, startShare: 0.5 }, 10)).toEqual([
      10, 10, 10, 10, 20, 22.5, 25, 27.5, 30, 30,
    ]);
  });

  it('rises at once without a ramp and falls at once with one', () => {
    expect(phasedCapacity(phases, { months: 0, startShare: 0 }, 5)).toEqual([10, 10, 10, 10, 30]);
    const falling = [
      { month: 0, perWeek: flat(12, 10) },
      { month: 1, perWeek: flat(12, 4) },
    ];
    expect(phasedCapacity(falling, { months: 6, startShare: 0 }, 3)).toEqual([10, 4, 4]);
  });

  it('lets ramps overlap', () => {
    const three = [...phases, { month: 5, perWeek: flat(12, 40) }];
    expect(phasedCapacity(three, { months: 2, startShare: 0 }, 8)).toEqual([10, 10, 10, 10, 10, 20, 35, 40]);
  });

  it('is nothing before the first phase, and refuses phases out of order', () => {
    expect(phasedCapacity([{ month: 2, perWeek: flat(12, 5) }], { months: 0, startShare: 1 }, 3)).toEqual([0, 0, 5]);
    expect(() => phasedCapacity([...phases].reverse(), { months: 0, startShare: 0 }, 3)).toThrow(RangeError);
    expect(() => phasedCapacity(phases, { months: 2, startShare: 2 }, 3)).toThrow(RangeError);
  });
});
