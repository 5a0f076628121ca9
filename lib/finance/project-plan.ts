import { type BalanceSheet, balanceSheet } from './balance-sheet.ts';
import { type CashFlow, cashFlow } from './cash-flow.ts';
import { type CashTimeline, cashTimeline, type TerminalValue, terminalValue } from './cash-timeline.ts';
import type { Cents } from './cents.ts';
import { type DebtServiceCover, debtServiceCover } from './debt-service-cover.ts';
import { type IncomeStatement, incomeStatement } from './income-statement.ts';
import { planBooks } from './plan-books.ts';
import { type PlanTerms, requirePlan } from './plan-terms.ts';

/** A plan projected month by month, in whole cents. */
export interface Projection {
  readonly horizonMonths: number;
  readonly income: IncomeStatement;
  readonly cash: CashFlow;
  /** Opening balance first: one column more than there are months. */
  readonly balance: BalanceSheet;
  /** Interest and principal due by month, as positive amounts. */
  readonly debtService: readonly Cents[];
  readonly cover: DebtServiceCover;
  readonly timeline: CashTimeline;
  readonly terminal: TerminalValue;
}

/**
 * Income statement, cash flow and balance sheet by month, which balance exactly, with the debt service they must cover
 * and the same cash by moment for present values.
 * Throws RangeError on terms that cannot be projected (see `PlanTerms`).
 */
export function projectPlan(terms: PlanTerms): Projection {
  requirePlan(terms);
  const books = planBooks(terms);
  const taxed = incomeStatement(books, terms.tax);
  const cash = cashFlow(books, taxed.income, taxed.tax);
  return {
    horizonMonths: terms.horizonMonths,
    income: taxed.income,
    cash,
    balance: balanceSheet(books, taxed.income, cash, taxed.tax),
    debtService: books.loans.payments,
    cover: debtServiceCover(taxed.income.ebitda, books.loans.payments),
    timeline: cashTimeline(books, taxed),
    terminal: terminalValue(books, taxed, terms.tax),
  };
}
