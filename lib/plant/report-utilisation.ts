import { type PumpThroughput, pumpThroughput } from '../physics/pump-speed.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import { onShiftTime, WEEK } from './crew.ts';
import type { GroupRun } from './group-advance.ts';
import { overlap, type Window } from './measured-window.ts';
import { forSteps } from './report-group.ts';
import type { GroupWeek, Phase, PhaseHours, ProductWeek, Utilisation } from './report-types.ts';
import type { Shop } from './shop-state.ts';
import {
  chamberValue,
  LOG_DRIED,
  LOG_END,
  LOG_HEAT,
  LOG_HOSE,
  LOG_LIMIT,
  LOG_LOST,
  LOG_MANIFOLD,
  LOG_PRESSURE,
  LOG_START,
  LOG_VAPOUR,
  stepValue,
} from './step-log.ts';

/** Phases in which a chamber earns; waiting, holding and idling are not among them. */
const WORKING: readonly Phase[] = [
  'loading',
  'freezing',
  'pumpDown',
  'primary',
  'secondary',
  'unloading',
  'defrost',
  'cleaning',
];

/** Sum and weight of a time mean. */
interface Mean {
  sum: number;
  weight: number;
}

function add(mean: Mean, value: number, weight: number): void {
  mean.sum += value * weight;
  mean.weight += weight;
}

function meanValue(mean: Mean): number {
  return mean.weight > 0 ? mean.sum / mean.weight : 0;
}

/** Share of what the pump can carry at the working ceiling that permanent gas takes, time mean while drying, 0–1 and above. */
function gasUse(run: GroupRun, window: Window): number {
  const mean: Mean = { sum: 0, weight: 0 };
  const out: PumpThroughput = { throughput: 0, slope: 0 };
  const units = run.group.units as readonly ChamberUnit[];
  const ceiling = Math.min(...units.map((unit) => unit.spec.pressureCeiling));
  pumpThroughput(run.group.pump, ceiling, out);
  const capacity = out.throughput;
  forSteps(run.log, window, (step, seconds) => {
    const manifold = stepValue(run.log, step, LOG_MANIFOLD);
    if (manifold <= 0) return;
    pumpThroughput(run.group.pump, manifold, out);
    const vapour = stepValue(run.log, step, LOG_VAPOUR) / (units[0] as ChamberUnit).waterPerThroughput;
    add(mean, Math.max(0, out.throughput - vapour) / capacity, seconds);
  });
  return meanValue(mean);
}

/** The harder-pressed of the pump's two capacities: carrying gas at the ceiling, and swallowing vapour. */
function pumpUse(shop: Shop, groups: readonly GroupWeek[], window: Window): number {
  return groups.reduce((most, week, i) => {
    const vapour = week.vapourTolerance > 0 ? week.vapourLoadMean / week.vapourTolerance : 0;
    return Math.max(most, vapour, gasUse(shop.groups[i] as GroupRun, window));
  }, 0);
}

interface DryingUse {
  readonly hose: number;
  readonly trap: number;
  readonly heater: number;
}

/** Mean use of hoses (pressure lost in them), traps (heat against rated load) and heaters over sublimation. */
function dryingUse(shop: Shop, window: Window): DryingUse {
  const hose: Mean = { sum: 0, weight: 0 };
  const trap: Mean = { sum: 0, weight: 0 };
  const heater: Mean = { sum: 0, weight: 0 };
  for (const { group, log } of shop.groups) {
    forSteps(log, window, (step, seconds) => {
      const length = stepValue(log, step, LOG_END) - stepValue(log, step, LOG_START);
      group.units.forEach((unit, i) => {
        if (chamberValue(log, step, i, LOG_LIMIT) === 0 || chamberValue(log, step, i, LOG_PRESSURE) <= 0) return;
        add(hose, chamberValue(log, step, i, LOG_HOSE), seconds);
        if (chamberValue(log, step, i, LOG_DRIED) >= 1) return;
        const rated = unit.spec.trap.curve.at(-1)?.load ?? 0;
        const load =
          (chamberValue(log, step, i, LOG_LOST) / length) * unit.trap.heatPerMass + unit.spec.trap.parasiticLoad;
        add(trap, rated > 0 ? load / rated : 0, seconds);
        add(heater, chamberValue(log, step, i, LOG_HEAT) / length / unit.spec.heaterPower, seconds);
      });
    });
  }
  return { hose: meanValue(hose), trap: meanValue(trap), heater: meanValue(heater) };
}

function freezerUse(shop: Shop, window: Window): number | null {
  const { freezer } = shop.spec;
  if (!freezer) return null;
  const mean: Mean = { sum: 0, weight: window.end - window.start };
  const changes = [...shop.freezer.log, [shop.end, 0] as const];
  for (let i = 0; i + 1 < changes.length; i += 1) {
    const [time, kilograms] = changes[i] as readonly [number, number];
    mean.sum += kilograms * overlap(window, time, (changes[i + 1] as readonly [number, number])[0]);
  }
  return meanValue(mean) / freezer.capacity;
}

function demandUse(shop: Shop, products: readonly ProductWeek[]): number | null {
  const uses = shop.spec.mix.flatMap((entry, i) =>
    entry.weeklyCap && entry.share > 0 ? [(products[i]?.dryOut ?? 0) / entry.weeklyCap] : [],
  );
  return uses.length > 0 ? Math.max(...uses) : null;
}

/** How hard each resource worked in the measured weeks, 0–1 (a pump asked for more than it can carry shows above 1). */
export function utilisation(
  shop: Shop,
  window: Window,
  groups: readonly GroupWeek[],
  phases: PhaseHours,
  products: readonly ProductWeek[],
): Utilisation {
  const working = WORKING.reduce((sum, phase) => sum + phases[phase], 0);
  const busy = shop.crewSpans.reduce((sum, span) => sum + overlap(window, span.start, span.end), 0);
  const onShift = onShiftTime(shop.spec.crew) * window.weeks;
  return {
    chambers: working / (shop.chambers.length * WEEK),
    pump: pumpUse(shop, groups, window),
    ...dryingUse(shop, window),
    freezer: freezerUse(shop, window),
    crew: onShift > 0 ? busy / onShift : 0,
    demand: demandUse(shop, products),
  };
}
