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

  it('shifts it by less where losses of the months before take off some of the tax', () => {
    // Today loses money here, so that each month of waiting leaves more to set off against the first profits.
    const losing = (month: number) =>
      months(
        returnOf(
          two((document) => {
            document.scenarios[1].purchaseMonth = month;
            document.site.rentAndFixed.value = 900;
          }),
        ),
      );
    const shift = losing(12) - losing(0);
    expect(shift).toBeLessThanOrEqual(12 + 1e-9);
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
  const owing = (id: string, amount: number) =>
    computed(
      smallPlan((document) => {
        const [bank] = document.financing.loans;
        const running = { ...structuredClone(bank), id: 'old', name: 'Old loan', basis: 'running' };
        running.amount.value = amount;
        document.financing.loans.push(running);
      }),
      id,
    );

  it('lowers the cover and leaves the return as it is', () => {
    const [none, some, much] = [owing('two', 0), owing('two', 10_000), owing('two', 30_000)];
    const covers = [none, some, much].map((result) => result.finance.lowestCover ?? Number.NaN);
    expect(covers[0]).toBeGreaterThan(covers[1] ?? Number.NaN);
    expect(covers[1]).toBeGreaterThan(covers[2] ?? Number.NaN);
    expect(some.finance.versusToday?.incremental).toEqual(none.finance.versusToday?.incremental);
    // 84 months at 10.5 %, the first three of interest only.
    const rate = 0.105 / 12;
    const level = rate / (1 - (1 + rate) ** -81);
    const more = much.finance.yearlyDebtService - some.finance.yearlyDebtService;
    expect(more).toBeCloseTo(12 * 20_000 * level, 0);
  });

  it('is the only cover today has, and without it there is none', () => {
    expect(owing('today', 0).finance.lowestCover).toBeNull();
    expect(owing('today', 0).finance.coverByYear.every((cover) => cover === null)).toBe(true);
    expect(owing('today', 0).finance.meetsLine).toBeNull();
    const [some, twice] = [owing('today', 5000), owing('today', 10_000)].map(
      (result) => result.finance.lowestCover ?? 0,
    );
    expect((some ?? 0) / (twice ?? 0)).toBeCloseTo(2, 3);
  });

  it('comes in whole at the start, is not drawn and is paid off to the last cent', () => {
    const { statements, loans } = owing('today', 10_000).finance;
    const [loan] = loans;
    expect(statements.balance.loans[0]).toBe(1_000_000);
    expect(statements.cash.loansDrawn.every((drawn) => drawn === 0)).toBe(true);
    expect(loan).toMatchObject({ name: 'Old loan', principal: 10_000, fee: 0, isRunning: true });
    expect(loan?.schedule).toHaveLength(84);
    expect(loan?.schedule.at(-1)?.closing).toBe(0);
    expect(statements.balance.loans.at(-1)).toBe(0);
  });
});

describe('several loans', () => {
  const lent = (edit: (loans: Loose) => void) =>
    two((document) => {
      edit(document.financing.loans);
    });

  it('pay their shares of the purchase, a fixed sum beside them, and the owner the rest', () => {
    const { finance, capitalTotal } = lent((loans) => {
      const [bank] = loans;
      bank.share.value = 50;
      loans.push({ ...structuredClone(bank), id: 'seller', name: 'Seller', share: { ...bank.share, value: 20 } });
      const fixed = { ...structuredClone(bank), id: 'aunt', name: 'Aunt', basis: 'amount' };
      fixed.amount.value = 4000;
      fixed.fee.value = 0;
      loans.push(fixed);
    });
    const cents = Object.fromEntries(finance.funding.sources.map((line) => [line.label, line.cents]));
    const total = Math.round(100 * capitalTotal);
    expect(cents['Bank loan']).toBe(Math.round(0.5 * total));
    expect(cents.Seller).toBe(Math.round(0.2 * total));
    expect(cents.Aunt).toBe(400_000);
    expect(cents['Your own money']).toBe(Math.round(0.3 * total) - 400_000 + Math.round(0.02 * 0.7 * total));
    const used = finance.funding.uses.reduce((sum, line) => sum + line.cents, 0);
    expect(used).toBe(Object.values(cents).reduce((sum, amount) => sum + amount, 0));
    expect(finance.loans.map((loan) => loan.name)).toEqual(['Bank loan', 'Seller', 'Aunt']);
    // What the owner puts in is what the books say.
    const own = finance.statements.cash.ownerPaidIn.reduce((sum, amount) => sum + amount, 0);
    expect(own).toBe(cents['Your own money']);
  });

  it('keep what is lent beyond the purchase in the business', () => {
    const { finance } = lent((loans) => {
      loans[0].basis = 'amount';
      loans[0].amount.value = 50_000;
    });
    const kept = finance.funding.uses.find((line) => line.label === 'Kept in the business');
    expect(kept?.cents).toBe(5_000_000 - 3_132_800 - 100_000);
  });

  it('may come months after the purchase, which the owner pays until then', () => {
    const { finance } = lent((loans) => {
      loans[0].startMonth.value = 4;
    });
    const { loansDrawn, ownerPaidIn } = finance.statements.cash;
    expect(ownerPaidIn[2]).toBe(3_132_800);
    expect(loansDrawn[6]).toBe(Math.round(0.8 * 3_132_800));
    expect(finance.loans[0]?.drawMonth).toBe(6);
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
    const { coverByYearOwnerPaid: _, lowestCoverOwnerPaid: dearCover, ...rest } = dear.finance;
    const { coverByYearOwnerPaid: _years, lowestCoverOwnerPaid: cover, ...before } = BASE.finance;
    expect(rest).toEqual(before);
    expect(dearCover).toBeLessThan(cover ?? Number.NaN);
  });

  it('take as much off the cover as they are worth against the payments of the worst twelve months', () => {
    const { finance, cost } = BASE;
    const weeks = 365.25 / 7;
    const due = finance.statements.cash.principalRepaid.map(
      (principal, month) => 0 - principal - (finance.statements.income.interest[month] ?? 0),
    );
    const year = due.slice(24, 36).reduce((sum, amount) => sum + amount, 0) / 100;
    const [third, paid] = [finance.coverByYear[2] ?? 0, finance.coverByYearOwnerPaid[2] ?? 0];
    expect((third - paid) * year).toBeCloseTo(cost.ownerTimePerWeek * weeks, 0);
  });

  it('save wages where they are spent at the chambers', () => {
    const helped = two((document) => {
      document.crew.ownerAtChambers.value = 5;
    });
    const saved = BASE.account.labour.paid - helped.account.labour.paid;
    expect(saved).toBeCloseTo(5 * 18.33 * 1.12, 9);
    expect(helped.cost.contributionPerWeek - BASE.cost.contributionPerWeek).toBeCloseTo(saved, 9);
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
