import type { CapitalPurchase } from '../finance/capital-assets.ts';
import type { LoanTerms } from '../finance/loan-schedule.ts';
import { type Projection, projectPlan } from '../finance/project-plan.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { type MonthlyTrade, monthlyTrade, type TradePhase } from './monthly-trade.ts';
import { type PurchaseItem, purchaseItems, scenarioCapital } from './scenario-capital.ts';

/** Days in a month: 365.25/12. */
const DAYS_PER_MONTH = 365.25 / 12;

/** Months looked ahead, whole. */
export function horizonMonths(plan: Plan): number {
  return Math.round(baseValues('financing', plan.financing).horizon);
}

/** One thing as it is bought now and again each time its useful life ends, the old one sold. */
function purchasesOf(item: PurchaseItem, month: number, horizon: number, taxLife: number): CapitalPurchase[] {
  const amount = item.count * (item.price + item.installation);
  const life = item.usefulLife === null ? Number.POSITIVE_INFINITY : Math.max(1, Math.round(item.usefulLife));
  const purchases: CapitalPurchase[] = [];
  for (let bought = month; bought < horizon; bought += life) {
    const until = bought + life;
    purchases.push({
      name: item.name,
      month: bought,
      amount,
      lifeMonths: taxLife,
      salvage: item.count * item.salvage,
      method: { kind: 'straightLine' },
      expensedShare: 0,
      replaced: false,
      sold: until < horizon ? { month: until, amount: item.count * item.salvage } : null,
    });
  }
  return purchases;
}

function purchases(plan: Plan, scenario: Scenario, month: number, horizon: number): CapitalPurchase[] {
  const { depreciationLife } = baseValues('financing', plan.financing);
  const taxLife = Math.max(1, Math.round(depreciationLife));
  const items = purchaseItems(plan, scenario);
  const named = items.reduce((sum, item) => sum + item.count * (item.price + item.installation), 0);
  const rest = scenarioCapital(plan, scenario).total - named;
  const extras: PurchaseItem = {
    name: 'Delivery and contingency',
    group: 'other',
    count: 1,
    price: Math.max(0, rest),
    installation: 0,
    usefulLife: null,
    salvage: 0,
  };
  return [...items, ...(rest > 0 ? [extras] : [])].flatMap((item) => purchasesOf(item, month, horizon, taxLife));
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

/**
 * The shop projected month by month in one scenario. `phases` starts with today; a scenario adds its own from its month of
 * purchase on.
 */
export function planProjection(plan: Plan, scenario: Scenario, phases: readonly TradePhase[]): Projection {
  const horizon = horizonMonths(plan);
  const financing = baseValues('financing', plan.financing);
  const trade: MonthlyTrade = monthlyTrade(plan, phases, horizon);
  const month = phases.length > 1 ? (phases.at(-1) as TradePhase).month : Math.round(scenario.purchaseMonth);
  const capital = scenarioCapital(plan, scenario).total;
  const principal = Math.max(0, capital) * financing.loanShare;
  const loan = principal > 0 ? newLoan(plan, principal, month) : null;
  return projectPlan({
    horizonMonths: horizon,
    ...trade,
    purchases: purchases(plan, scenario, month, horizon),
    loans: [...runningDebt(plan, horizon), ...(loan ? [loan] : [])],
    tax: { rate: financing.taxRate, lossOffsetShare: 1, paidEveryMonths: TAX_SETTLED_EVERY },
    workingCapital: {
      receivableDays: 0,
      inventoryDays: financing.workingCapitalMonths * DAYS_PER_MONTH,
      payableDays: 0,
    },
    before: { revenue: trade.revenue[0] ?? 0, variableCosts: trade.variableCosts[0] ?? 0 },
    openingCash: 0,
    ownerPaidIn: ownMoney(capital, loan, month, horizon),
    ownerDraws: Array.from({ length: horizon }, () => 0),
  });
}
