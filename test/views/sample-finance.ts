import { type Projection, projectPlan } from '../../lib/finance/project-plan.ts';
import type { ScenarioFinance } from '../../lib/model/scenario-result.ts';

const NOTHING = new Array<number>(12).fill(0);

/** A year in which nothing moves. */
const QUIET: Projection = projectPlan({
  horizonMonths: 12,
  revenue: NOTHING,
  variableCosts: NOTHING,
  fixedCosts: NOTHING,
  stockValue: NOTHING,
  purchases: [],
  loans: [],
  tax: { rate: 0, lossOffsetShare: 1, paidEveryMonths: 12 },
  workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
  before: { revenue: 0, variableCosts: 0 },
  openingCash: 0,
  ownerPaidIn: NOTHING,
  ownerDraws: NOTHING,
});

/** Finances of a made-up result, for views that show little of them. */
export const SAMPLE_FINANCE: Omit<ScenarioFinance, 'versusToday'> = {
  cash: [],
  statements: { income: QUIET.income, cash: QUIET.cash, balance: QUIET.balance },
  loans: [],
  funding: { uses: [], sources: [], total: 0 },
  coverByYear: [],
  lowestCover: 1.5,
  lowestCoverEndsIn: 11,
  coverByYearOwnerPaid: [],
  lowestCoverOwnerPaid: 0.5,
  line: 1.25,
  meetsLine: true,
  yearlyDebtService: 0,
  lowestCash: 0,
};
