import type { Bottleneck, Resource, ResourceRelief } from '../insight/insight-types.ts';
import type { DataTable } from './data-table.ts';
import { formatOrdinal, formatPercent, NONE } from './format-number.ts';
import { quantityWithUnit, type ShownAs, unitText } from './format-quantity.ts';

export const RESOURCE_LABELS: Readonly<Record<Resource, string>> = {
  chambers: 'Chambers',
  pump: 'Pump',
  hose: 'Hoses',
  trap: 'Cold trap',
  heater: 'Shelf heat',
  freezer: 'Freezer',
  crew: 'People',
  power: 'Power supply',
  demand: 'Demand',
};

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

/** `jam`: a shared pump that holds the shop back; `limit`: something else does; `balanced`: nothing in particular. */
export type FlagTone = 'jam' | 'limit' | 'balanced';

/** The flag of a row: words, the figure behind them, and a tone that picks its shape and colour. */
export interface BottleneckFlag {
  readonly tone: FlagTone;
  readonly title: string;
  readonly figure: string;
}

function quarterMore(gainShare: number): string {
  return `+${formatPercent(gainShare)} with a quarter more`;
}

/** A share below this is none. */
const NOTHING = 0.0005;

/** What the last chamber on a pump does; its share is of what it would add with a pump of its own. */
function lastChamberWords(share: number): string {
  if (Math.abs(share) < NOTHING) return 'adds nothing';
  return share > 0 ? `adds ${formatPercent(share)}` : 'lowers output';
}

function jamFigure(bottleneck: Bottleneck, perPump: number): string {
  const { lastChamberAdds } = bottleneck;
  if (lastChamberAdds === null) return quarterMore(bottleneck.gainShare);
  return `${formatOrdinal(perPump)} chamber ${lastChamberWords(lastChamberAdds)}`;
}

/** The flag that a scenario's bottleneck deserves. @param perPump most chambers on one pump in the scenario */
export function bottleneckFlag(bottleneck: Bottleneck, perPump: number): BottleneckFlag {
  if (bottleneck.sharedPumpJams) {
    return { tone: 'jam', title: 'Shared pump jams', figure: jamFigure(bottleneck, perPump) };
  }
  if (bottleneck.resource === null) return { tone: 'balanced', title: 'Balanced', figure: 'no single thing jams' };
  return {
    tone: 'limit',
    title: RESOURCE_LABELS[bottleneck.resource],
    figure: quarterMore(bottleneck.gainShare),
  };
}

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
}

function rowOf(relief: ResourceRelief, shown: ShownAs): ReliefRow {
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
  };
}

export interface ReliefView {
  readonly finding: string;
  readonly summary: string;
  readonly rows: readonly ReliefRow[];
  /** Largest gain, for the length of the bars; above zero. */
  readonly mostGain: number;
  readonly table: DataTable;
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

/** How hard each resource works and what a quarter more of it would bring, largest gain first. */
export function reliefView(bottleneck: Bottleneck, shown: ShownAs): ReliefView {
  const rows = bottleneck.reliefs
    .filter((relief) => relief.utilisation !== null || relief.gain !== null)
    .map((relief) => rowOf(relief, shown))
    .sort(byGain);
  return {
    finding: findingOf(bottleneck),
    summary:
      'Each line is a fresh run of the week with a quarter more of one thing and all else as it is. A thing can be busy all day and still not be what holds the shop back.',
    rows,
    mostGain: Math.max(1e-9, ...rows.map((row) => row.gain ?? 0)),
    table: {
      caption: `What a quarter more of each would bring [${unitText('money', shown)} a week]`,
      head: ['', 'In use', 'Gain a week'],
      rows: rows.map((row) => [row.label, row.utilisationText, row.gainText]),
    },
  };
}
