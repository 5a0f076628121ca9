import type { Bottleneck, Resource } from '../insight/insight-types.ts';
import { formatOrdinal, formatPercent } from './format-number.ts';

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
export const NOTHING = 0.0005;

/** What the last chamber on a pump does; its share is of what it would add with a pump of its own. */
export function lastChamberWords(share: number): string {
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
