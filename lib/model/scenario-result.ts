import type { ElectricityCost } from '../cost/electricity.ts';
import type { LabourCost } from '../cost/labour.ts';
import type { PumpUpkeepCost } from '../cost/pump-upkeep.ts';
import type { WeeklyCost } from '../cost/weekly-cost.ts';
import type { PlantReport } from '../plant/report-types.ts';
import type { Finding } from '../result.ts';

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

/** What the scenario does to the purse, against today. Null for today itself. */
export interface ScenarioReturn {
  /** After-tax cash against today, loans left out, month 0 first [money/month]. */
  readonly incremental: readonly number[];
  readonly cumulative: readonly number[];
  /** Worth of equipment and stock left at the horizon beyond today's, less tax [money]: in the present value, not in the cash. */
  readonly leftAtHorizon: number;
  readonly payback: Payback;
  readonly discountedPayback: Payback;
  readonly netPresentValue: number;
  readonly rateOfReturn: RateOfReturn;
  /** Deepest point of the cumulative cash [money], ≤ 0. */
  readonly deepestCash: number;
}

export interface ScenarioFinance {
  /** Cash left after costs, tax and loan payments by month [money/month]. */
  readonly cash: readonly number[];
  /** Debt-service cover by year; null in a year without debt service. */
  readonly coverByYear: readonly (number | null)[];
  /** Lowest cover of any trailing twelve months with debt service; null when there is none. */
  readonly lowestCover: number | null;
  readonly yearlyDebtService: number;
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
