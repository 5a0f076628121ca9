import type { CostPart, ScenarioCost } from '../model/scenario-result.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatPercent } from './format-number.ts';
import { quantityText, quantityWithUnit, type ShownAs } from './format-quantity.ts';
import type { ScenarioView } from './scenario-view.ts';

/** Parts of the cost in the order in which they are stacked, with the words shown for them. */
export const COST_PART_LABELS: Readonly<Record<CostPart, string>> = {
  materials: 'Ingredients',
  packaging: 'Packaging',
  labour: 'Labour',
  electricity: 'Electricity',
  oil: 'Oil and vacuum upkeep',
  other: 'Other',
};

export const COST_PARTS = Object.keys(COST_PART_LABELS) as readonly CostPart[];

export type BatchCostRow = { readonly scenarioId: string; readonly name: string; readonly total: number } & Readonly<
  Record<CostPart, number>
>;

export interface BatchCostView {
  readonly finding: string;
  readonly summary: string;
  readonly rows: readonly BatchCostRow[];
  /** Round marks of the money axis. */
  readonly ticks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

function partOf(cost: ScenarioCost, part: CostPart): number {
  return cost.lines.find((line) => line.part === part)?.perBatch ?? 0;
}

function rowOf({ id, name, result }: ScenarioView): BatchCostRow {
  const parts = Object.fromEntries(COST_PARTS.map((part) => [part, partOf(result.cost, part)]));
  return { scenarioId: id, name, total: result.cost.perBatch, ...(parts as Record<CostPart, number>) };
}

function largestPart(row: BatchCostRow): CostPart {
  return COST_PARTS.reduce((largest, part) => (row[part] > row[largest] ? part : largest));
}

function findingOf(row: BatchCostRow | undefined, shown: ShownAs): string {
  if (!row) return 'What a batch costs';
  const total = quantityWithUnit(row.total, 'money', shown);
  if (!(row.total > 0)) return `A batch costs ${total}`;
  const largest = largestPart(row);
  const share = formatPercent(row[largest] / row.total);
  return `A batch costs ${total}, ${share} of it ${COST_PART_LABELS[largest].toLowerCase()}`;
}

function summaryOf(row: BatchCostRow | undefined, shown: ShownAs): string {
  const lead = 'Running cost of an average batch; rent and other fixed cost are not in it.';
  if (!row) return lead;
  const money = (part: CostPart) => quantityWithUnit(row[part], 'money', shown);
  return `${lead} In ${row.name}: ${money('electricity')} electricity, ${money('oil')} oil and vacuum upkeep.`;
}

function tableOf(rows: readonly BatchCostRow[], shown: ShownAs): DataTable {
  return {
    caption: `Running cost per batch [${shown.currency}]`,
    head: ['', ...COST_PARTS.map((part) => COST_PART_LABELS[part]), 'Total'],
    rows: rows.map((row) => [
      row.name,
      ...COST_PARTS.map((part) => quantityText(row[part], 'money', shown)),
      quantityText(row.total, 'money', shown),
    ]),
  };
}

function seriesOf(rows: readonly BatchCostRow[], shown: ShownAs): DataSeries {
  return {
    head: ['Scenario', ...COST_PARTS.map((part) => `${COST_PART_LABELS[part]} [${shown.currency}]`), 'Total'],
    rows: rows.map((row) => [row.name, ...COST_PARTS.map((part) => row[part]), row.total]),
  };
}

/** Everything the figure "what a batch costs" shows. */
export function batchCostView(views: readonly ScenarioView[], currentId: string, shown: ShownAs): BatchCostView {
  const rows = views.map(rowOf);
  const current = rows.find((row) => row.scenarioId === currentId);
  return {
    finding: findingOf(current, shown),
    summary: summaryOf(current, shown),
    rows,
    ticks: roundTicks(0, Math.max(0, ...rows.map((row) => row.total)), 5),
    table: tableOf(rows, shown),
    series: seriesOf(rows, shown),
  };
}
