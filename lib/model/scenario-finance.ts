import { fromCents } from '../finance/cents.ts';
import { compareWithToday } from '../finance/compare-with-today.ts';
import type { InternalRates } from '../finance/internal-rates.ts';
import type { Payback as FoundPayback } from '../finance/payback.ts';
import type { Projection } from '../finance/project-plan.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { Payback, RateOfReturn, ScenarioFinance, ScenarioReturn } from './scenario-result.ts';

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

function returnAgainstToday(plan: Plan, today: Projection, scenario: Projection): ScenarioReturn {
  const { discountRate, reinvestRate } = baseValues('financing', plan.financing);
  const terms = { discountRate, financeRate: borrowingRate(plan), reinvestRate };
  const { beforeFinancing } = compareWithToday(today, scenario, terms);
  return {
    incremental: beforeFinancing.flows,
    cumulative: beforeFinancing.totals,
    leftAtHorizon: beforeFinancing.terminal,
    payback: shownPayback(beforeFinancing.payback),
    discountedPayback: shownPayback(beforeFinancing.discountedPayback),
    netPresentValue: beforeFinancing.netPresentValue,
    rateOfReturn: shownRate(beforeFinancing.internalRates),
    deepestCash: beforeFinancing.totals.reduce((lowest, total) => Math.min(lowest, total), 0),
  };
}

/** Cash, debt cover and, unless it is today itself, the return against today. */
export function scenarioFinance(
  plan: Plan,
  today: Projection,
  scenario: Projection,
  isToday: boolean,
): ScenarioFinance {
  return {
    cash: scenario.cash.net.map(fromCents),
    coverByYear: scenario.cover.byYear,
    lowestCover: scenario.cover.lowest,
    yearlyDebtService: fromCents(Math.max(0, ...yearSums(scenario.debtService))),
    versusToday: isToday ? null : returnAgainstToday(plan, today, scenario),
  };
}

function yearSums(months: readonly number[]): number[] {
  const years = Math.floor(months.length / 12);
  return Array.from({ length: years }, (_, year) =>
    months.slice(12 * year, 12 * year + 12).reduce((sum, due) => sum + due, 0),
  );
}
