import type { Payback, ScenarioReturn } from '../model/scenario-result.ts';
import type { CashBand } from '../risk/cash-band.ts';
import { roundTicks } from './chart-scale.ts';
import { type CashCrossing, cashCrossings } from './crossings.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, NONE } from './format-number.ts';
import { quantityText, quantityWithUnit, type ShownAs } from './format-quantity.ts';
import { type BandInput, bandColumns, bandValues, bandWords, type CashSpan, spanAt } from './payback-band.ts';
import type { ScenarioView } from './scenario-view.ts';

/** Cumulative cash of one scenario against today, month 0 first. */
export interface PaybackLine {
  readonly scenarioId: string;
  readonly name: string;
  readonly place: number;
  readonly cumulative: readonly number[];
  /** What of it comes or goes at that very moment, when something is bought or sold. */
  readonly steps: readonly number[];
  /** Months until it has paid back; null when it does not, or nothing was spent. */
  readonly paybackMonth: number | null;
  /** Moments after payback at which it passes zero again. */
  readonly recrossings: readonly CashCrossing[];
}

/** A month in which something is bought has two rows, just before and just after, so that it is drawn as a step. */
export interface PaybackRow {
  readonly month: number;
  readonly isBefore: boolean;
  readonly cash: Readonly<Record<string, number>>;
  /** Within what the chosen scenario's cash lies in eight draws of ten; null where that is not known. */
  readonly band: CashSpan | null;
}

export interface PaybackView {
  readonly finding: string;
  readonly summary: string;
  readonly lines: readonly PaybackLine[];
  /** Month by month the cash of each line under its scenario's id. */
  readonly rows: readonly PaybackRow[];
  readonly hasBand: boolean;
  readonly months: number;
  /** Round marks of the money axis. */
  readonly ticks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

/** The month in which payback happens, counted from 1 as people count: 18.2 months are over in month 19. */
export function paybackMonthNumber(months: number): number {
  return Math.max(1, Math.ceil(months - 1e-9));
}

function lineOf(view: ScenarioView): PaybackLine[] {
  const versus = view.result.finance.versusToday;
  if (!versus) return [];
  const paybackMonth = versus.payback.kind === 'crossed' ? versus.payback.months : null;
  const { cumulative } = versus;
  const steps = stepsOf(versus, paybackMonth);
  const after = (paybackMonth ?? Number.POSITIVE_INFINITY) + 1e-9;
  const recrossings = cashCrossings(cumulative, steps).filter(({ month }) => month > after);
  return [{ scenarioId: view.id, name: view.name, place: view.place, cumulative, steps, paybackMonth, recrossings }];
}

/** Payback takes the flow of its month as even, so that month has no step: the mark lies on the line and where the table says. */
function stepsOf({ cumulative, lines }: ScenarioReturn, paybackMonth: number | null): number[] {
  const paidIn = paybackMonth === null ? null : paybackMonthNumber(paybackMonth);
  return cumulative.map((_, month) => (month === paidIn ? 0 : (lines.equipment[month] ?? 0)));
}

function verdict(payback: Payback, horizon: number): string {
  switch (payback.kind) {
    case 'crossed':
      return `pays back in month ${paybackMonthNumber(payback.months)}`;
    case 'never':
      return `does not pay back within ${horizon} months`;
    case 'noOutlay':
      return 'needs no money up front, so there is nothing to pay back';
  }
}

function soonest(lines: readonly PaybackLine[]): PaybackLine | undefined {
  const paying = lines.filter((line) => line.paybackMonth !== null);
  return paying.sort((a, b) => (a.paybackMonth ?? 0) - (b.paybackMonth ?? 0))[0];
}

function findingAmongAll(lines: readonly PaybackLine[], horizon: number): string {
  if (lines.length === 0) return 'Add a scenario to weigh against today';
  const best = soonest(lines);
  if (!best) return `No scenario pays back within ${horizon} months`;
  return `${best.name} pays back soonest, in month ${paybackMonthNumber(best.paybackMonth ?? 0)}`;
}

/** The finding that heads the chart: about the chosen scenario, or about all of them when today is chosen. */
function findingOf(views: readonly ScenarioView[], currentId: string, lines: readonly PaybackLine[]): string {
  const current = views.find((view) => view.id === currentId);
  const versus = current?.result.finance.versusToday;
  const horizon = monthsShown(lines);
  if (!current || !versus) return findingAmongAll(lines, horizon);
  const dip = lines.find((line) => line.scenarioId === currentId)?.recrossings[0];
  const again = dip ? `, and dips below zero again in month ${paybackMonthNumber(dip.month)}` : '';
  return `${current.name} ${verdict(versus.payback, horizon)}${again}`;
}

function monthsShown(lines: readonly PaybackLine[]): number {
  return Math.max(0, ...lines.map((line) => line.cumulative.length - 1));
}

function summaryOf(
  views: readonly ScenarioView[],
  currentId: string,
  months: number,
  band: BandInput | null,
  shown: ShownAs,
): string {
  const current = views.find((view) => view.id === currentId);
  const versus = current?.result.finance.versusToday;
  const lead = 'Cash after tax, loans left out, added up month by month and compared with staying as today.';
  if (!versus) return lead;
  const deepest = quantityWithUnit(versus.deepestCash, 'money', shown);
  const end = quantityWithUnit(versus.cumulative.at(-1) ?? 0, 'money', shown);
  const known = `${lead} At its lowest it stands at ${deepest}, after ${months} months at ${end}. Full marks are paybacks, hollow ones where it passes zero again, as when a pump has to be bought anew.`;
  return band ? `${known} ${bandWords(band, current.name, shown)}` : known;
}

function tableOf(lines: readonly PaybackLine[], months: number, band: BandInput | null, shown: ShownAs): DataTable {
  const years = Array.from({ length: Math.floor(months / 12) + 1 }, (_, year) => year * 12);
  const cash = years.map((month) => [
    `Month ${month}`,
    ...[...lines.map((line) => line.cumulative[month] ?? null), ...bandValues(band, month)].map((value) =>
      quantityText(value, 'money', shown),
    ),
  ]);
  const payback = lines.map((line) => (line.paybackMonth === null ? NONE : formatFixed(line.paybackMonth, 1)));
  return {
    caption: `Cumulative cash against today [${shown.currency}], every twelfth month`,
    head: ['', ...lines.map((line) => line.name), ...bandColumns(band, lines)],
    rows: [...cash, ['Payback [months]', ...payback, ...bandColumns(band, lines).map(() => NONE)]],
  };
}

function rowOf(lines: readonly PaybackLine[], band: BandInput | null, month: number, isBefore: boolean): PaybackRow {
  const cashOf = ({ cumulative, steps }: PaybackLine) =>
    (cumulative[month] ?? 0) - (isBefore ? (steps[month] ?? 0) : 0);
  return {
    month,
    isBefore,
    cash: Object.fromEntries(lines.map((line) => [line.scenarioId, cashOf(line)])),
    band: spanAt(band, month, isBefore ? 'before' : 'after'),
  };
}

function rowsOf(lines: readonly PaybackLine[], months: number, band: BandInput | null): PaybackRow[] {
  return Array.from({ length: months + 1 }, (_, month) => {
    const after = rowOf(lines, band, month, false);
    const isStep = lines.some(({ steps }) => (steps[month] ?? 0) !== 0);
    return isStep ? [rowOf(lines, band, month, true), after] : [after];
  }).flat();
}

function seriesOf(lines: readonly PaybackLine[], months: number, band: BandInput | null, shown: ShownAs): DataSeries {
  const names = [...lines.map((line) => line.name), ...bandColumns(band, lines)];
  return {
    head: ['Month', ...names.map((name) => `${name} [${shown.currency}]`)],
    rows: Array.from({ length: months + 1 }, (_, month) => [
      month,
      ...lines.map((line) => line.cumulative[month] ?? null),
      ...bandValues(band, month),
    ]),
  };
}

function ticksOf(lines: readonly PaybackLine[], rows: readonly PaybackRow[]): number[] {
  const all = [...lines.flatMap((line) => line.cumulative), ...rows.flatMap((row) => row.band ?? [])];
  return roundTicks(Math.min(0, ...all), Math.max(0, ...all), 6);
}

/**
 * Everything the payback figure shows.
 * @param currentId the scenario the finding speaks of
 * @param cash what many draws make of that scenario's cash; null when they have not been worked out
 */
export function paybackView(
  views: readonly ScenarioView[],
  currentId: string,
  shown: ShownAs,
  cash: CashBand | null = null,
): PaybackView {
  const lines = views.flatMap(lineOf);
  const months = monthsShown(lines);
  const isDrawn = lines.some((line) => line.scenarioId === currentId);
  const band = cash && isDrawn ? { ...cash, scenarioId: currentId } : null;
  const rows = rowsOf(lines, months, band);
  return {
    finding: findingOf(views, currentId, lines),
    summary: summaryOf(views, currentId, months, band, shown),
    lines,
    rows,
    hasBand: band !== null,
    months,
    ticks: ticksOf(lines, rows),
    table: tableOf(lines, months, band, shown),
    series: seriesOf(lines, months, band, shown),
  };
}
