import { onShiftTime } from './crew.ts';
import { dryOutput } from './load-law.ts';
import { measuredWindow, overlap, type Window } from './measured-window.ts';
import { groupWeek, limitTimes } from './report-group.ts';
import { powerAccount, QUARTER } from './report-power.ts';
import type {
  CrewWeek,
  DryingLimit,
  EnergyWeek,
  LimitHours,
  Phase,
  PhaseHours,
  PlantReport,
  ProductWeek,
} from './report-types.ts';
import { utilisation } from './report-utilisation.ts';
import { typicalWeek } from './report-week.ts';
import { enterPhase, type FinishedBatch, type Shop } from './shop-state.ts';

const PHASES: readonly Phase[] = [
  'waitingToLoad',
  'loading',
  'freezing',
  'waitingForPump',
  'pumpDown',
  'primary',
  'secondary',
  'hold',
  'unloading',
  'defrost',
  'waitingToClean',
  'cleaning',
  'idleNoDemand',
  'waitingForFreezer',
];

/** Closes every open lane and pump span at the end of the run, so that the account covers all of it. */
function closeSpans(shop: Shop): void {
  shop.now = shop.end;
  for (const chamber of shop.chambers) enterPhase(shop, chamber, chamber.phase);
  for (const pump of shop.pumps) {
    if (pump.onSince !== null) pump.spans.push({ start: pump.onSince, end: shop.end });
  }
}

function phaseTimes(shop: Shop, window: Window): PhaseHours {
  const times = Object.fromEntries(PHASES.map((phase) => [phase, 0])) as Record<Phase, number>;
  for (const span of shop.spans) times[span.phase] += overlap(window, span.start, span.end) / window.weeks;
  return times;
}

function measuredBatches(shop: Shop, window: Window): FinishedBatch[] {
  return shop.batches.filter((batch) => batch.finished > window.start && batch.finished <= window.end);
}

function meanCycle(batches: readonly FinishedBatch[]): number {
  if (batches.length === 0) return 0;
  return batches.reduce((sum, batch) => sum + batch.finished - batch.start, 0) / batches.length;
}

/** A load of some product that takes up part of the window: its whole figures, and the part that counts. */
interface CountedLoad {
  readonly mixIndex: number;
  readonly wet: number;
  readonly dry: number;
  readonly part: number;
}

/**
 * Loads counted by the part of their time that falls into the window, so that the figures do not jump when a batch ends an
 * hour before or after its edge. A batch still running at the end is given the mean time of its product.
 */
function countedLoads(shop: Shop, window: Window): CountedLoad[] {
  const ended = shop.batches.map(({ mixIndex, wetIn, dryOut, start, finished }) => ({
    mixIndex,
    wet: wetIn,
    dry: dryOut,
    part: overlap(window, start, finished) / (finished - start),
  }));
  const running = shop.chambers.flatMap((chamber) => {
    if (!chamber.current) return [];
    const { mixIndex, load } = chamber.current;
    const usual = meanCycle(shop.batches.filter((batch) => batch.mixIndex === mixIndex));
    const elapsed = shop.end - chamber.batchStart;
    const part = overlap(window, chamber.batchStart, shop.end) / Math.max(usual, elapsed);
    return usual > 0 ? [{ mixIndex, wet: load.wet, dry: dryOutput(load), part }] : [];
  });
  return [...ended, ...running];
}

function productWeeks(shop: Shop, window: Window, batches: readonly FinishedBatch[]): ProductWeek[] {
  const loads = countedLoads(shop, window);
  return shop.spec.mix.map((entry, index) => {
    const own = loads.filter((load) => load.mixIndex === index);
    const total = (pick: (load: CountedLoad) => number) =>
      own.reduce((sum, load) => sum + load.part * pick(load), 0) / window.weeks;
    return {
      productId: entry.product.id,
      batches: total(() => 1),
      wetIn: total((load) => load.wet),
      dryOut: total((load) => load.dry),
      waterRemoved: total((load) => load.wet - load.dry),
      cycleTime: meanCycle(batches.filter((batch) => batch.mixIndex === index)),
    };
  });
}

function limitWeek(shop: Shop, window: Window): LimitHours {
  const [first, ...rest] = shop.groups.map((run) => limitTimes(run, window));
  const sum = { ...first } as Record<DryingLimit, number>;
  for (const times of rest) for (const name of Object.keys(sum) as DryingLimit[]) sum[name] += times[name];
  for (const name of Object.keys(sum) as DryingLimit[]) sum[name] /= window.weeks;
  return sum;
}

function crewWeek(shop: Shop, window: Window): CrewWeek {
  const time = { load: 0, unload: 0, clean: 0 };
  for (const span of shop.crewSpans) time[span.task] += overlap(window, span.start, span.end) / window.weeks;
  return { ...time, onShift: onShiftTime(shop.spec.crew) };
}

function energyWeek(energy: EnergyWeek, weeks: number): EnergyWeek {
  return Object.fromEntries(
    Object.entries(energy).map(([name, joules]) => [name, joules / weeks]),
  ) as unknown as EnergyWeek;
}

function fullestTrap(batches: readonly FinishedBatch[], shop: Shop): number {
  return batches.reduce((most, batch) => {
    const capacity = shop.chambers[batch.chamber]?.spec.chamber.trap.capacity ?? Number.POSITIVE_INFINITY;
    return Math.max(most, batch.iceOnTrap / capacity);
  }, 0);
}

function chamberPressures(batches: readonly FinishedBatch[]): { peak: number; mean: number } {
  const primary = batches.filter((batch) => batch.pressureMean > 0);
  const time = primary.reduce((sum, batch) => sum + (batch.phases.primary ?? 0), 0);
  const weighted = primary.reduce((sum, batch) => sum + batch.pressureMean * (batch.phases.primary ?? 0), 0);
  return {
    peak: primary.reduce((most, batch) => Math.max(most, batch.pressurePeak), 0),
    mean: time > 0 ? weighted / time : 0,
  };
}

/** The report of a finished run, averaged over its measured weeks. */
export function plantReport(shop: Shop): PlantReport {
  closeSpans(shop);
  const window = measuredWindow(shop);
  const batches = measuredBatches(shop, window);
  const products = productWeeks(shop, window, batches);
  const total = (pick: (week: ProductWeek) => number) => products.reduce((sum, week) => sum + pick(week), 0);
  const phases = phaseTimes(shop, window);
  const groups = shop.groups.map((_, index) => groupWeek(shop, index, window));
  const power = powerAccount(shop, window);
  const energy = energyWeek(power.energy, window.weeks);
  const joules = Object.values(power.energy).reduce((sum, part) => sum + part, 0);
  const pressures = chamberPressures(batches);
  return {
    chambers: shop.chambers.length,
    products,
    batches: total((week) => week.batches),
    wetIn: total((week) => week.wetIn),
    dryOut: total((week) => week.dryOut),
    waterRemoved: total((week) => week.waterRemoved),
    cycleTime: meanCycle(batches),
    phases,
    limits: limitWeek(shop, window),
    groups,
    energy,
    peakPower: power.quarters.reduce((most, quarter) => Math.max(most, quarter), 0) / QUARTER,
    roomHeat: joules / (window.end - window.start),
    crew: crewWeek(shop, window),
    utilisation: utilisation(shop, window, groups, phases, products),
    trapFill: fullestTrap(batches, shop),
    chamberPressurePeak: pressures.peak,
    chamberPressureMean: pressures.mean,
    week: typicalWeek(shop, power.quarters),
    batchRecords: batches.map(({ mixIndex: _mix, finished: _finished, ...batch }) => batch),
  };
}
