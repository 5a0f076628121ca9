import { describe, expect, it } from 'vitest';
import { compareWithToday } from '../../lib/finance/compare-with-today.ts';
import type { Projection } from '../../lib/finance/project-plan.ts';
import { monthlyTrade } from '../../lib/model/monthly-trade.ts';
import { planProjection } from '../../lib/model/plan-projection.ts';
import { scenarioStages } from '../../lib/model/scenario-stages.ts';
import { scenarioWeek } from '../../lib/model/scenario-week.ts';
import type { TradePhase } from '../../lib/model/trade-phase.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { Loose } from '../plan/edited-demo.ts';
import { smallPlan } from './edited-plan.ts';

const TERMS = { discountRate: 0.12, financeRate: 0.105, reinvestRate: 0.04 };

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

interface Projected {
  readonly today: Projection;
  readonly two: Projection;
  readonly phases: readonly [TradePhase, TradePhase];
}

function phaseOf(plan: Plan, scenario: Scenario, month: number): TradePhase {
  const week = scenarioWeek(plan, scenario);
  if (!week.ok) throw new Error(JSON.stringify(week.error));
  return { month, week: week.value };
}

function projected(plan: Plan): Projected {
  const [today, two] = plan.scenarios as [Scenario, Scenario];
  const phases = [phaseOf(plan, today, -1), phaseOf(plan, two, two.purchaseMonth)] as const;
  const stages = scenarioStages(plan, two);
  return { today: planProjection(plan, [], [phases[0]]), two: planProjection(plan, stages, [...phases]), phases };
}

/** Purchases at 31,328, four fifths of it lent at 10.5 % over 84 months of which the first three pay interest only. */
const PLAN = smallPlan();
const PROJECTED = projected(PLAN);

describe('planProjection', () => {
  it('balances to the cent every month', () => {
    for (const { balance } of [PROJECTED.today, PROJECTED.two]) {
      balance.totalAssets.forEach((assets, month) => {
        expect(assets).toBe((balance.totalLiabilities[month] ?? 0) + (balance.totalEquity[month] ?? 0));
      });
    }
  });

  it('moves cash by what is earned, taxed, tied up, bought, borrowed and paid back, and by nothing else', () => {
    const { income, cash, balance, debtService } = PROJECTED.two;
    cash.net.forEach((net, month) => {
      const taxOwed = (balance.taxPayable[month + 1] ?? 0) - (balance.taxPayable[month] ?? 0);
      const tiedUp = (balance.inventory[month + 1] ?? 0) - (balance.inventory[month] ?? 0);
      const own = (income.ebitda[month] ?? 0) + (income.tax[month] ?? 0) + taxOwed - tiedUp;
      const bought = (cash.purchases[month] ?? 0) + (cash.disposals[month] ?? 0);
      const lent = (cash.loansDrawn[month] ?? 0) + (income.loanFees[month] ?? 0) - (debtService[month] ?? 0);
      expect(net).toBe(own + bought + lent + (cash.ownerPaidIn[month] ?? 0));
    });
  });

  it('buys what the capital lists, to the cent, in the month of purchase', () => {
    const { purchases, loansDrawn, ownerPaidIn } = PROJECTED.two.cash;
    expect(purchases[2]).toBe(-3132800);
    expect(loansDrawn[2]).toBe(Math.round(0.8 * 3132800));
    // The owner pays the rest and the fee of 2 % on the loan.
    expect(ownerPaidIn[2]).toBe(Math.round(0.2 * 3132800 + 0.02 * 0.8 * 3132800));
  });

  it('replaces what the shop has today when its life ends, and has it on the books at what is not written off yet', () => {
    const { today } = PROJECTED;
    // A chamber of 21,500 + 900 for ten years and a pump of 900 for four, both bought a month ago, over seven years of tax.
    const bought = today.cash.purchases.flatMap((amount, month) => (amount === 0 ? [] : [[month, amount]]));
    expect(bought).toEqual([[47, -90000]]);
    expect(today.balance.equipment[0]).toBe(
      2240000 - Math.round((2240000 - 322500) / 84) + 90000 - Math.round(90000 / 84),
    );
  });

  it('takes off the books what a scenario has no use for, and replaces it no more', () => {
    const { two } = PROJECTED;
    expect(two.income.disposalGain[2]).toBe(-(90000 - Math.round((3 * 90000) / 84)));
    expect(two.cash.purchases[47]).toBe(0);
  });

  it('covers debt as worked out by hand from earnings and the annuity of the loan', () => {
    const trade = monthlyTrade(PLAN, PROJECTED.phases, 84);
    const rate = 0.105 / 12;
    const lent = 0.8 * 31328;
    const level = (lent * rate) / (1 - (1 + rate) ** -81);
    const due = Array.from({ length: 84 }, (_, month) => {
      if (month < 2) return 0;
      return month < 5 ? lent * rate : level;
    });
    const ratio = (from: number) => {
      const earned = [trade.revenue, trade.variableCosts, trade.fixedCosts].map((series) =>
        sum(series.slice(from, from + 12)),
      );
      const [revenue = 0, variable = 0, fixed = 0] = earned;
      return (revenue - variable - fixed) / sum(due.slice(from, from + 12));
    };
    const { byYear, lowest } = PROJECTED.two.cover;
    expect(byYear).toHaveLength(7);
    byYear.forEach((cover, year) => {
      expect(cover).toBeCloseTo(ratio(12 * year), 4);
    });
    expect(lowest).toBeCloseTo(Math.min(...Array.from({ length: 73 }, (_, from) => ratio(from))), 4);
  });

  it('sums over the horizon to the extra cash of the comparison once the owner’s money is left out', () => {
    const { today, two } = PROJECTED;
    const own = ({ cash }: Projection) => (sum(cash.net) - sum(cash.ownerPaidIn)) / 100;
    const { afterFinancing } = compareWithToday(today, two, TERMS);
    expect(sum(afterFinancing.flows)).toBeCloseTo(own(two) - own(today), 6);
  });

  it('replaces a pump when its useful life ends, sells the old one, and sells what is left at its worn price', () => {
    const plan = smallPlan((document) => {
      document.pumps[1].usefulLife = { value: 4, unit: 'year', origin: 'guess' };
    });
    const { two } = projected(plan);
    // The pump of 3,400 bought in month 2 lasts 48 months and then fetches a tenth; the tax office spreads it over seven years.
    expect(two.cash.purchases[50]).toBe(-340000);
    expect(two.cash.disposals[50]).toBe(34000);
    expect(two.income.disposalGain[50]).toBe(34000 - (340000 - Math.round(((340000 - 34000) * 48) / 84)));
    // Chambers last ten years and then fetch 15 % of their price, one bought a month before the plan; works fetch nothing.
    const worn = (months: number) => 22400 - (22400 - 0.15 * 21500) * (months / 120);
    const pump = 3400 - 0.9 * 3400 * (34 / 48);
    expect(two.terminal.equipment / 100).toBeCloseTo(worn(82) + worn(85) + pump, 1);
  });

  it('writes off by a published table, or at once, as the plan chooses', () => {
    const written = (edit: (document: Loose) => void) => {
      const { depreciation } = projected(smallPlan(edit)).two.income;
      return depreciation.map((amount) => 0 - amount);
    };
    const table = written((document) => {
      document.financing.depreciationMethod = 'recovery7';
    });
    // What is bought in month 2 takes the 14.29 % of its first year [irs-pub-946]; the chamber and the pump of a month before the
    // plan are in their second, 24.49 %, the pump for the two months until it is given up.
    const expected = 0.1429 * 3132800 + 0.2449 * (2240000 + 90000 / 6);
    expect(Math.abs(sum(table.slice(0, 12)) - expected)).toBeLessThan(5);
    const atOnce = written((document) => {
      document.financing.expensedShare.value = 100;
    });
    expect(atOnce[2]).toBe(3132800);
    expect(sum(atOnce)).toBe(3132800);
  });

  it('pays tax as often as the plan says, and the same in all', () => {
    const paid = (settled: string) => {
      const { income, balance } = projected(
        smallPlan((document) => {
          document.financing.taxSettled = settled;
          // Dear enough for a profit to be taxed.
          document.products[0].price = { value: 170, unit: 'money/kg', origin: 'guess' };
        }),
      ).two;
      return { tax: sum(income.tax), owed: balance.taxPayable.filter((owed) => owed !== 0).length };
    };
    const [monthly, quarterly, yearly] = [paid('monthly'), paid('quarterly'), paid('yearly')];
    expect(monthly.tax).toBe(yearly.tax);
    expect(monthly.owed).toBeLessThan(quarterly.owed);
    expect(quarterly.owed).toBeLessThan(yearly.owed);
  });

  it('receives what is given for old equipment, taxed as a gain', () => {
    const plan = smallPlan((document) => {
      document.scenarios[1].extraCapital = { value: -6000, unit: 'money', origin: 'quoted' };
    });
    const { two } = projected(plan);
    const lost = PROJECTED.two.income.disposalGain[2] ?? 0;
    expect(two.cash.disposals[2]).toBe(600000);
    expect(two.income.disposalGain[2]).toBe(600000 + lost);
    expect((two.cash.purchases[2] ?? 0) + (two.cash.disposals[2] ?? 0)).toBe(-(3132800 - 600000));
    expect(two.cash.loansDrawn[2]).toBe(Math.round(0.8 * (3132800 - 600000)));
  });

  it('ties up stock for a purchase in the first month as for a later one', () => {
    const first = projected(
      smallPlan((document) => {
        document.scenarios[1].purchaseMonth = 0;
      }),
    ).two;
    const grown = (projection: Projection) =>
      (projection.balance.inventory.at(-1) ?? 0) - (projection.balance.inventory[0] ?? 0);
    expect(grown(first)).toBe(grown(PROJECTED.two));
    expect(grown(first)).toBeGreaterThan(0);
    expect(first.balance.inventory[0]).toBe(PROJECTED.today.balance.inventory[0]);
  });
});
