import { type Projection, projectPlan } from '../finance/project-plan.ts';
import type { TaxTerms } from '../finance/tax-ledger.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';
import { equipmentPurchases } from './equipment-purchases.ts';
import { horizonMonths } from './horizon-months.ts';
import { monthlyTrade } from './monthly-trade.ts';
import { type DrawnLoan, type PlannedPurchase, planLoans } from './plan-loans.ts';
import { stageCapital } from './scenario-capital.ts';
import type { Stage } from './scenario-stages.ts';
import type { TradePhase } from './trade-phase.ts';

const SECONDS_PER_DAY = 86_400;

const SETTLED_EVERY = { monthly: 1, quarterly: 3, yearly: 12 } as const;

/** What is paid at each stage and when. */
export function stagePurchases(plan: Plan, stages: readonly Stage[]): PlannedPurchase[] {
  return stages.map((stage) => ({ month: stage.month, capital: stageCapital(plan, stage).total }));
}

/** What the owner puts in: whatever of the purchases no loan of that month pays, and the fees. */
function ownMoney(purchases: readonly PlannedPurchase[], loans: readonly DrawnLoan[], horizon: number): number[] {
  return Array.from({ length: horizon }, (_, month) => {
    const paid = purchases.reduce((sum, { month: at, capital }) => sum + (at === month ? capital : 0), 0);
    const drawn = loans.filter(({ terms }) => terms.drawMonth === month && !terms.isRunning);
    const lent = drawn.reduce((sum, { terms }) => sum + terms.principal, 0);
    const fees = drawn.reduce((sum, { terms }) => sum + terms.fee, 0);
    return Math.max(0, paid - lent) + fees;
  });
}

/** A month of the shop as it ran before the plan. */
function monthBefore(plan: Plan, today: TradePhase): { readonly revenue: number; readonly variableCosts: number } {
  const trade = monthlyTrade(plan, [today], 1);
  return { revenue: trade.revenue[0] ?? 0, variableCosts: trade.variableCosts[0] ?? 0 };
}

function taxTerms(plan: Plan): TaxTerms {
  const { taxRate, lossOffset, taxSettled } = baseValues('financing', plan.financing);
  return { rate: taxRate, lossOffsetShare: lossOffset, paidEveryMonths: SETTLED_EVERY[taxSettled] };
}

/**
 * The shop projected month by month on the way to a scenario. The first of `phases` is today, as it ran before the plan; a
 * scenario adds one for each stage, from the month it starts on, which may be later than the one it is paid for.
 * @param stages what is bought; none for today itself
 */
export function planProjection(
  plan: Plan,
  stages: readonly Stage[],
  phases: readonly [TradePhase, ...TradePhase[]],
): Projection {
  const horizon = horizonMonths(plan);
  const financing = baseValues('financing', plan.financing);
  const bought = stagePurchases(plan, stages);
  const loans = planLoans(plan, bought);
  return projectPlan({
    horizonMonths: horizon,
    ...monthlyTrade(plan, phases, horizon),
    purchases: equipmentPurchases(plan, stages),
    loans: loans.map(({ terms }) => terms),
    tax: taxTerms(plan),
    workingCapital: {
      receivableDays: financing.receivableDays / SECONDS_PER_DAY,
      inventoryDays: financing.stockDays / SECONDS_PER_DAY,
      payableDays: financing.payableDays / SECONDS_PER_DAY,
    },
    before: monthBefore(plan, phases[0]),
    openingCash: financing.openingCash,
    ownerPaidIn: ownMoney(bought, loans, horizon),
    ownerDraws: Array.from({ length: horizon }, () => 0),
  });
}
