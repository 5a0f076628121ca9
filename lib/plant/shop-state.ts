import { type ShiftPool, shiftPools, WEEK } from './crew.ts';
import { type EventQueue, eventQueue, pushEvent } from './event-queue.ts';
import { type GroupRun, groupRun, type StepControl } from './group-advance.ts';
import { pumpGroup } from './group-state.ts';
import type { LoadLaw } from './load-law.ts';
import { type PumpDown, pumpDown } from './pump-down.ts';
import type { BatchRecord, Phase } from './report-types.ts';
import type { ChamberUnitSpec, MixShare, PumpSpec, ShopSpec, TaskName } from './types.ts';

export type ShopEvent =
  | { readonly kind: 'taskDone'; readonly chamber: number; readonly task: TaskName; readonly pool: ShiftPool }
  | { readonly kind: 'phaseDone'; readonly chamber: number }
  | { readonly kind: 'startPumpDown'; readonly group: number }
  | { readonly kind: 'pumpDownDone'; readonly group: number; readonly gas: readonly (readonly [number, number])[] }
  | { readonly kind: 'frozen'; readonly chamber: number }
  | { readonly kind: 'wake' };

/** Order of events at one instant: what ends, then who arrives, then pump-downs of all who ask at that instant. */
export const PRIORITY: Readonly<Record<ShopEvent['kind'], number>> = {
  taskDone: 0,
  phaseDone: 0,
  frozen: 0,
  pumpDownDone: 1,
  wake: 2,
  startPumpDown: 3,
};

/** The load chosen for a chamber's next batch. */
export interface NextLoad {
  readonly mixIndex: number;
  readonly load: LoadLaw;
  /** False while the freezer still works on it or has no room. */
  ready: boolean;
  /** Kilograms it takes up in the freezer [kg]. */
  frozenMass: number;
}

export interface ChamberRun {
  readonly index: number;
  readonly group: number;
  readonly unit: number;
  readonly spec: ChamberUnitSpec;
  /** No first load before this [s]. */
  readonly earliestStart: number;
  phase: Phase;
  phaseSince: number;
  current: NextLoad | null;
  next: NextLoad | null;
  batchStart: number;
  batchPhases: Partial<Record<Phase, number>>;
  /** First step of the group's log that belongs to the batch under vacuum. */
  logFrom: number;
  pending: Omit<BatchRecord, 'phases'> | null;
  batchesDone: number;
}

export interface CrewRequest {
  readonly chamber: number;
  readonly task: TaskName;
  readonly duration: number;
  readonly since: number;
}

export interface PumpRun {
  busy: boolean;
  waiting: number[];
  members: number[];
  /** When the pump was last started [s]; null while it stands. */
  onSince: number | null;
  readonly spans: { start: number; end: number }[];
}

/** A stretch of a lane, before it is cut to a week. */
export interface RawSpan {
  readonly chamber: number;
  readonly start: number;
  readonly end: number;
  readonly phase: Phase;
  readonly productId: string;
}

export interface CrewSpan {
  readonly task: TaskName;
  readonly start: number;
  readonly end: number;
}

/** A load of one product in one chamber type, with its times that need no simulation. */
export interface PreparedLoad {
  readonly load: LoadLaw;
  /** Freezing (or trap cooling) in the chamber before pump-down [s]. */
  readonly chamberFreezing: number;
  /** Freezing in the shop's freezer [s]; 0 when it does not go there. */
  readonly freezerTime: number;
}

export interface FinishedBatch extends BatchRecord {
  readonly mixIndex: number;
  readonly finished: number;
}

/** A whole shop in the middle of a run. All state is here; nothing is global. */
export interface Shop {
  readonly spec: ShopSpec;
  readonly groups: readonly GroupRun[];
  readonly pumps: readonly PumpRun[];
  readonly chambers: readonly ChamberRun[];
  readonly queue: EventQueue<ShopEvent>;
  readonly pools: readonly ShiftPool[];
  readonly prepared: (chamber: ChamberUnitSpec, mixIndex: number) => PreparedLoad;
  /** Pump-down of chambers from a common pressure; repeated ones are looked up. */
  readonly pumpDowns: (chambers: readonly ChamberUnitSpec[], pump: PumpSpec, pressure: number) => PumpDown;
  readonly requests: CrewRequest[];
  readonly spans: RawSpan[];
  readonly crewSpans: CrewSpan[];
  readonly batches: FinishedBatch[];
  /** Batches started and dry kilograms promised so far, by place in the mix. */
  readonly started: number[];
  readonly promised: number[];
  readonly freezer: { used: number; readonly waiting: number[]; readonly log: [number, number][] };
  readonly end: number;
  now: number;
}

/** Pump-downs of one run, each computed once: the same chambers from the same pressure take the same time. */
function rememberedPumpDowns(): Shop['pumpDowns'] {
  const known = new Map<PumpSpec, { chambers: readonly ChamberUnitSpec[]; pressure: number; outcome: PumpDown }[]>();
  return (chambers, pump, pressure) => {
    const list = known.get(pump) ?? [];
    known.set(pump, list);
    const same = list.find(
      (entry) =>
        entry.pressure === pressure &&
        entry.chambers.length === chambers.length &&
        entry.chambers.every((chamber, i) => sameUnit(chamber, chambers[i] as ChamberUnitSpec)),
    );
    if (same) return same.outcome;
    const outcome = pumpDown(
      chambers,
      pump,
      chambers.map(() => pressure),
    );
    list.push({ chambers, pressure, outcome });
    return outcome;
  };
}

function sameUnit(a: ChamberUnitSpec, b: ChamberUnitSpec): boolean {
  return a === b || (a.chamber === b.chamber && a.hose === b.hose);
}

function chamberRuns(spec: ShopSpec, spacing: number): ChamberRun[] {
  const runs: ChamberRun[] = [];
  spec.groups.forEach((group, groupIndex) => {
    group.chambers.forEach((unit, unitIndex) => {
      runs.push({
        index: runs.length,
        group: groupIndex,
        unit: unitIndex,
        spec: unit,
        earliestStart: runs.length * spacing,
        phase: 'waitingToLoad',
        phaseSince: 0,
        current: null,
        next: null,
        batchStart: 0,
        batchPhases: {},
        logFrom: 0,
        pending: null,
        batchesDone: 0,
      });
    });
  });
  return runs;
}

/** A shop on Monday 00:00 of its first week, every chamber clean and empty. `spacing` parts the first loads [s]. */
export function openShop(spec: ShopSpec, prepared: Shop['prepared'], spacing: number, control: StepControl): Shop {
  const weeks = spec.warmUpWeeks + spec.measuredWeeks;
  const pools = shiftPools(spec.crew, weeks + 1);
  const queue = eventQueue<ShopEvent>();
  for (const pool of pools) pushEvent(queue, pool.start, PRIORITY.wake, { kind: 'wake' });
  for (let week = 0; week < weeks; week += 1) pushEvent(queue, week * WEEK, PRIORITY.wake, { kind: 'wake' });
  const chambers = chamberRuns(spec, spacing);
  for (const run of chambers) pushEvent(queue, run.earliestStart, PRIORITY.wake, { kind: 'wake' });
  return {
    spec,
    groups: spec.groups.map((group) => groupRun(pumpGroup(group), control)),
    pumps: spec.groups.map(() => ({ busy: false, waiting: [], members: [], onSince: null, spans: [] })),
    chambers,
    queue,
    pools,
    prepared,
    pumpDowns: rememberedPumpDowns(),
    requests: [],
    spans: [],
    crewSpans: [],
    batches: [],
    started: spec.mix.map(() => 0),
    promised: spec.mix.map(() => 0),
    freezer: { used: 0, waiting: [], log: [] },
    end: weeks * WEEK,
    now: 0,
  };
}

/** Ends the chamber's present phase now and begins another. */
export function enterPhase(shop: Shop, chamber: ChamberRun, phase: Phase): void {
  const { now } = shop;
  if (now > chamber.phaseSince) {
    const productId = chamber.current?.load.product.id ?? '';
    shop.spans.push({ chamber: chamber.index, start: chamber.phaseSince, end: now, phase: chamber.phase, productId });
    chamber.batchPhases[chamber.phase] = (chamber.batchPhases[chamber.phase] ?? 0) + now - chamber.phaseSince;
  }
  chamber.phase = phase;
  chamber.phaseSince = now;
}

export function mixShare(shop: Shop, index: number): MixShare {
  const share = shop.spec.mix[index];
  if (!share) throw new RangeError(`no product ${index} in a mix of ${shop.spec.mix.length}`);
  return share;
}
