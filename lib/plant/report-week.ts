import { WEEK } from './crew.ts';
import { overlap } from './measured-window.ts';
import { groupSamples } from './report-group.ts';
import { QUARTER } from './report-power.ts';
import type { LaneSpan, TypicalWeek } from './report-types.ts';
import type { Shop } from './shop-state.ts';

function lanes(shop: Shop, week: { start: number; end: number }): LaneSpan[] {
  return shop.spans
    .filter((span) => overlap(week, span.start, span.end) > 0)
    .map((span) => ({
      ...span,
      start: Math.max(span.start, week.start) - week.start,
      end: Math.min(span.end, week.end) - week.start,
    }))
    .sort((a, b) => a.chamber - b.chamber || a.start - b.start);
}

/** Busy people after each change over the week, from its first second. */
function crewChanges(shop: Shop, week: { start: number; end: number }): [number, number][] {
  const steps = shop.crewSpans
    .filter((span) => overlap(week, span.start, span.end) > 0)
    .flatMap((span) => [
      [Math.max(0, span.start - week.start), 1] as const,
      [Math.min(WEEK, span.end - week.start), -1] as const,
    ])
    .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const changes: [number, number][] = [[0, 0]];
  let busy = 0;
  for (const [time, change] of steps) {
    busy += change;
    const last = changes.at(-1) as [number, number];
    if (last[0] === time) last[1] = busy;
    else changes.push([time, busy]);
  }
  return changes;
}

/** The last measured week as it would be drawn, times from its Monday 00:00 [s], power by quarter hour [W]. */
export function typicalWeek(shop: Shop, quarters: Float64Array): TypicalWeek {
  const week = { start: shop.end - WEEK, end: shop.end };
  const perWeek = Math.round(WEEK / QUARTER);
  return {
    lanes: lanes(shop, week),
    samples: shop.groups.map((_, index) => groupSamples(shop, index, week)),
    crew: crewChanges(shop, week),
    power: Array.from(quarters.slice(-perWeek), (energy) => energy / QUARTER),
  };
}
