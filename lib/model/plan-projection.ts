import type { CapitalPurchase } from '../finance/capital-assets.ts';
import { type Projection, projectPlan } from '../finance/project-plan.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type MonthlyTrade, monthlyTrade, type TradePhase } from './monthly-trade.ts';
import { type DrawnLoan, planLoans } from './plan-loans.ts';
import { type PurchaseItem, purchaseItems, scenarioCapital } from './scenario-capital.ts';

/** Months looked ahead, whole. */
export function horizonMonths(plan: Plan): number {
  return Math.round(baseValues('financing', plan.financing).horizon);
}

/** Months after which works and delivery fetch nothing any more. */
const WORKS_LIFE = 1;

/**
 * One thing as it is bought, and bought again each time its useful life ends, the old one sold. It is written off over the
 * life that the tax office sets, which may be another. Works have no life of their own and are not done again.
 */
function purchaseOf(item: PurchaseItem, month: number, taxLife: number): CapitalPurchase {
  return {
    name: item.name,
    month,
    amount: item.count * (item.price + item.installation),
    lifeMonths: item.usefulLife === null ? WORKS_LIFE : Math.max(1, Math.round(item.usefulLife)),
    salvage: item.count * item.salvage,
    method: { kind: 'straightLine', months: taxLife },
    expensedShare: 0,
    replaced: item.usefulLife !== null,
    sold: null,
  };
}

/** Old equipment given in: written off already, so that all it brings is a gain. */
function tradeIn(amount: number, month: number): CapitalPurchase {
  return {
    name: 'Old equipment given in',
    month: -1,
    amount: 0,
    lifeMonths: 1,
    salvage: 0,
    method: { kind: 'straightLine' },
    expensedShare: 0,
    replaced: false,
    sold: { month, amount },
  };
}

/** Delivery and contingency, as one more thing that is written off. */
function extras(price: number): PurchaseItem {
  const name = 'Delivery and contingency';
  return { name, group: 'other', count: 1, price, installation: 0, usefulLife: null, salvage: 0 };
}

/** What is paid and received for equipment: the lines of the capital, to the same total. */
function purchases(plan: Plan, scenario: Scenario, month: number): CapitalPurchase[] {
  const { depreciationLife } = baseValues('financing', plan.financing);
  const taxLife = Math.max(1, Math.round(depreciationLife));
  const { lines } = scenarioCapital(plan, scenario);
  const amountOf = (...groups: readonly string[]) =>
    lines.reduce((sum, line) => sum + (groups.includes(line.group) ? line.amount : 0), 0);
  const items = [...purchaseItems(plan, scenario), extras(amountOf('delivery', 'contingency'))];
  const givenIn = 0 - amountOf('tradeIn');
  return [
    ...items.filter((item) => item.price + item.installation > 0).map((item) => purchaseOf(item, month, taxLife)),
    ...(givenIn > 0 ? [tradeIn(givenIn, month)] : []),
  ];
}

/** What the owner puts in: whatever of a purchase no loan of that month pays, and the fees. */
function ownMoney(capital: number, loans: readonly DrawnLoan[], month: number, horizon: number): number[] {
  return Array.from({ length: horizon }, (_, at) => {
    const drawn = loans.filter(({ terms }) => terms.drawMonth === at && !terms.isRunning);
    const lent = drawn.reduce((sum, { terms }) => sum + terms.principal, 0);
    const fees = drawn.reduce((sum, { terms }) => sum + terms.fee, 0);
    return Math.max(0, (at === month ? capital : 0) - lent) + fees;
  });
}

const SECONDS_PER_DAY = 86_400;

/** Tax is settled every quarter; losses may be set off in full. */
const TAX_SETTLED_EVERY = 3;

/** A month of the shop as it ran before the plan. */
function monthBefore(plan: Plan, today: TradePhase): { readonly revenue: number; readonly variableCosts: number } {
  const trade = monthlyTrade(plan, [today], 1);
  return { revenue: trade.revenue[0] ?? 0, variableCosts: trade.variableCosts[0] ?? 0 };
}

/**
 * The shop projected month by month in one scenario. The first of `phases` is today, as it ran before the plan; a scenario
 * adds its own from its month of purchase on.
 * @param bought month in which all is paid for, when that is before the last phase begins
 */
export function planProjection(
  plan: Plan,
  scenario: Scenario,
  phases: readonly [TradePhase, ...TradePhase[]],
  bought = phases.at(-1)?.month ?? 0,
): Projection {
  const horizon = horizonMonths(plan);
  const financing = baseValues('financing', plan.financing);
  const trade: MonthlyTrade = monthlyTrade(plan, phases, horizon);
  const [today] = phases;
  const month = Math.max(0, bought);
  const capital = scenarioCapital(plan, scenario).total;
  const loans = planLoans(plan, [{ month, capital }]);
  return projectPlan({
    horizonMonths: horizon,
    ...trade,
    purchases: purchases(plan, scenario, month),
    loans: loans.map(({ terms }) => terms),
    tax: { rate: financing.taxRate, lossOffsetShare: 1, paidEveryMonths: TAX_SETTLED_EVERY },
    workingCapital: {
      receivableDays: financing.receivableDays / SECONDS_PER_DAY,
      inventoryDays: financing.stockDays / SECONDS_PER_DAY,
      payableDays: financing.payableDays / SECONDS_PER_DAY,
    },
    before: monthBefore(plan, today),
    openingCash: 0,
    ownerPaidIn: ownMoney(capital, loans, month, horizon),
    ownerDraws: Array.from({ length: horizon }, () => 0),
  });
}
