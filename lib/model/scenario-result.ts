import type { ElectricityCost } from '../cost/electricity.ts';
import type { LabourCost } from '../cost/labour.ts';
import type { PumpUpkeepCost } from '../cost/pump-upkeep.ts';
import type { WeeklyCost } from '../cost/weekly-cost.ts';
import type { BalanceSheet } from '../finance/balance-sheet.ts';
import type { CashFlow } from '../finance/cash-flow.ts';
import type { CashTimeline, TerminalValue } from '../finance/cash-timeline.ts';
import type { CashNeeded } from '../finance/compare-with-today.ts';
import type { IncomeStatement } from '../finance/income-statement.ts';
import type { LoanMonth } from '../finance/loan-schedule.ts';
import type { PlantReport } from '../plant/report-types.ts';
import type { Finding } from '../result.ts';
import type { Funding } from './funding.ts';
import type { ProductTrade } from './monthly-trade.ts';
import type { ExpectedFailures } from './pump-failure-expected.ts';

/** Parts of what a batch costs. */
export type CostPart = 'materials' | 'packaging' | 'oil' | 'electricity' | 'labour' | 'other';

/** One part of the running cost; money out is positive here, because it is called a cost. */
export interface CostLine {
  readonly part: CostPart;
  readonly perWeek: number;
  readonly perBatch: number;
  /** Per kilogram of finished product [money/kg]. */
  readonly perKilogram: number;
}

export interface ScenarioCost {
  readonly lines: readonly CostLine[];
  readonly perWeek: number;
  readonly perBatch: number;
  readonly perKilogram: number;
  /** Sales per week in a normal week, all demand limits applied [money/week]. */
  readonly salesPerWeek: number;
  /** Sales less running cost [money/week] and per batch. */
  readonly contributionPerWeek: number;
  readonly contributionPerBatch: number;
  /** The owner's own hours at the owner's rate, shown apart and not in the lines [money/week]. */
  readonly ownerTimePerWeek: number;
  /** Oil changes a week, all pumps, and what forces them. */
  readonly oilChangesPerWeek: number;
  readonly oilLimit: 'hours' | 'water';
}

/** The accounts of the week behind the cost: what an explanation goes down to. */
export interface WeekAccount {
  readonly week: WeeklyCost;
  readonly electricity: ElectricityCost;
  readonly labour: LabourCost;
  /** By pump, in the order of the plant's groups. */
  readonly upkeep: readonly PumpUpkeepCost[];
}

export interface CapitalLine {
  readonly label: string;
  readonly amount: number;
  /** Month of the plan at whose start it is paid. */
  readonly month: number;
}

/** Sales of a week at which costs are just covered; null where there is no such point. */
export interface BreakEvenPoint {
  /** Dried product fit for sale [kg/week]. */
  readonly perWeek: number | null;
  /** [money/week] */
  readonly salesPerWeek: number | null;
  /** Share by which the sales of a normal week may fall [–]; negative below the point. */
  readonly marginOfSafety: number | null;
}

/** The mix that leaves most in a week. */
export interface ScenarioBestMix {
  readonly batches: readonly { readonly productId: string; readonly perWeek: number }[];
  /** Sales less running cost [money/week]. */
  readonly contribution: number;
  /** By how much that is more than the planned mix leaves [money/week]. */
  readonly gain: number;
  /** What one more hour a week would bring [money/h]; 0 where there are hours enough. */
  readonly worthOfHour: { readonly chambers: number; readonly crew: number };
}

export interface ScenarioBreakEven {
  /** Costs of a week that do not change with what is made [money/week]. */
  readonly fixedPerWeek: number;
  /** Running and standing cost covered. */
  readonly operating: BreakEvenPoint;
  /** Loan payments of the dearest year covered too. */
  readonly withLoans: BreakEvenPoint;
}

export type Payback =
  | { readonly kind: 'crossed'; readonly months: number; readonly recrosses: boolean }
  | { readonly kind: 'never' }
  /** Nothing was spent, so there is nothing to pay back. */
  | { readonly kind: 'noOutlay' };

export type RateOfReturn =
  | { readonly kind: 'one'; readonly yearly: number }
  | { readonly kind: 'several'; readonly yearly: readonly number[] }
  | { readonly kind: 'none' };

/** What is made and sold month by month. */
export interface ScenarioTrade {
  readonly products: readonly ProductTrade[];
  /** Costs that run on whatever is made, failing pumps among them [money/month]. */
  readonly fixedCosts: readonly number[];
}

/** What the scenario does to the purse, against today. Null for today itself. */
export interface ScenarioReturn {
  /** After-tax cash against today, loans left out, month 0 first [money/month]. */
  readonly incremental: readonly number[];
  readonly cumulative: readonly number[];
  /** What moves that cash, by moment: index t is t months after the start [money]. */
  readonly lines: CashTimeline;
  /** Worth of equipment and stock left at the horizon beyond today's, less tax [money]: in the present value, not in the cash. */
  readonly leftAtHorizon: number;
  /** Its parts [money]. */
  readonly left: TerminalValue;
  readonly payback: Payback;
  readonly discountedPayback: Payback;
  readonly netPresentValue: number;
  /** The net present value as a level amount for every year of the horizon [money/year]. */
  readonly yearlyWorth: number;
  readonly rateOfReturn: RateOfReturn;
  /** Modified internal rate [1/year]; null when nothing is paid or nothing received. */
  readonly modifiedRate: number | null;
  /** Worth of each unit of money invested beyond today [–]; null when nothing is. */
  readonly profitabilityIndex: number | null;
  /** Deepest point of the cumulative cash [money], ≤ 0. */
  readonly deepestCash: number;
  /** The deepest the owner's own money goes before it has come back, loans and their payments counted, and what takes it there. */
  readonly cashNeeded: CashNeeded;
  /** The same measures of what is left after loans and their effect on tax. */
  readonly financed: FinancedReturn;
}

/** What the owner's own money does. */
export interface FinancedReturn {
  readonly incremental: readonly number[];
  readonly cumulative: readonly number[];
  readonly payback: Payback;
  readonly netPresentValue: number;
  readonly rateOfReturn: RateOfReturn;
}

/** The three statements by month, in whole cents; they balance to the cent. */
export interface Statements {
  readonly income: IncomeStatement;
  readonly cash: CashFlow;
  /** The opening balance first. */
  readonly balance: BalanceSheet;
}

/** One loan as it is drawn and paid off. */
export interface LoanAccount {
  /** Of the loan in the plan; a loan on a share of purchases is drawn once for each. */
  readonly id: string;
  readonly name: string;
  /** [money] */
  readonly principal: number;
  readonly fee: number;
  /** Month of the plan at whose start it is drawn. */
  readonly drawMonth: number;
  /** True for debt that the business has today. */
  readonly isRunning: boolean;
  /** To its end, which may lie beyond the horizon. */
  readonly schedule: readonly LoanMonth[];
}

/** How well earnings cover the loan payments. */
export interface DebtCover {
  /** Debt-service cover by year; null in a year without debt service. */
  readonly coverByYear: readonly (number | null)[];
  /** Lowest cover of any trailing twelve months with debt service; null when there is none. */
  readonly lowestCover: number | null;
  /** Last month of those twelve; null as above. */
  readonly lowestCoverEndsIn: number | null;
  /** The same as if the owner's hours were paid. */
  readonly coverByYearOwnerPaid: readonly (number | null)[];
  readonly lowestCoverOwnerPaid: number | null;
  /** The lender's line [–]. */
  readonly line: number;
  /** Whether the lowest cover reaches it; null without debt. */
  readonly meetsLine: boolean | null;
}

export interface ScenarioFinance extends DebtCover {
  /** Cash left after costs, tax and loan payments by month [money/month]. */
  readonly cash: readonly number[];
  readonly statements: Statements;
  /** Debt that runs already and every loan drawn within the horizon. */
  readonly loans: readonly LoanAccount[];
  readonly funding: Funding;
  /** Interest and principal of the year in which most is due [money]. */
  readonly yearlyDebtService: number;
  /** Least money in the bank at the end of any month [money]; negative when it runs out. */
  readonly lowestCash: number;
  readonly versusToday: ScenarioReturn | null;
}

export interface ScenarioResult {
  readonly scenarioId: string;
  readonly name: string;
  readonly chambers: number;
  readonly pumps: number;
  readonly plant: PlantReport;
  readonly cost: ScenarioCost;
  readonly account: WeekAccount;
  readonly capital: readonly CapitalLine[];
  readonly capitalTotal: number;
  readonly finance: ScenarioFinance;
  /** What is made and sold month by month on the way to the scenario. */
  readonly trade: ScenarioTrade;
  readonly breakEven: ScenarioBreakEven;
  /** Null when nothing is made. */
  readonly bestMix: ScenarioBestMix | null;
  /** The mean year of failing pumps. */
  readonly failures: ExpectedFailures;
  /** What the pumps cost a year, owning, running and failing [money/year], negative. */
  readonly pumpsPerYear: number;
  /** Things to look at that do not stop the computation, electrical load among them. */
  readonly warnings: readonly Finding[];
}

export type ScenarioOutcome =
  | { readonly kind: 'computed'; readonly result: ScenarioResult }
  | {
      readonly kind: 'refused';
      readonly scenarioId: string;
      readonly name: string;
      readonly findings: readonly Finding[];
    };
