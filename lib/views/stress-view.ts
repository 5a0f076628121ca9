import type { Payback } from '../model/scenario-result.ts';
import type { ReverseStress } from '../risk/reverse-stress.ts';
import type { ScenarioRisk } from '../risk/scenario-risk.ts';
import type { StressId, StressOutcome } from '../risk/stress-test.ts';
import type { Stress } from '../risk/stressed-plan.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, formatPercent, formatSensible, NONE } from './format-number.ts';
import { quantityWithUnit, type ShownAs } from './format-quantity.ts';

/** One stress case as the chart draws it. */
export interface StressRow {
  readonly id: StressId;
  readonly label: string;
  /** Lowest debt cover of any twelve months [–]; null without a loan. */
  readonly cover: number | null;
  readonly coverText: string;
  readonly meetsLine: boolean;
}

export interface StressView {
  readonly finding: string;
  readonly summary: string;
  readonly rows: readonly StressRow[];
  readonly ticks: readonly number[];
  readonly line: number;
  readonly table: DataTable;
  readonly series: DataSeries;
}

const MONTH = 'month';

function caseLabel(id: StressId, stress: Stress): string {
  const words: Readonly<Record<StressId, string>> = {
    asPlanned: 'As planned',
    revenue: `Sales down ${formatPercent(stress.revenueFall)}`,
    costs: `Costs up ${formatPercent(stress.costRise)}`,
    rate: `Interest up ${Math.round(1000 * stress.rateRise) / 10} points`,
    late: `${stress.monthsLate} ${MONTH}s late`,
    customer: `Biggest customer lost (${formatPercent(stress.customerLost)})`,
    all: 'All together',
  };
  return words[id];
}

function rowOf(outcome: StressOutcome): StressRow {
  const { id, stress, lowestCover, meetsLine } = outcome;
  return {
    id,
    label: caseLabel(id, stress),
    cover: lowestCover,
    coverText: lowestCover === null ? NONE : formatFixed(lowestCover, 2),
    meetsLine: meetsLine ?? true,
  };
}

/** How far revenue may fall, in words. @param to what it falls to, such as "the lender's line of 1.25" */
function fallWords(reverse: ReverseStress, to: string): string {
  switch (reverse.kind) {
    case 'falls':
      return `Sales may fall by ${formatPercent(reverse.revenueFall)} before debt cover is down to ${to}`;
    case 'alreadyBelow':
      return `Debt cover is below ${to} even as planned: ${formatFixed(reverse.lowestCover, 2)} in the worst twelve months`;
    case 'never':
      return `Debt cover stays above ${to} even without any sales`;
    case 'noDebt':
      return 'There is no loan to be covered';
    case 'notConverged':
      return `Sales may fall by about ${formatPercent(reverse.revenueFall)} before debt cover is down to ${to}`;
  }
}

function paybackMonths(payback: Payback | null): number | null {
  return payback?.kind === 'crossed' ? payback.months : null;
}

function paybackText(payback: Payback | null): string {
  const months = paybackMonths(payback);
  if (months !== null) return `${formatFixed(months, 1)} months`;
  return payback?.kind === 'never' ? 'not within the horizon' : NONE;
}

function tableOf(stress: readonly StressOutcome[], shown: ShownAs): DataTable {
  const money = (value: number | null) => (value === null ? NONE : quantityWithUnit(value, 'money', shown));
  return {
    caption: 'The plan under stress; today is stressed alike where the two are compared',
    head: ['', 'Lowest DSCR', 'Least cash in the bank', 'Net present value', 'Payback'],
    rows: stress.map((outcome) => [
      caseLabel(outcome.id, outcome.stress),
      rowOf(outcome).coverText,
      money(outcome.lowestCash),
      money(outcome.netPresentValue),
      paybackText(outcome.payback),
    ]),
  };
}

function seriesOf(stress: readonly StressOutcome[], shown: ShownAs): DataSeries {
  const unit = `[${shown.currency}]`;
  return {
    head: ['Case', 'Lowest DSCR', `Least cash ${unit}`, `Net present value ${unit}`, 'Payback [months]'],
    rows: stress.map((outcome) => [
      caseLabel(outcome.id, outcome.stress),
      outcome.lowestCover,
      outcome.lowestCash,
      outcome.netPresentValue,
      paybackMonths(outcome.payback),
    ]),
  };
}

function spareWords({ spare, failures }: ScenarioRisk, shown: ShownAs): string {
  const money = (value: number) => quantityWithUnit(value, 'money', shown);
  const worst = `Failing pumps cost ${money(failures.expected.cost.total)} in a mean year, ${money(failures.spread.worstInTwenty)} or more in one year of twenty.`;
  const saved = `A spare pump on the shelf for ${money(spare.price)} would save ${money(spare.savedPerYear)} a year`;
  const pays =
    spare.payback === null ? ' and never pay for itself' : `: paid for in ${formatSensible(spare.payback)} years`;
  return `${worst} ${saved}${pays}.`;
}

/**
 * Everything the figure "when things go wrong" shows.
 * @param line the lender's line for debt cover [–]
 */
export function stressView(risk: ScenarioRisk, line: number, shown: ShownAs): StressView {
  const rows = risk.stress.map(rowOf);
  const covers = rows.flatMap((row) => (row.cover === null ? [] : [row.cover]));
  const toOne = risk.untilUncovered.kind === 'noDebt' ? '' : `${fallWords(risk.untilUncovered, '1.00')}. `;
  return {
    finding: fallWords(risk.untilLine, `the lender's line of ${formatFixed(line, 2)}`),
    summary: `${toOne}${spareWords(risk, shown)}`,
    rows,
    ticks: roundTicks(Math.min(0, ...covers), Math.max(line, ...covers), 5),
    line,
    table: tableOf(risk.stress, shown),
    series: seriesOf(risk.stress, shown),
  };
}
