import { describe, expect, it } from 'vitest';
import type { Loose } from '../plan/edited-demo.ts';
import { computed, returnOf } from './computed.ts';
import { smallPlan } from './edited-plan.ts';

function two(edit?: (document: Loose) => void) {
  return computed(smallPlan(edit), 'two');
}

function boughtIn(month: number, taxRate = 24) {
  return returnOf(
    two((document) => {
      document.scenarios[1].purchaseMonth = month;
      document.financing.taxRate.value = taxRate;
    }),
  );
}

function months(found: ReturnType<typeof returnOf>): number {
  if (found.payback.kind !== 'crossed') throw new Error(`payback expected, got ${found.payback.kind}`);
  return found.payback.months;
}

const BASE = two();

describe('the month of purchase', () => {
  it('shifts payback by as many months where no tax is paid, from the first month on', () => {
    const early = months(boughtIn(0, 0));
    expect(months(boughtIn(5, 0)) - early).toBeCloseTo(5, 4);
    expect(months(boughtIn(12, 0)) - early).toBeCloseTo(12, 4);
  });

  it('shifts it by a little less where losses of the months before take off some of the tax', () => {
    const shift = months(boughtIn(12)) - months(boughtIn(0));
    expect(shift).toBeLessThan(12);
    expect(shift).toBeGreaterThan(10);
  });

  it('pays the whole capital at once at its start, and nothing before', () => {
    expect(boughtIn(0).incremental[0]).toBe(-BASE.capitalTotal);
    const later = boughtIn(12);
    expect(later.incremental.slice(0, 12)).toEqual(new Array(12).fill(0));
    expect(later.incremental[12]).toBe(-BASE.capitalTotal);
  });
});

describe('debt that runs already', () => {
  const withDebt = (monthly: number) =>
    two((document) => {
      document.financing.existingDebtService = { value: monthly, unit: 'money/month', origin: 'measured' };
    });

  it('lowers the cover and leaves the return as it is', () => {
    const [none, some, much] = [withDebt(0), withDebt(300), withDebt(900)];
    const covers = [none, some, much].map((result) => result.finance.lowestCover ?? Number.NaN);
    expect(covers[0]).toBeGreaterThan(covers[1] ?? Number.NaN);
    expect(covers[1]).toBeGreaterThan(covers[2] ?? Number.NaN);
    expect(some.finance.versusToday).toEqual(none.finance.versusToday);
    expect(much.finance.yearlyDebtService - some.finance.yearlyDebtService).toBeCloseTo(12 * 600, 6);
  });

  it('is the only cover today has; without it there is none', () => {
    const today = (monthly: number) =>
      computed(
        smallPlan((document) => {
          document.financing.existingDebtService = { value: monthly, unit: 'money/month', origin: 'measured' };
        }),
        'today',
      ).finance;
    expect(today(0).lowestCover).toBeNull();
    expect(today(0).coverByYear.every((cover) => cover === null)).toBe(true);
    const [some, twice] = [today(100).lowestCover ?? 0, today(200).lowestCover ?? 0];
    expect(some / twice).toBeCloseTo(2, 6);
  });
});

describe('the owner’s own hours', () => {
  it('are shown apart: their rate moves no cost, no cash and no return', () => {
    const dear = two((document) => {
      document.crew.ownerRate.value *= 3;
    });
    expect(dear.cost.ownerTimePerWeek).toBeCloseTo(3 * BASE.cost.ownerTimePerWeek, 9);
    expect(BASE.cost.ownerTimePerWeek).toBeGreaterThan(0);
    expect({ ...dear.cost, ownerTimePerWeek: 0 }).toEqual({ ...BASE.cost, ownerTimePerWeek: 0 });
    expect(dear.finance).toEqual(BASE.finance);
  });
});

describe('what the market takes', () => {
  const selling = (weekly: number | null) =>
    two((document) => {
      document.products[0].weeklyDemand = weekly === null ? null : { value: weekly, unit: 'kg/week', origin: 'guess' };
    });

  it('limits what is made and sold in a week, a batch more or less', () => {
    const [few, more] = [selling(3), selling(6)];
    const price = 112;
    expect(few.cost.salesPerWeek).toBeLessThan(more.cost.salesPerWeek);
    expect(more.cost.salesPerWeek).toBeLessThan(BASE.cost.salesPerWeek);
    const batch = BASE.plant.dryOut / BASE.plant.batches;
    for (const [result, demand] of [
      [few, 3],
      [more, 6],
    ] as const) {
      expect(result.cost.salesPerWeek).toBeLessThanOrEqual((demand + batch / 4) * price);
      expect(result.plant.phases.idleNoDemand).toBeGreaterThan(0);
    }
  });

  it('limits the cash: a market that takes nothing more leaves nothing to pay back with', () => {
    const small = selling(3);
    expect(returnOf(small).payback.kind).toBe('never');
    expect(returnOf(small).netPresentValue).toBeLessThan(returnOf(BASE).netPresentValue);
  });
});
