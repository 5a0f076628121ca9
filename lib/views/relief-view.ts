import type { Bottleneck, Resource, ResourceRelief } from '../insight/insight-types.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { lastChamberWords, NOTHING, RESOURCE_LABELS } from './bottleneck-flag.ts';
import { roundTicks } from './chart-scale.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatPercent, NONE } from './format-number.ts';
import { quantityWithUnit, type ShownAs, unitText } from './format-quantity.ts';
import { type Mend, mendOf } from './mend.ts';

const HOLDING_BACK: Readonly<Record<Resource, string>> = {
  chambers: 'The chambers hold',
  pump: 'The pump holds',
  hose: 'The hoses hold',
  trap: 'The cold trap holds',
  heater: 'Shelf heat holds',
  freezer: 'The freezer holds',
  crew: 'Hands hold',
  power: 'The power supply holds',
  demand: 'Demand holds',
};

/** One line of the figure "what jams". */
export interface ReliefRow {
  readonly resource: Resource;
  readonly label: string;
  /** 0–1; null when the shop has no such resource. */
  readonly utilisation: number | null;
  readonly utilisationText: string;
  /** Change of what is left over a week [money]; null when a rerun means nothing. */
  readonly gain: number | null;
  readonly gainText: string;
  /** What would give more of it, and for how much. */
  readonly mend: string;
  readonly mendCost: string;
}

function costText({ once, weekly }: Mend, shown: ShownAs): string {
  if (once !== null) return `about ${quantityWithUnit(once, 'money', shown)}`;
  return weekly === null ? '' : `about ${quantityWithUnit(weekly, 'money', shown)} a week`;
}

function rowOf(relief: ResourceRelief, mend: Mend, shown: ShownAs): ReliefRow {
  const { resource, utilisation, gain, gainShare } = relief;
  const isNothing = gainShare !== null && Math.abs(gainShare) < NOTHING;
  const share = gainShare === null || isNothing ? '' : ` (${formatPercent(gainShare)})`;
  return {
    resource,
    label: RESOURCE_LABELS[resource],
    utilisation,
    utilisationText: utilisation === null ? NONE : formatPercent(utilisation),
    gain,
    gainText: gain === null ? NONE : isNothing ? 'nothing' : `${quantityWithUnit(gain, 'money', shown)}${share}`,
    mend: mend.words,
    mendCost: costText(mend, shown),
  };
}

export interface ReliefView {
  readonly finding: string;
  readonly summary: string;
  /** Largest gain first. */
  readonly rows: readonly ReliefRow[];
  /** Rows of which more would bring something. */
  readonly worthMending: readonly ReliefRow[];
  /** Round marks of the money axis. */
  readonly gainTicks: readonly number[];
  /** Round marks of utilisation, 0 to 1 or above. */
  readonly useTicks: readonly number[];
  readonly table: DataTable;
  readonly series: DataSeries;
}

function findingOf(bottleneck: Bottleneck): string {
  const { resource, gainShare, sharedPumpJams, lastChamberAdds } = bottleneck;
  if (sharedPumpJams && lastChamberAdds !== null) {
    const measure = lastChamberAdds >= NOTHING ? ' of what it could' : '';
    return `The shared pump jams: the last chamber on it ${lastChamberWords(lastChamberAdds)}${measure}`;
  }
  if (resource === null) return 'Nothing in particular holds this set-up back';
  return `${HOLDING_BACK[resource]} it back: a quarter more would bring ${formatPercent(gainShare)}`;
}

function byGain(a: ReliefRow, b: ReliefRow): number {
  return (b.gain ?? Number.NEGATIVE_INFINITY) - (a.gain ?? Number.NEGATIVE_INFINITY);
}

function tableOf(rows: readonly ReliefRow[], shown: ShownAs): DataTable {
  return {
    caption: `What a quarter more of each would bring [${unitText('money', shown)} a week]`,
    head: ['', 'In use', 'Gain a week', 'What would mend it', 'Cost'],
    rows: rows.map((row) => [row.label, row.utilisationText, row.gainText, row.mend, row.mendCost]),
  };
}

function seriesOf(rows: readonly ReliefRow[], shown: ShownAs): DataSeries {
  return {
    head: [
      'Resource',
      'In use [share]',
      `Gain of a quarter more [${shown.currency}/week]`,
      'What would mend it',
      'Cost',
    ],
    rows: rows.map((row) => [row.label, row.utilisation, row.gain, row.mend, row.mendCost]),
  };
}

/** How hard each resource works, what a quarter more of it would bring, and what that takes; largest gain first. */
export function reliefView(bottleneck: Bottleneck, plan: Plan, scenario: Scenario, shown: ShownAs): ReliefView {
  const rows = bottleneck.reliefs
    .filter((relief) => relief.utilisation !== null || relief.gain !== null)
    .map((relief) => rowOf(relief, mendOf(plan, scenario, relief.resource), shown))
    .sort(byGain);
  const gains = rows.map((row) => row.gain ?? 0);
  return {
    finding: findingOf(bottleneck),
    summary:
      'Each line is a fresh run of the week with a quarter more of one thing and all else as it is. A thing can be busy all day and still not be what holds the shop back. Prices are of your own lists and rough: fitting, power and delivery come on top.',
    rows,
    worthMending: rows.filter((row) => (row.gain ?? 0) > 0 && row.gainText !== 'nothing'),
    gainTicks: roundTicks(Math.min(0, ...gains), Math.max(1, ...gains), 4),
    useTicks: roundTicks(0, Math.max(1, ...rows.map((row) => row.utilisation ?? 0)), 4),
    table: tableOf(rows, shown),
    series: seriesOf(rows, shown),
  };
}
