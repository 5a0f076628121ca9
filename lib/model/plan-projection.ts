import type { CapitalPurchase } from '../finance/capital-assets.ts';
import type { LoanTerms } from '../finance/loan-schedule.ts';
import { type Projection, projectPlan } from '../finance/project-plan.ts';
import { DAYS_PER_MONTH } from '../finance/working-capital.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type MonthlyTrade, monthlyTrade, type TradePhase } from './monthly-trade.ts';
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

function newLoan(plan: Plan, principal: number, month: number): LoanTerms {
  const financing = baseValues('financing', plan.financing);
  const termMonths = Math.max(1, Math.round(financing.loanTerm));
  return {
    principal,
    annualRate: financing.loanRate,
    termMonths,
    graceMonths: 0,
    interestOnlyMonths: Math.min(termMonths - 1, Math.round(financing.graceMonths)),
    fee: financing.fee * principal,
    drawMonth: month,
  };
}

/**
 * Debt the shop has already. Only its monthly payment is known, so it is taken as running through the whole horizon with no
 * interest to deduct, which is on the cautious side for tax and for debt cover.
 */
function runningDebt(plan: Plan, horizon: number): LoanTerms[] {
  const { existingDebtService } = baseValues('financing', plan.financing);
  if (existingDebtService === 0) return [];
  const termMonths = horizon + 1;
  const principal = existingDebtService * termMonths;
  return [{ principal, annualRate: 0, termMonths, graceMonths: 0, interestOnlyMonths: 0, fee: 0, drawMonth: -1 }];
}

function ownMoney(capital: number, loan: LoanTerms | null, month: number, horizon: number): number[] {
  const paidIn = capital > 0 ? capital - (loan?.principal ?? 0) + (loan?.fee ?? 0) : 0;
  return Array.from({ length: horizon }, (_, at) => (at === month ? paidIn : 0));
}

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
  const principal = Math.max(0, capital) * financing.loanShare;
  const loan = principal > 0 ? newLoan(plan, principal, month) : null;
  return projectPlan({
    horizonMonths: horizon,
    ...trade,
    purchases: purchases(plan, scenario, month),
    loans: [...runningDebt(plan, horizon), ...(loan ? [loan] : [])],
    tax: { rate: financing.taxRate, lossOffsetShare: 1, paidEveryMonths: TAX_SETTLED_EVERY },
    workingCapital: {
      receivableDays: 0,
      inventoryDays: financing.workingCapitalMonths * DAYS_PER_MONTH,
      payableDays: 0,
    },
    before: monthBefore(plan, today),
    openingCash: 0,
    ownerPaidIn: ownMoney(capital, loan, month, horizon),
    ownerDraws: Array.from({ length: horizon }, () => 0),
  });
}
