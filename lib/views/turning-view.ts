import type { QuantityField } from '../inputs/input-field.ts';
import { inBase, type Quantity } from '../inputs/quantity.ts';
import type { Dial, DialKind } from '../insight/turning/dials.ts';
import type { TurningPoint } from '../insight/turning/turning-point.ts';
import type { TurningValue } from '../insight/turning/turning-value.ts';
import { fieldAtPath } from '../plan/field-at-path.ts';
import type { Plan } from '../plan/plan-types.ts';
import { valueAt } from '../plan/raw-value.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, NONE } from './format-number.ts';
import { quantityWithUnit, type ShownAs } from './format-quantity.ts';

/** One input and how far it may go. */
export interface TurningRow {
  readonly id: string;
  readonly label: string;
  readonly today: string;
  readonly worth: string;
  readonly cover: string;
  /** How far away the turning values are [%]; null where there is none. */
  readonly worthAway: number | null;
  readonly coverAway: number | null;
}

export interface TurningView {
  readonly finding: string;
  readonly summary: string;
  /** The least room first; inputs that never turn last. */
  readonly rows: readonly TurningRow[];
  /** Those that turn somewhere: what there is to draw. */
  readonly bars: readonly TurningRow[];
  /** Round marks of the axis [%]. */
  readonly ticks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

/** What a dial is called when it turns one thing, and when it turns several at once. */
const LABELS: Readonly<Record<DialKind, readonly [string, string]>> = {
  price: ['Price', 'All prices'],
  demand: ['What sells in a week', 'What sells in a week, all products'],
  wetCost: ['Cost of the food', 'Cost of all food bought'],
  packaging: ['Packaging', 'Packaging, all products'],
  wage: ['Wage', 'Wages'],
  electricity: ['Price of electricity', 'Electricity, all hours'],
  rent: ['Rent and other fixed cost', 'Rent and other fixed cost'],
  chamberPrice: ['Price of a chamber', 'Prices of the chambers'],
  pumpPrice: ['Price of the pump', 'Prices of the pumps'],
  interest: ['Interest on the new loan', 'Interest on new loans'],
  availability: ['Weeks the machines really run', 'Weeks the machines really run'],
  load: ['Load on the shelves', 'Load on the shelves, all products'],
  spread: ['How much longer the slowest tray takes', 'How much longer the slowest tray takes'],
};

function labelOf({ kind, of, paths }: Dial): string {
  const [one, several] = LABELS[kind];
  if (of !== null) return `${one}: ${of}`;
  return paths.length > 1 ? several : one;
}

/** The one quantity of a dial, or those of several that are all alike; null where they differ. */
function commonValue(plan: Plan, { paths }: Dial): { readonly field: QuantityField; readonly value: number } | null {
  const found = paths.flatMap((path) => {
    const field = fieldAtPath(path);
    const quantity = valueAt(plan, path.split('.')) as Quantity | undefined;
    return field?.kind === 'quantity' && quantity ? [{ field, value: inBase(quantity, field.dimension) }] : [];
  });
  const [first] = found;
  return first && found.every(({ value }) => value === first.value) ? first : null;
}

/** A dial's value at a factor: in its unit, or as a share of today's where several differ. */
function valueText(plan: Plan, dial: Dial, factor: number, shown: ShownAs): string {
  const common = commonValue(plan, dial);
  if (!common) return `${formatFixed(100 * factor, 0)} % of today’s`;
  return quantityWithUnit(common.value * factor, common.field.dimension, shown);
}

function awayText(factor: number): string {
  const percent = 100 * Math.abs(factor - 1);
  const figure = formatFixed(percent, percent < 9.95 ? 1 : 0);
  return `${figure} % ${factor < 1 ? 'lower' : 'higher'}`;
}

function againText(
  plan: Plan,
  dial: Dial,
  { again }: Extract<TurningValue, { again: unknown }>,
  shown: ShownAs,
): string {
  if (again.length === 0) return '';
  return `; it turns again near ${again.map((factor) => valueText(plan, dial, factor, shown)).join(' and ')}`;
}

function turningText(plan: Plan, dial: Dial, turning: TurningValue, shown: ShownAs): string {
  const at = (factor: number) => `${valueText(plan, dial, factor, shown)}, ${awayText(factor)}`;
  switch (turning.kind) {
    case 'turns':
      return `${at(turning.factor)}${againText(plan, dial, turning, shown)}`;
    case 'alreadyBelow':
      return turning.factor === null
        ? 'missed today, whatever this is'
        : `missed today; it takes ${at(turning.factor)}${againText(plan, dial, turning, shown)}`;
    case 'never': {
      const [low, high] = dial.range.map((factor) => valueText(plan, dial, factor, shown));
      return `never, from ${low} to ${high}`;
    }
    case 'none':
      return NONE;
  }
}

function stopsText(plan: Plan, { dial, stopsBelow, stopsAbove }: TurningPoint, shown: ShownAs): string {
  const at = (factor: number | null) => (factor === null ? null : valueText(plan, dial, factor, shown));
  const [low, high] = [at(stopsBelow), at(stopsAbove)];
  if (low === null && high === null) return '';
  return ` (cannot run ${[low && `at ${low} or less`, high && `at ${high} or more`].filter(Boolean).join(', nor ')})`;
}

function awayOf(turning: TurningValue): number | null {
  return 'factor' in turning && turning.factor !== null ? 100 * (turning.factor - 1) : null;
}

function rowOf(plan: Plan, point: TurningPoint, shown: ShownAs): TurningRow {
  const { dial, worth, cover } = point;
  return {
    id: dial.id,
    label: labelOf(dial),
    today: valueText(plan, dial, 1, shown),
    worth: `${turningText(plan, dial, worth, shown)}${stopsText(plan, point, shown)}`,
    cover: turningText(plan, dial, cover, shown),
    worthAway: awayOf(worth),
    coverAway: awayOf(cover),
  };
}

function room({ worthAway, coverAway }: TurningRow): number {
  const ends = [worthAway, coverAway].filter((away) => away !== null);
  return ends.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...ends.map(Math.abs));
}

function inSentence(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}

function findingOf(points: readonly TurningPoint[], rows: readonly TurningRow[]): string {
  const missed = points.some(({ worth }) => worth.kind === 'alreadyBelow');
  const least = rows
    .filter(({ worthAway }) => worthAway !== null)
    .sort((a, b) => Math.abs(a.worthAway ?? 0) - Math.abs(b.worthAway ?? 0))[0];
  if (!least || least.worthAway === null) {
    return missed
      ? 'Not worth its money, and no single input makes it so'
      : 'No single input makes this purchase worthless';
  }
  const away = awayText(1 + least.worthAway / 100);
  const name = inSentence(least.label);
  return missed
    ? `Not worth its money as it is: nearest to turning that is ${name}, ${away}`
    : `Least room: it stops being worth its money with ${name} ${away}`;
}

/** Axis of the picture: as far as the bars go, but no further than tells something [%]. */
const FARTHEST = 200;

function ticksOf(rows: readonly TurningRow[]): number[] {
  const ends = rows.flatMap(({ worthAway, coverAway }) => [worthAway ?? 0, coverAway ?? 0]);
  return roundTicks(Math.min(-10, ...ends), Math.min(FARTHEST, Math.max(10, ...ends)), 6);
}

function seriesOf(points: readonly TurningPoint[]): DataSeries {
  const factor = (turning: TurningValue) => ('factor' in turning ? turning.factor : null);
  return {
    head: [
      'Input',
      'Least factor tried',
      'Greatest factor tried',
      'Net present value',
      'Factor for 0',
      'Lowest DSCR',
      'Factor for the line',
    ],
    rows: points.map(({ dial, worth, cover }) => [
      labelOf(dial),
      ...dial.range,
      worth.kind,
      factor(worth),
      cover.kind,
      factor(cover),
    ]),
  };
}

/** What must be true for a scenario to be worth its money and to satisfy the lender, input by input. */
export function turningView(plan: Plan, points: readonly TurningPoint[], line: number, shown: ShownAs): TurningView {
  const rows = points.map((point) => rowOf(plan, point, shown)).sort((a, b) => room(a) - room(b));
  const lender = formatFixed(line, 2);
  return {
    finding: findingOf(points, rows),
    summary: `One input at a time is turned, in today’s shop too, all others as they are. It is worth its money as long as its net present value is above nothing; the lender is content as long as the lowest DSCR is ${lender} or more. Each input is tried all along its range; weeks are run anew where it changes the drying or the market.`,
    rows,
    bars: rows.filter(({ worthAway, coverAway }) => worthAway !== null || coverAway !== null),
    ticks: ticksOf(rows),
    table: {
      caption: 'How far each input may go, the least room first',
      head: ['', 'Today', 'Worth its money until', `Lowest DSCR ${lender} at`],
      rows: rows.map(({ label, today, worth, cover }) => [label, today, worth, cover]),
    },
    series: seriesOf(points),
  };
}
