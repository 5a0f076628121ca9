import type { OptionSearch } from '../../insight/options/option-search.ts';
import type { FitOption, OptionSpace } from '../../insight/options/option-types.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { RESOURCE_LABELS } from '../bottleneck-flag.ts';
import { roundTicks } from '../chart-scale.ts';
import type { DataSeries } from '../data-series.ts';
import type { DataTable } from '../data-table.ts';
import { formatFixed, formatPercent, NONE } from '../format-number.ts';
import { quantityText, quantityWithUnit, type ShownAs, unitText } from '../format-quantity.ts';
import { bindingWords, chambersWords, pumpsWords, type RestTold, restWords } from './option-words.ts';

/** One way to set the shop up, as chart and table show it. */
export interface OptionRow {
  readonly place: number;
  readonly option: FitOption;
  readonly chambers: string;
  readonly pumps: string;
  readonly rest: string;
  readonly money: string;
  readonly yearlyCash: string;
  readonly payback: string;
  readonly netPresentValue: string;
  readonly lowestCover: string;
  readonly output: string;
  readonly binds: string;
  /** What works hardest, with how hard. */
  readonly busiest: string;
}

/** A dot of the chart. */
export interface OptionDot {
  readonly place: number;
  readonly money: number;
  readonly yearlyCash: number;
}

/** A column of figures: its head with the unit, and what stands in it. */
export interface OptionColumn {
  readonly key: 'money' | 'yearlyCash' | 'payback' | 'netPresentValue' | 'lowestCover' | 'output' | 'binds' | 'busiest';
  readonly head: string;
  readonly isFigure: boolean;
}

export interface FrontierView {
  readonly finding: string;
  readonly summary: string;
  /** The frontier, cheapest first. */
  readonly rows: readonly OptionRow[];
  readonly columns: readonly OptionColumn[];
  /** The row worth most at the return that is asked for; null when nothing was found. */
  readonly worthMost: number | null;
  /** Everything else that keeps to the limits. */
  readonly others: readonly OptionDot[];
  readonly line: readonly OptionDot[];
  readonly moneyTicks: readonly number[];
  readonly cashTicks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

function paybackText(months: number | null): string {
  if (months === null) return 'never';
  return formatFixed(months, 0);
}

function busiestText({ busiest }: FitOption['figures']): string {
  return busiest ? `${RESOURCE_LABELS[busiest.resource]}, ${formatPercent(busiest.use)}` : NONE;
}

/** What is worth telling of an option beyond chambers, pumps and hours: what the space leaves open. */
function toldOf(space: OptionSpace): RestTold {
  return {
    practice: space.practices.length > 1 || space.practices.includes('roughing'),
    hose: space.hoses.length > 1,
    freezers: space.freezers.most > space.freezers.least,
  };
}

function rowOf(plan: Plan, option: FitOption, told: RestTold, shown: ShownAs): OptionRow {
  const { choice, figures, place } = option;
  const money = (value: number) => quantityText(Math.round(value), 'money', shown);
  return {
    place,
    option,
    chambers: chambersWords(plan, choice),
    pumps: pumpsWords(plan, choice),
    rest: restWords(plan, choice, told),
    money: money(figures.money),
    yearlyCash: money(figures.yearlyCash),
    payback: paybackText(figures.payback),
    netPresentValue: money(figures.netPresentValue),
    lowestCover: figures.lowestCover === null ? 'no loans' : formatFixed(figures.lowestCover, 2),
    output: quantityText(figures.dryOut, 'mass', shown),
    binds: bindingWords(figures.binds),
    busiest: busiestText(figures),
  };
}

function dotOf({ place, figures }: FitOption): OptionDot {
  return { place, money: figures.money, yearlyCash: figures.yearlyCash };
}

function bestRow(rows: readonly OptionRow[]): OptionRow | undefined {
  return rows.toSorted((a, b) => b.option.figures.netPresentValue - a.option.figures.netPresentValue)[0];
}

function findingOf(best: OptionRow | undefined, shown: ShownAs): string {
  if (!best) return 'Nothing within these limits is better than staying as you are';
  const { money, yearlyCash } = best.option.figures;
  const told = (value: number) => quantityWithUnit(Math.round(value), 'money', shown);
  return `Worth most: ${best.chambers}, ${best.pumps} – ${told(money)} brings ${told(yearlyCash)} a year`;
}

const SUMMARY =
  'Each dot is a way to set up the shop that keeps to your limits: what it takes to get going – purchase, delivery, contingency, and the goods and unpaid bills of its first year – against the cash it brings beyond today’s in an average year, after tax and replacements and before loans. On the line nothing is both cheaper and better.';

function columnsOf(shown: ShownAs): OptionColumn[] {
  const figure = (key: OptionColumn['key'], name: string, unit: string) => ({
    key,
    head: unit === '' ? name : `${name} [${unit}]`,
    isFigure: true,
  });
  return [
    figure('money', 'Money needed', shown.currency),
    figure('yearlyCash', 'Cash a year', shown.currency),
    figure('payback', 'Pays back', 'months'),
    figure('netPresentValue', 'Worth today', shown.currency),
    figure('lowestCover', 'Lowest DSCR', ''),
    figure('output', 'Output', `${unitText('mass', shown)}/week`),
    { key: 'binds', head: 'What binds', isFigure: false },
    { key: 'busiest', head: 'Works hardest', isFigure: false },
  ];
}

function tableOf(rows: readonly OptionRow[], columns: readonly OptionColumn[]): DataTable {
  return {
    caption: 'The ways on the line, cheapest first',
    head: ['', 'Set-up', ...columns.map(({ head }) => head)],
    rows: rows.map((row, k) => [
      String(k + 1),
      `${row.chambers}; ${row.pumps}; ${row.rest}`,
      ...columns.map(({ key }) => row[key]),
    ]),
  };
}

function seriesOf(
  plan: Plan,
  fit: readonly FitOption[],
  onLine: ReadonlySet<number>,
  told: RestTold,
  shown: ShownAs,
): DataSeries {
  const money = `[${shown.currency}]`;
  return {
    head: [
      'On the line',
      'Chambers',
      'Pumps',
      'Hours and more',
      `Purchase ${money}`,
      `Working capital ${money}`,
      `Cash a year ${money}`,
      'Payback [months]',
      `Net present value ${money}`,
      'Lowest DSCR',
      'Dried product [kg/week]',
      'Supply [A]',
      'Circuits',
      'Floor [m²]',
    ],
    rows: fit.map(({ place, choice, figures }) => [
      onLine.has(place) ? 'yes' : 'no',
      chambersWords(plan, choice),
      pumpsWords(plan, choice),
      restWords(plan, choice, told),
      figures.capital,
      figures.workingCapital,
      figures.yearlyCash,
      figures.payback,
      figures.netPresentValue,
      figures.lowestCover,
      figures.dryOut,
      figures.needs.supplyCurrent,
      figures.needs.circuits,
      figures.needs.floorSpace,
    ]),
  };
}

/** Everything the figure of a search shows. @param plan as it was when the search began */
export function frontierView(plan: Plan, space: OptionSpace, search: OptionSearch, shown: ShownAs): FrontierView {
  const { frontier, fit } = search;
  const told = toldOf(space);
  const rows = frontier.map((option) => rowOf(plan, option, told, shown));
  const onLine = new Set(frontier.map(({ place }) => place));
  const best = bestRow(rows);
  const columns = columnsOf(shown);
  const all = fit.map(({ figures }) => figures);
  return {
    finding: findingOf(best, shown),
    summary: SUMMARY,
    rows,
    columns,
    worthMost: best?.place ?? null,
    others: fit.filter(({ place }) => !onLine.has(place)).map(dotOf),
    line: frontier.map(dotOf),
    moneyTicks: roundTicks(
      Math.min(0, ...all.map(({ money }) => money)),
      Math.max(1, ...all.map(({ money }) => money)),
      5,
    ),
    cashTicks: roundTicks(
      Math.min(0, ...all.map(({ yearlyCash }) => yearlyCash)),
      Math.max(1, ...all.map(({ yearlyCash }) => yearlyCash)),
      5,
    ),
    table: tableOf(rows, columns),
    series: seriesOf(plan, fit, onLine, told, shown),
  };
}

export type OptionOrder = 'cheapest' | 'cash' | 'payback' | 'worth';

export const OPTION_ORDERS: readonly { readonly value: OptionOrder; readonly label: string }[] = [
  { value: 'cheapest', label: 'Cheapest' },
  { value: 'cash', label: 'Most cash' },
  { value: 'payback', label: 'Soonest back' },
  { value: 'worth', label: 'Worth most' },
];

/** What comes first in each order: the least. */
const RANKS: Readonly<Record<OptionOrder, (figures: FitOption['figures']) => number>> = {
  cheapest: ({ money }) => money,
  cash: ({ yearlyCash }) => 0 - yearlyCash,
  payback: ({ payback }) => payback ?? Number.POSITIVE_INFINITY,
  worth: ({ netPresentValue }) => 0 - netPresentValue,
};

/** The rows in an order of the reader's choice; equals stay as they are. */
export function orderedRows(rows: readonly OptionRow[], order: OptionOrder): readonly OptionRow[] {
  const rank = RANKS[order];
  const of = (row: OptionRow) => rank(row.option.figures);
  return rows.toSorted((a, b) => (of(a) === of(b) ? 0 : of(a) - of(b)));
}
