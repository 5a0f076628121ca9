import { WEEKS_PER_MONTH } from '../cost/month-length.ts';
import { annuityPayment } from '../finance/annuity.ts';
import { fromCents, toCents } from '../finance/cents.ts';
import { type Comparison, compareWithToday, type ReturnTerms } from '../finance/compare-with-today.ts';
import { debtServiceCover } from '../finance/debt-service-cover.ts';
import type { InternalRates } from '../finance/internal-rates.ts';
import { loanSchedule } from '../finance/loan-schedule.ts';
import type { Payback as FoundPayback } from '../finance/payback.ts';
import type { Projection } from '../finance/project-plan.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';
import { funding } from './funding.ts';
import { ownerWeek } from './owner-week.ts';
import { type DrawnLoan, planLoans } from './plan-loans.ts';
import { stagePurchases } from './plan-projection.ts';
import type {
  DebtCover,
  LoanAccount,
  Payback,
  RateOfReturn,
  ScenarioFinance,
  ScenarioReturn,
} from './scenario-result.ts';
import type { Stage } from './scenario-stages.ts';

function shownPayback(found: FoundPayback): Payback {
  if (found.kind === 'notNeeded') return { kind: 'noOutlay' };
  if (found.kind === 'never') return { kind: 'never' };
  return { kind: 'crossed', months: found.period, recrosses: found.later.length > 0 };
}

function shownRate(rates: InternalRates): RateOfReturn {
  if (rates.kind === 'one') return { kind: 'one', yearly: rates.rate };
  return rates.kind === 'several' ? { kind: 'several', yearly: rates.rates } : { kind: 'none' };
}

/** What borrowed money costs [1/year]: the dearest loan for a purchase, or the return wanted where none is planned. */
function borrowingRate(plan: Plan): number {
  const { loans } = plan.financing;
  const rates = loans.filter((loan) => loan.basis !== 'running').map((loan) => baseValues('loan', loan).rate);
  return rates.length > 0 ? Math.max(...rates) : baseValues('financing', plan.financing).discountRate;
}

function returnTerms(plan: Plan): ReturnTerms {
  const { discountRate, reinvestRate } = baseValues('financing', plan.financing);
  return { discountRate, financeRate: borrowingRate(plan), reinvestRate };
}

/** A present value as a level yearly amount over a number of months [money/year]: NPV·(A/P). */
function yearly(presentValue: number, rate: number, months: number): number {
  return 0 - annuityPayment(rate, months / 12, presentValue);
}

function shownReturn(comparison: Comparison, terms: ReturnTerms): ScenarioReturn {
  const { beforeFinancing: before, afterFinancing: after } = comparison;
  return {
    incremental: before.flows,
    cumulative: before.totals,
    lines: comparison.lines,
    leftAtHorizon: before.terminal,
    left: comparison.left,
    payback: shownPayback(before.payback),
    discountedPayback: shownPayback(before.discountedPayback),
    netPresentValue: before.netPresentValue,
    yearlyWorth: yearly(before.netPresentValue, terms.discountRate, before.flows.length - 1),
    rateOfReturn: shownRate(before.internalRates),
    modifiedRate: before.modifiedRate,
    profitabilityIndex: comparison.profitabilityIndex,
    deepestCash: before.totals.reduce((lowest, total) => Math.min(lowest, total), 0),
    cashNeeded: comparison.cashNeeded,
    financed: {
      incremental: after.flows,
      cumulative: after.totals,
      payback: shownPayback(after.payback),
      netPresentValue: after.netPresentValue,
      rateOfReturn: shownRate(after.internalRates),
    },
  };
}

function loanAccount({ id, name, terms }: DrawnLoan): LoanAccount {
  const { principal, fee, drawMonth, isRunning = false } = terms;
  return { id, name, principal, fee, drawMonth, isRunning, schedule: loanSchedule(terms) };
}

/** Debt cover as earned, and as it would be with the owner's hours paid. */
function debtCover(plan: Plan, { cover, income, debtService }: Projection): DebtCover {
  const { dscrLine } = baseValues('financing', plan.financing);
  const pay = toCents(ownerWeek(plan) * WEEKS_PER_MONTH);
  const paid = debtServiceCover(
    income.ebitda.map((earned) => earned - pay),
    debtService,
  );
  return {
    coverByYear: cover.byYear,
    lowestCover: cover.lowest,
    lowestCoverEndsIn: cover.lowestEndsIn,
    coverByYearOwnerPaid: paid.byYear,
    lowestCoverOwnerPaid: paid.lowest,
    line: dscrLine,
    meetsLine: cover.lowest === null ? null : cover.lowest >= dscrLine,
  };
}

/**
 * Statements, loans, cash, debt cover and, unless it is today itself, the return against today.
 * @param stages what is bought on the way to the scenario; none for today
 */
export function scenarioFinance(
  plan: Plan,
  stages: readonly Stage[],
  today: Projection,
  scenario: Projection,
): ScenarioFinance {
  const loans = planLoans(plan, stagePurchases(plan, stages));
  const terms = returnTerms(plan);
  const { income, cash, balance, horizonMonths } = scenario;
  return {
    cash: cash.net.map(fromCents),
    statements: { income, cash, balance },
    loans: loans.filter((loan) => loan.terms.drawMonth < horizonMonths).map(loanAccount),
    funding: funding(plan, stages, loans, horizonMonths),
    ...debtCover(plan, scenario),
    yearlyDebtService: fromCents(Math.max(0, ...yearSums(scenario.debtService))),
    lowestCash: fromCents(balance.cash.reduce((lowest, held) => Math.min(lowest, held))),
    versusToday: stages.length === 0 ? null : shownReturn(compareWithToday(today, scenario, terms), terms),
  };
}

function yearSums(months: readonly number[]): number[] {
  const years = Math.floor(months.length / 12);
  return Array.from({ length: years }, (_, year) =>
    months.slice(12 * year, 12 * year + 12).reduce((sum, due) => sum + due, 0),
  );
}
