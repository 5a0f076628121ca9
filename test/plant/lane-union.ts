import type { LaneSpan, Phase } from '../../lib/plant/report-types.ts';

/** Phases in which a chamber wants its pump. */
export const VACUUM_PHASES: readonly Phase[] = ['waitingForPump', 'pumpDown', 'primary', 'secondary', 'hold'];

/** Stretches of time in which at least one of the chambers is in one of the phases, in order, joined where they touch [s]. */
export function laneUnion(
  lanes: readonly LaneSpan[],
  chambers: readonly number[],
  phases: readonly Phase[],
): readonly (readonly [start: number, end: number])[] {
  const spans = lanes
    .filter((span) => chambers.includes(span.chamber) && phases.includes(span.phase))
    .sort((a, b) => a.start - b.start);
  const joined: [number, number][] = [];
  for (const { start, end } of spans) {
    const last = joined.at(-1);
    if (last && start <= last[1]) last[1] = Math.max(last[1], end);
    else joined.push([start, end]);
  }
  return joined;
}
