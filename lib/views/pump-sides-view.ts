import { baseValues } from '../inputs/base-values.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { PumpSide } from '../risk/pump-side.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { countOf, formatPercent } from './format-number.ts';
import { quantityText, quantityWithUnit, type ShownAs, shownValue, unitText } from './format-quantity.ts';
import { betterOf, EQUAL, SIDE_LINES, type Side, type SideLine } from './pump-side-lines.ts';
import { type SidePanel, sidePanels } from './pump-side-panels.ts';

/** Two ways to pump the same chambers, as they come from the engine. */
export interface PumpSides {
  readonly own: PumpSide;
  readonly shared: PumpSide;
}

export interface PumpSideRow {
  readonly label: string;
  readonly own: string;
  readonly shared: string;
  /** Which of the two is better here; null where they are as good as equal or it is no matter of better. */
  readonly better: 'own' | 'shared' | null;
}

/** Rows of one matter, such as cost. */
export interface PumpSideBlock {
  readonly name: string;
  readonly rows: readonly PumpSideRow[];
}

export interface FailureRow {
  readonly name: string;
  readonly total: number;
  readonly parts: Readonly<Record<FailurePart, number>>;
}

export type FailurePart = 'spoiled' | 'idle' | 'repairs';

export const FAILURE_PART_LABELS: Readonly<Record<FailurePart, string>> = {
  spoiled: 'spoiled loads',
  idle: 'idle chambers',
  repairs: 'repairs',
};

export interface PumpSidesView {
  readonly finding: string;
  readonly summary: string;
  readonly ownName: string;
  readonly sharedName: string;
  readonly blocks: readonly PumpSideBlock[];
  /** What the picture shows, pair by pair. */
  readonly panels: readonly SidePanel[];
  /** The same as the blocks, in one table. */
  readonly table: DataTable;
  readonly failureFinding: string;
  readonly failureSummary: string;
  readonly failures: readonly FailureRow[];
  readonly failureTicks: readonly number[];
  readonly failureTable: DataTable;
  readonly failureSeries: DataSeries;
  readonly series: DataSeries;
}

function rowOf(line: SideLine, own: Side, shared: Side, shown: ShownAs): PumpSideRow {
  const [a, b] = [line.read(own), line.read(shared)];
  const unit = unitText(line.dimension, shown);
  return {
    label: unit === '' || line.dimension === 'money' ? line.label : `${line.label} [${unit}]`,
    own: line.dimension === 'money' ? quantityWithUnit(a, 'money', shown) : quantityText(a, line.dimension, shown),
    shared: line.dimension === 'money' ? quantityWithUnit(b, 'money', shown) : quantityText(b, line.dimension, shown),
    better: betterOf(a, b, line.wish),
  };
}

function blocksOf(own: Side, shared: Side, shown: ShownAs): PumpSideBlock[] {
  const names = [...new Set(SIDE_LINES.map((line) => line.block))];
  return names.map((name) => ({
    name,
    rows: SIDE_LINES.filter((line) => line.block === name).map((line) => rowOf(line, own, shared, shown)),
  }));
}

function tableOf(blocks: readonly PumpSideBlock[]): DataTable {
  const marked = (text: string, isBetter: boolean) => (isBetter ? `${text} (better)` : text);
  const lineOf = ({ label, own, shared, better }: PumpSideRow) => [
    label,
    marked(own, better === 'own'),
    marked(shared, better === 'shared'),
  ];
  return {
    caption: 'A pump each and one shared pump, side by side',
    head: ['', 'A pump each', 'One shared pump'],
    rows: blocks.flatMap((block) => block.rows.map(lineOf)),
  };
}

function sideOf({ outcome, failures }: PumpSide): Side | null {
  return outcome.kind === 'computed' && failures ? { result: outcome.result, risk: failures } : null;
}

/** Why a side could not be worked out; empty when it could. */
export function sideFault({ outcome }: PumpSide): string {
  if (outcome.kind === 'computed') return '';
  const [finding] = outcome.findings;
  return finding ? `${finding.problem} ${finding.remedy}` : 'It cannot run like that.';
}

function compared(own: number, shared: number): string {
  const share = own === 0 ? 0 : shared / own - 1;
  if (Math.abs(share) < EQUAL) return 'makes as much';
  return share > 0 ? `makes ${formatPercent(share)} more` : `makes ${formatPercent(-share)} less`;
}

/** What is left over a week by one pump for all, beyond a pump each, with a word that joins it to what it makes and costs. */
function leftOver(own: Side, shared: Side, isWorse: readonly [boolean, boolean], shown: ShownAs): string {
  const gap = shared.result.cost.contributionPerWeek - own.result.cost.contributionPerWeek;
  if (Math.abs(gap) < 1) return ', and leaves as much a week';
  const agrees = gap > 0 ? !isWorse.includes(true) : !isWorse.includes(false);
  const money = quantityWithUnit(Math.abs(gap), 'money', shown);
  return `, ${agrees ? 'and' : 'but'} leaves ${money} ${gap > 0 ? 'more' : 'less'} a week`;
}

function findingOf(own: Side, shared: Side, shown: ShownAs): string {
  const output = compared(own.result.plant.dryOut, shared.result.plant.dryOut);
  const gap = own.result.capitalTotal - shared.result.capitalTotal;
  const left = leftOver(own, shared, [output.includes('less'), gap < 0], shown);
  if (Math.abs(gap) < 1) return `One pump for all ${output} and costs as much to buy${left}`;
  const money = quantityWithUnit(Math.abs(gap), 'money', shown);
  const conjunction = output.includes('less') === gap > 0 ? 'but' : 'and';
  return `One pump for all ${output} ${conjunction} costs ${money} ${gap > 0 ? 'less' : 'more'} to buy${left}`;
}

function failureFinding(own: Side, shared: Side, shown: ShownAs): string {
  const [a, b] = [own.risk.expected.cost.total, shared.risk.expected.cost.total];
  if (a === 0 && b === 0) return 'Pumps that never fail cost nothing by failing';
  const dearer = b > a ? 'One shared pump costs' : 'A pump each costs';
  const money = quantityWithUnit(Math.abs(a - b), 'money', shown);
  return `${dearer} ${money} more a year by failing`;
}

function failureRow(name: string, { risk }: Side): FailureRow {
  const { spoiled, idle, repairs, total } = risk.expected.cost;
  return { name, total, parts: { spoiled, idle, repairs } };
}

function failureTable(own: Side, shared: Side, shown: ShownAs): DataTable {
  const money = (value: number) => quantityText(value, 'money', shown);
  const line = (name: string, { risk }: Side) => {
    const { cost, failures, lostBatches } = risk.expected;
    const figures = [cost.spoiled, cost.idle, cost.repairs, cost.total, risk.spread.worstInTwenty].map(money);
    return [name, quantityText(failures, 'count', shown), quantityText(lostBatches, 'count', shown), ...figures];
  };
  return {
    caption: `Pump failures in a mean year, and one bad year in twenty [${shown.currency}/year]`,
    head: ['', 'Failures', 'Batches lost', ...Object.values(FAILURE_PART_LABELS), 'Mean year', 'One in twenty'],
    rows: [line('A pump each', own), line('One shared pump', shared)],
  };
}

function failureSeries(own: Side, shared: Side, shown: ShownAs): DataSeries {
  const unit = `[${shown.currency}/year]`;
  const line = (name: string, { risk }: Side) => {
    const { cost, failures, lostBatches } = risk.expected;
    return [name, failures, lostBatches, cost.spoiled, cost.idle, cost.repairs, cost.total, risk.spread.worstInTwenty];
  };
  return {
    head: [
      'Arrangement',
      'Failures [1/year]',
      'Batches lost [1/year]',
      ...Object.values(FAILURE_PART_LABELS).map((label) => `${label} ${unit}`),
      `Mean year ${unit}`,
      `One year in twenty ${unit}`,
    ],
    rows: [line('A pump each', own), line('One shared pump', shared)],
  };
}

function seriesOf(own: Side, shared: Side, shown: ShownAs): DataSeries {
  const value = (line: SideLine, side: Side) => {
    const figure = line.read(side);
    return figure === null ? null : shownValue(figure, line.dimension, shown);
  };
  return {
    head: ['', 'Unit', 'A pump each', 'One shared pump'],
    rows: SIDE_LINES.map((line) => [
      line.label,
      line.dimension === 'money' ? shown.currency : unitText(line.dimension, shown),
      value(line, own),
      value(line, shared),
    ]),
  };
}

function nameOf(plan: Plan, side: PumpSide, chambers: number): string {
  const pump = plan.pumps.find((candidate) => candidate.id === side.pumpId)?.name ?? side.pumpId;
  return side.arrangement === 'own' ? `${chambers} × ${pump}` : `1 × ${pump}`;
}

/** Everything the comparison of pumps shows; null where one of the sides cannot run. */
export function pumpSidesView(sides: PumpSides, plan: Plan, shown: ShownAs): PumpSidesView | null {
  const [own, shared] = [sideOf(sides.own), sideOf(sides.shared)];
  if (!own || !shared) return null;
  const { chambers } = own.result;
  const blocks = blocksOf(own, shared, shown);
  const failures = [failureRow('A pump each', own), failureRow('One shared pump', shared)];
  return {
    finding: findingOf(own, shared, shown),
    summary: `The same ${countOf(chambers, 'chamber')}, hoses, products and shifts, run twice: once with a pump for every chamber and once with all of them on one. Everything is judged against today.`,
    ownName: nameOf(plan, sides.own, chambers),
    sharedName: nameOf(plan, sides.shared, chambers),
    blocks,
    panels: sidePanels(own, shared, shown),
    table: tableOf(blocks),
    failureFinding: failureFinding(own, shared, shown),
    failureSummary:
      'A pump of its own stops one chamber when it fails; a shared one stops all of them, and every load under vacuum may be lost. Mean year in closed form; the bad year is the one in twenty of some thousands that were drawn.',
    failures,
    failureTicks: roundTicks(0, Math.max(1, ...failures.map((row) => row.total)), 4),
    failureTable: failureTable(own, shared, shown),
    failureSeries: failureSeries(own, shared, shown),
    series: seriesOf(own, shared, shown),
  };
}

/** Pumps to compare at first: for one shared pump the fastest in use or known, for a pump each the slowest in use or known. */
export function firstPumps(plan: Plan, scenario: Scenario): { readonly own: string; readonly shared: string } {
  const speed = (id: string) => {
    const pump = plan.pumps.find((candidate) => candidate.id === id);
    return pump ? baseValues('pump', pump).speed : 0;
  };
  const bySpeed = plan.pumps.map((pump) => pump.id).sort((a, b) => speed(a) - speed(b));
  const isOwn = scenario.pumpArrangement === 'own';
  const today = plan.scenarios[0];
  const small = today?.pumpArrangement === 'own' ? today.pump : (bySpeed[0] ?? scenario.pump);
  return {
    own: isOwn ? scenario.pump : small,
    shared: isOwn ? (bySpeed.at(-1) ?? scenario.pump) : scenario.pump,
  };
}
