import type { ChamberUnit } from './chamber-unit.ts';
import type { GroupRun } from './group-advance.ts';
import { LIMIT_CODES } from './limit-codes.ts';
import { overlap, type Window } from './measured-window.ts';
import type { DryingLimit, GroupSample, GroupWeek, LimitHours } from './report-types.ts';
import type { PumpRun, Shop } from './shop-state.ts';
import {
  chamberValue,
  LOG_END,
  LOG_LIMIT,
  LOG_LOST,
  LOG_MANIFOLD,
  LOG_PRESSURE,
  LOG_PUMPED,
  LOG_START,
  LOG_VAPOUR,
  type StepLog,
  stepCount,
  stepValue,
} from './step-log.ts';

/** Calls `visit` for every step that reaches into the window, with the seconds of it that do. */
export function forSteps(
  log: StepLog,
  window: { start: number; end: number },
  visit: (step: number, seconds: number) => void,
): void {
  for (let step = 0; step < stepCount(log); step += 1) {
    const seconds = overlap(window, stepValue(log, step, LOG_START), stepValue(log, step, LOG_END));
    if (seconds > 0) visit(step, seconds);
  }
}

/** Seconds of drying in the window held back by each limit, all chambers of a group. */
export function limitTimes(run: GroupRun, window: Window): Record<DryingLimit, number> {
  const times = Object.fromEntries(LIMIT_CODES.filter((name) => name !== null).map((name) => [name, 0])) as Record<
    DryingLimit,
    number
  >;
  forSteps(run.log, window, (step, seconds) => {
    for (let unit = 0; unit < run.group.units.length; unit += 1) {
      const name = LIMIT_CODES[chamberValue(run.log, step, unit, LOG_LIMIT)];
      if (name) times[name] += seconds;
    }
  });
  return times;
}

/** Share of sublimation time spent at the pressure ceiling or flooded, 0–1. */
export function ceilingShare(times: LimitHours): number {
  const { desorption: _, ...primary } = times;
  const total = Object.values(primary).reduce((sum, time) => sum + time, 0);
  return total > 0 ? (times.ceilingByGas + times.ceilingByTrap + times.flooded) / total : 0;
}

/** Time-weighted quantile of (value, weight) pairs; 0 when there are none. */
function weightedQuantile(pairs: [number, number][], share: number): number {
  const sorted = [...pairs].sort((a, b) => a[0] - b[0]);
  const total = sorted.reduce((sum, pair) => sum + pair[1], 0);
  let seen = 0;
  for (const [value, weight] of sorted) {
    seen += weight;
    if (seen >= share * total) return value;
  }
  return 0;
}

interface ManifoldFigures {
  readonly peak: number;
  readonly mean: number;
  readonly high: number;
  readonly vapourPeak: number;
  readonly vapourTotal: number;
}

function manifoldFigures(log: StepLog, window: Window): ManifoldFigures {
  const pairs: [number, number][] = [];
  let vapourPeak = 0;
  let vapourTotal = 0;
  forSteps(log, window, (step, seconds) => {
    const manifold = stepValue(log, step, LOG_MANIFOLD);
    const vapour = stepValue(log, step, LOG_VAPOUR);
    if (manifold > 0) pairs.push([manifold, seconds]);
    vapourPeak = Math.max(vapourPeak, vapour);
    vapourTotal += vapour * seconds;
  });
  const time = pairs.reduce((sum, pair) => sum + pair[1], 0);
  const mean = time > 0 ? pairs.reduce((sum, pair) => sum + pair[0] * pair[1], 0) / time : 0;
  const peak = pairs.reduce((most, pair) => Math.max(most, pair[0]), 0);
  return { peak, mean, high: weightedQuantile(pairs, 0.95), vapourPeak, vapourTotal };
}

function pumpTimes(pump: PumpRun, window: Window): { time: number; starts: number } {
  let time = 0;
  let starts = 0;
  for (const span of pump.spans) {
    time += overlap(window, span.start, span.end);
    if (span.start >= window.start && span.start < window.end) starts += 1;
  }
  return { time, starts };
}

/** The week of one pump: running time, vapour load, manifold pressure. */
export function groupWeek(shop: Shop, index: number, window: Window): GroupWeek {
  const run = shop.groups[index] as GroupRun;
  const pump = pumpTimes(shop.pumps[index] as PumpRun, window);
  const manifold = manifoldFigures(run.log, window);
  return {
    pumpTypeId: run.group.spec.pump.typeId,
    chambers: run.group.units.length,
    pumpTime: pump.time / window.weeks,
    pumpStarts: pump.starts / window.weeks,
    vapourLoadMean: pump.time > 0 ? manifold.vapourTotal / pump.time : 0,
    vapourLoadPeak: manifold.vapourPeak,
    vapourTolerance: run.group.spec.pump.vapourTolerance,
    waterSwallowed: manifold.vapourTotal / window.weeks,
    manifoldPressurePeak: manifold.peak,
    manifoldPressure95: manifold.high,
    manifoldPressureMean: manifold.mean,
    ceilingShare: ceilingShare(limitTimes(run, window)),
  };
}

function highestPressure(run: GroupRun, step: number): number | null {
  let highest = 0;
  run.group.units.forEach((_: ChamberUnit, unit) => {
    highest = Math.max(highest, chamberValue(run.log, step, unit, LOG_PRESSURE));
  });
  return highest > 0 ? highest : null;
}

/** Samples of one group over the last measured week, one per integration step, times from that Monday [s]. */
export function groupSamples(shop: Shop, index: number, week: { start: number; end: number }): GroupSample[] {
  const run = shop.groups[index] as GroupRun;
  const pump = shop.pumps[index] as PumpRun;
  const samples: GroupSample[] = [];
  forSteps(run.log, week, (step) => {
    const start = Math.max(week.start, stepValue(run.log, step, LOG_START));
    const length = stepValue(run.log, step, LOG_END) - stepValue(run.log, step, LOG_START);
    const pumpOn = pump.spans.some((span) => span.start <= start && start < span.end);
    const manifold = stepValue(run.log, step, LOG_MANIFOLD);
    const trapLoad = run.group.units.reduce((sum, _, unit) => {
      const lost = chamberValue(run.log, step, unit, LOG_LOST) - chamberValue(run.log, step, unit, LOG_PUMPED);
      return sum + lost / length;
    }, 0);
    samples.push({
      time: start - week.start,
      pumpOn,
      manifoldPressure: pumpOn && manifold > 0 ? manifold : null,
      vapourLoad: stepValue(run.log, step, LOG_VAPOUR),
      trapLoad,
      chamberPressure: highestPressure(run, step),
    });
  });
  return samples;
}
