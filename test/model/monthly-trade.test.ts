import { describe, expect, it } from 'vitest';
import { WEEKS_PER_MONTH } from '../../lib/cost/month-length.ts';
import { monthlyTrade } from '../../lib/model/monthly-trade.ts';
import { type Simulate, scenarioWeek } from '../../lib/model/scenario-week.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';
import type { Loose } from '../plan/edited-demo.ts';
import { smallPlan } from './edited-plan.ts';
import { fakeSimulation, fakeWeek } from './fake-plant.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function kilograms(value: number) {
  return { value, unit: 'kg/week', origin: 'guess' } as const;
}

/** A shop that is open all year with machines that never stop: 14 kg of dried fruit a week, nothing of it unfit for sale. */
function openShop(edit: (document: Loose) => void = () => {}): Plan {
  return smallPlan((document) => {
    document.site.closedWeeks.value = 0;
    document.site.availability.value = 100;
    document.products[0].saleableYield.value = 100;
    edit(document);
  });
}

function tradeOf(plan: Plan, horizon: number, simulate: Simulate = fakeSimulation()) {
  const [today] = plan.scenarios;
  if (!today) throw new Error('a plan has a first scenario');
  const week = scenarioWeek(plan, today, simulate);
  if (!week.ok) throw new Error(JSON.stringify(week.error));
  return { ...monthlyTrade(plan, [{ month: -1, week: week.value }], horizon), week: week.value };
}

/** Kilograms sold in each month. */
function sold(plan: Plan, horizon: number, simulate?: Simulate): number[] {
  return tradeOf(plan, horizon, simulate).revenue.map((sales) => sales / 112);
}

describe('a market that grows', () => {
  const growing = openShop((document) => {
    document.products[0].weeklyDemand = kilograms(5);
    document.products[0].growth = { value: 20, unit: '%/year', origin: 'guess' };
  });

  it('is served for as long as the machines can, although the week of today makes no more than sells today', () => {
    const months = sold(growing, 84);
    months.forEach((mass, month) => {
      const demand = 5 * WEEKS_PER_MONTH * 1.2 ** (month / 12);
      expect(mass).toBeCloseTo(Math.min(demand, 14 * WEEKS_PER_MONTH), 6);
    });
    expect(months[80]).toBeCloseTo(14 * WEEKS_PER_MONTH, 9);
  });

  it('takes one more simulation, and none where machines are what holds the shop back', () => {
    const runs = (plan: Plan) => {
      let count = 0;
      const counting: Simulate = (spec) => {
        count += 1;
        return { ok: true, value: fakeWeek(spec) };
      };
      tradeOf(plan, 12, counting);
      return count;
    };
    expect(runs(growing)).toBe(2);
    expect(runs(openShop())).toBe(1);
    const busy = openShop((document) => {
      document.products[0].weeklyDemand = kilograms(60);
      document.products[0].growth = { value: 20, unit: '%/year', origin: 'guess' };
    });
    expect(runs(busy)).toBe(1);
  });

  it('is simulated for its busiest month, closed weeks and stoppages made up for', () => {
    const caps: (number | null)[] = [];
    const watching: Simulate = (spec: ShopSpec) => {
      caps.push(spec.mix[0]?.weeklyCap ?? null);
      return { ok: true, value: fakeWeek(spec) };
    };
    const closed = openShop((document) => {
      document.products[0].weeklyDemand = kilograms(5);
      document.site.closedWeeks.value = 6;
      document.site.availability.value = 90;
    });
    const months = sold(closed, 12, watching);
    const running = ((365.25 / 7 - 6) / (365.25 / 7)) * 0.9;
    expect(caps[0]).toBe(5);
    expect(caps[1]).toBeCloseTo(5 / running, 9);
    // What the market takes in a month is made in the weeks that are run.
    for (const mass of months) expect(mass).toBeCloseTo(5 * WEEKS_PER_MONTH, 6);
  });
});

describe('seasons', () => {
  const seasonal = (start: string) =>
    openShop((document) => {
      const [fruit] = document.products;
      fruit.weeklyDemand = kilograms(5);
      fruit.seasonDec = 200;
      document.site.startMonth = start;
    });

  it('move sales between the months of the calendar and leave the year as it is', () => {
    const year = sold(seasonal('jan'), 12);
    expect(sum(year)).toBeCloseTo(60 * WEEKS_PER_MONTH, 6);
    expect((year[11] ?? 0) / (year[0] ?? 1)).toBeCloseTo(2, 9);
  });

  it('follow the month in which the plan starts', () => {
    const year = sold(seasonal('nov'), 12);
    expect(year[1]).toBe(Math.max(...year));
  });
});

describe('what finds no buyer', () => {
  const shop = (unsold: string, kept = 0) =>
    openShop((document) => {
      const [fruit] = document.products;
      fruit.weeklyDemand = kilograms(13);
      fruit.seasonDec = 250;
      fruit.unsold = unsold;
      fruit.mostKept = { value: kept, unit: 'kg', origin: 'guess' };
    });

  it('is not made, or kept for the season, or thrown away at full cost', () => {
    const [order, keep, discard] = [shop('makeToOrder'), shop('keep', 30), shop('discard')].map((plan) =>
      tradeOf(plan, 12),
    );
    // December wants more than the machines make; the store helps by what it holds.
    const december = (trade: typeof order) => (trade?.revenue[11] ?? Number.NaN) / 112;
    expect(december(keep) - december(order)).toBeCloseTo(30, 6);
    expect(discard?.revenue).toEqual(order?.revenue);
    expect(sum(discard?.variableCosts ?? [])).toBeGreaterThan(sum(order?.variableCosts ?? []));
    expect(keep?.stockValue[10]).toBeGreaterThan(0);
    expect(keep?.stockValue[11]).toBeCloseTo(0, 9);
    expect(order?.stockValue.every((value) => value === 0)).toBe(true);
  });

  it('costs as much a kilogram whether it is sold at once or later', () => {
    const perKilogram = (trade: ReturnType<typeof tradeOf>) => sum(trade.variableCosts) / (sum(trade.revenue) / 112);
    // Months run a little differently for today's and the larger market, and energy is not exactly in step with batches.
    expect(perKilogram(tradeOf(shop('keep', 30), 12))).toBeCloseTo(perKilogram(tradeOf(shop('makeToOrder'), 12)), 2);
  });
});

describe('failing pumps', () => {
  const failing = (perYear: number) =>
    tradeOf(
      openShop((document) => {
        document.pumps[0].failuresPerYear = { value: perYear, unit: '1/year', origin: 'guess' };
        document.pumps[0].repairTime = { value: 7, unit: 'd', origin: 'guess' };
      }),
      12,
    );

  it('take sales for as long as they stand still, and their bills and spoiled loads on top, once', () => {
    const [sound, poor] = [failing(0), failing(4)];
    const { failures } = poor.week;
    expect(failures.availability).toBeLessThan(0.97);
    expect(sum(poor.revenue) / sum(sound.revenue)).toBeCloseTo(failures.availability, 9);
    const more = sum(poor.fixedCosts) - sum(sound.fixedCosts);
    expect(more).toBeCloseTo(failures.cost.spoiled + failures.cost.repairs, 6);
    const lost = sum(sound.revenue) - sum(sound.variableCosts) - (sum(poor.revenue) - sum(poor.variableCosts));
    expect(lost).toBeCloseTo(failures.cost.idle, 0);
  });
});

describe('prices by the hour', () => {
  it('weigh the power of every quarter hour', () => {
    const week = (edit: (document: Loose) => void) => tradeOf(openShop(edit), 1).week.account.electricity;
    const flat = week((document) => {
      document.site.electricityPrice = { value: 0.1, unit: 'money/kWh', origin: 'guess' };
    });
    const bands = week((document) => {
      document.site.electricityPrice = { value: 0.1, unit: 'money/kWh', origin: 'guess' };
      const price = { value: 0.3, unit: 'money/kWh', origin: 'guess' };
      document.site.priceBands = [{ id: 'peak', name: 'Peak', weekdays: [0, 1, 2, 3, 4], start: 16, end: 22, price }];
    });
    // The made-up week draws the same power all the time: 30 of 168 hours are dear.
    expect(bands.meanPrice).toBeCloseTo(0.1 + (0.2 * 30) / 168, 12);
    expect(bands.energyCharge / flat.energyCharge).toBeCloseTo(bands.meanPrice / 0.1, 12);
  });
});
