import type { KneeCurve, KneePoint } from '../insight/insight-types.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { countOf, formatOrdinal, formatPercent, NONE } from './format-number.ts';
import { quantityText, type ShownAs, shownValue, unitText } from './format-quantity.ts';
import { LIMIT_LABELS } from './limit-kinds.ts';

/** Dried product per week in the shown unit; null where the set-up cannot run. */
export interface KneeRow {
  readonly chambers: number;
  readonly shared: number | null;
  readonly own: number | null;
  /** What holds the drying back most on the shared pump. */
  readonly binds: string;
}

export interface KneeView {
  readonly finding: string;
  readonly summary: string;
  readonly unit: string;
  readonly rows: readonly KneeRow[];
  /** Round marks of the output axis. */
  readonly ticks: readonly number[];
  /** The first chamber that adds too little; null when the pump carries all that were tried. */
  readonly knee: number | null;
  readonly table: DataTable;
  readonly series: DataSeries;
}

function findingOf(curve: KneeCurve): string {
  const most = curve.points.at(-1)?.chambers ?? 0;
  if (curve.knee === null) return `One pump carries ${countOf(most, 'chamber')} without jamming`;
  const added = curve.points.find((point) => point.chambers === curve.knee)?.added ?? null;
  const ordinal = formatOrdinal(curve.knee);
  if (added === null) return `One pump cannot carry a ${ordinal} chamber`;
  return `On one pump the ${ordinal} chamber adds ${formatPercent(Math.max(0, added))} of what it could`;
}

function summaryOf(curve: KneeCurve): string {
  const lead =
    'Dried product a week as chambers are added, with hands always there and a market that takes it all: what the machines alone allow.';
  const rule = `The knee is the first chamber that adds less than ${formatPercent(curve.threshold)} of what it would add with a pump of its own`;
  return curve.knee === null
    ? `${lead} ${rule}; it was not reached.`
    : `${lead} ${rule}: here the ${formatOrdinal(curve.knee)}.`;
}

/** What holds the drying back most on the shared pump. */
function bindsText({ binds }: KneePoint): string {
  return binds === null ? NONE : LIMIT_LABELS[binds];
}

function tableOf(curve: KneeCurve, shown: ShownAs): DataTable {
  return {
    caption: `Dried product a week [${unitText('mass', shown)}] by number of chambers`,
    head: ['Chambers', 'One shared pump', 'A pump each', 'The last one adds', 'Held back most by'],
    rows: curve.points.map((point) => [
      String(point.chambers),
      quantityText(point.shared, 'mass', shown),
      quantityText(point.own, 'mass', shown),
      point.added === null ? NONE : formatPercent(point.added),
      bindsText(point),
    ]),
  };
}

function rowOf(point: KneePoint, shown: ShownAs): KneeRow {
  const mass = (value: number | null) => (value === null ? null : shownValue(value, 'mass', shown));
  return { chambers: point.chambers, shared: mass(point.shared), own: mass(point.own), binds: bindsText(point) };
}

function ticksOf(rows: readonly KneeRow[]): number[] {
  return roundTicks(0, Math.max(0, ...rows.flatMap((row) => [row.shared ?? 0, row.own ?? 0])), 5);
}

function seriesOf(curve: KneeCurve, rows: readonly KneeRow[], shown: ShownAs): DataSeries {
  const unit = `[${unitText('mass', shown)}/week]`;
  return {
    head: [
      'Chambers',
      `One shared pump ${unit}`,
      `A pump each ${unit}`,
      'The last one adds [share]',
      'Held back most by',
    ],
    rows: curve.points.map((point, k) => [
      point.chambers,
      rows[k]?.shared ?? null,
      rows[k]?.own ?? null,
      point.added,
      bindsText(point),
    ]),
  };
}

/** Everything the figure "chambers against output" shows. */
export function kneeView(curve: KneeCurve, shown: ShownAs): KneeView {
  const rows = curve.points.map((point) => rowOf(point, shown));
  return {
    finding: findingOf(curve),
    summary: summaryOf(curve),
    unit: `${unitText('mass', shown)} a week`,
    rows,
    ticks: ticksOf(rows),
    knee: curve.knee,
    table: tableOf(curve, shown),
    series: seriesOf(curve, rows, shown),
  };
}
