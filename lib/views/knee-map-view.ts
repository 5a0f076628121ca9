import { inBase } from '../inputs/quantity.ts';
import type { KneeMap, KneeMapCell, KneeMapRow } from '../insight/insight-types.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, formatOrdinal, formatPercent, formatSensible, NONE } from './format-number.ts';
import { quantityText, quantityWithUnit, type ShownAs, shownValue, unitText } from './format-quantity.ts';

/** `pays`: the last chamber brings what it should; `less`: some of it; `jams`: little or nothing; `none`: cannot run. */
export type KneeTone = 'pays' | 'less' | 'jams' | 'none';

export interface KneeMapMark {
  readonly chambers: number;
  readonly tone: KneeTone;
  readonly text: string;
  readonly words: string;
  /** The set-up of the scenario itself. */
  readonly isHere: boolean;
}

export interface KneeMapLine {
  readonly label: string;
  readonly marks: readonly KneeMapMark[];
}

export interface KneeMapView {
  readonly finding: string;
  readonly summary: string;
  /** Fastest pump first, as on a map: up is more. */
  readonly lines: readonly KneeMapLine[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

/** Below this share of what it could bring, a chamber more is hardly worth its floor. */
const HARDLY = 0.4;

function toneOf(cell: KneeMapCell, threshold: number): KneeTone {
  if (cell.output === null) return 'none';
  if (cell.added === null || cell.added >= threshold) return 'pays';
  return cell.added >= HARDLY ? 'less' : 'jams';
}

function textOf({ output, added, chambers }: KneeMapCell): string {
  if (output === null) return NONE;
  if (chambers === 1) return 'alone';
  return added === null ? NONE : formatFixed(100 * added, 0).replace('−0', '0');
}

function chambersOf(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

function markOf(cell: KneeMapCell, row: KneeMapRow, map: KneeMap, here: number, shown: ShownAs): KneeMapMark {
  const output = quantityWithUnit(cell.output, 'mass', shown);
  const added = cell.added === null ? '' : `; the last one adds ${formatPercent(cell.added)} of what it could`;
  return {
    chambers: cell.chambers,
    tone: toneOf(cell, map.threshold),
    text: textOf(cell),
    words: cell.output === null ? 'cannot run like that' : `${output} a week${added}`,
    isHere: cell.chambers === here && row.factor === 1,
  };
}

function findingOf(map: KneeMap, chambers: number, speed: (factor: number) => string): string {
  const enough = map.rows.find((row) => row.knee === null || row.knee > chambers);
  const own = map.rows.find((row) => row.factor === 1);
  if (!enough) return `No pump up to ${speed(map.rows.at(-1)?.factor ?? 1)} carries ${chambers} chambers well`;
  if (enough.factor === 1) return `The pump is just right for ${chambers} chambers: a smaller one would jam`;
  if (enough.factor < 1) return `A pump of ${speed(enough.factor)} would do for ${chambers} chambers`;
  const knee = own?.knee ?? null;
  const lead = knee === null ? '' : `, where this one jams at the ${formatOrdinal(knee)}`;
  return `For ${chambers} chambers the pump would have to be ${speed(enough.factor)}${lead}`;
}

function tableOf(map: KneeMap, speed: (factor: number) => string, shown: ShownAs): DataTable {
  const counts = map.rows[0]?.cells.map((cell) => cell.chambers) ?? [];
  return {
    caption: `Dried product a week [${unitText('mass', shown)}] by pump speed and number of chambers on it`,
    head: ['', ...counts.map(String)],
    rows: map.rows.map((row) => [
      speed(row.factor),
      ...row.cells.map((cell) => quantityText(cell.output, 'mass', shown)),
    ]),
  };
}

function seriesOf(map: KneeMap, base: number, shown: ShownAs): DataSeries {
  const mass = unitText('mass', shown);
  return {
    head: [
      `Pump speed [${unitText('pumpingSpeed', shown)}]`,
      'Chambers',
      `Dried product [${mass}/week]`,
      'Last one adds [share]',
    ],
    rows: map.rows.flatMap((row) =>
      row.cells.map((cell) => [
        shownValue(base * row.factor, 'pumpingSpeed', shown),
        cell.chambers,
        cell.output === null ? null : shownValue(cell.output, 'mass', shown),
        cell.added,
      ]),
    ),
  };
}

/** Everything the figure "knee over pump speed" shows. */
export function kneeMapView(map: KneeMap, plan: Plan, scenario: Scenario, shown: ShownAs): KneeMapView {
  const base = inBase(findById(plan.pumps, scenario.pump, 'pump').speed, 'pumpingSpeed');
  const here = chambersOf(scenario);
  const speed = (factor: number) =>
    `${formatSensible(shownValue(base * factor, 'pumpingSpeed', shown))} ${unitText('pumpingSpeed', shown)}`;
  return {
    finding: findingOf(map, here, speed),
    summary: `Every field is one chamber more on one pump: the percentage is what that chamber adds of what it would add alone on such a pump. Hands and market are left out. The pump of this set-up runs at ${speed(1)}.`,
    lines: map.rows
      .map((row) => ({
        label: speed(row.factor),
        marks: row.cells.map((cell) => markOf(cell, row, map, here, shown)),
      }))
      .toReversed(),
    table: tableOf(map, speed, shown),
    series: seriesOf(map, base, shown),
  };
}
