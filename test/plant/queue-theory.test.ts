import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../lib/numeric/seeded-random.ts';
import { type EventQueue, eventQueue, popEvent, pushEvent } from '../../lib/plant/event-queue.ts';
import { machineRepair } from '../../lib/risk/machine-repair.ts';

/*
 * The event queue that drives the week, put to work on three queues whose long run is known exactly. Customers are counted
 * in hundreds of thousands; the tolerance is about three standard errors of the mean at that number, stated at each row.
 */

type Event = 'arrive' | 'leave';

interface Counts {
  /** Mean wait before service and mean number waiting. */
  readonly wait: number;
  readonly waiting: number;
  /** Share of time with every server busy, and share of arrivals that find it so. */
  readonly busyTime: number;
  readonly waited: number;
  /** Share of time with nobody there. */
  readonly emptyTime: number;
}

interface Station {
  readonly servers: number;
  readonly serviceTime: () => number;
  /** Time until the next arrival after one arrived (open queue) or left (finite source). */
  readonly thinkTime: () => number;
  /** Null for an endless stream of customers, else their number. */
  readonly source: number | null;
}

interface Running {
  now: number;
  /** Arrival times of those who wait, from `first` on. */
  readonly line: number[];
  first: number;
  served: number;
  arrivals: number;
  waits: number;
  found: number;
  waitingTime: number;
  busyTime: number;
  emptyTime: number;
}

function passTime(run: Running, station: Station, until: number): void {
  const length = until - run.now;
  run.waitingTime += length * (run.line.length - run.first);
  if (run.served === station.servers) run.busyTime += length;
  if (run.served === 0) run.emptyTime += length;
  run.now = until;
}

function startService(run: Running, station: Station, queue: EventQueue<Event>, since: number): void {
  run.served += 1;
  run.waits += run.now - since;
  pushEvent(queue, run.now + station.serviceTime(), 0, 'leave');
}

function arrive(run: Running, station: Station, queue: EventQueue<Event>): void {
  run.arrivals += 1;
  if (station.source === null) pushEvent(queue, run.now + station.thinkTime(), 1, 'arrive');
  if (run.served < station.servers) startService(run, station, queue, run.now);
  else {
    run.found += 1;
    run.line.push(run.now);
  }
}

function leave(run: Running, station: Station, queue: EventQueue<Event>): void {
  run.served -= 1;
  if (station.source !== null) pushEvent(queue, run.now + station.thinkTime(), 1, 'arrive');
  const next = run.line[run.first];
  if (next === undefined) return;
  run.first += 1;
  startService(run, station, queue, next);
}

function simulate(station: Station, arrivals: number): Counts {
  const queue = eventQueue<Event>();
  const run: Running = {
    now: 0,
    line: [],
    first: 0,
    served: 0,
    arrivals: 0,
    waits: 0,
    found: 0,
    waitingTime: 0,
    busyTime: 0,
    emptyTime: 0,
  };
  for (let customer = 0; customer < (station.source ?? 1); customer += 1) {
    pushEvent(queue, station.thinkTime(), 1, 'arrive');
  }
  while (run.arrivals < arrivals) {
    const event = popEvent(queue);
    if (!event) throw new Error('nothing happens any more');
    passTime(run, station, event.time);
    if (event.payload === 'arrive') arrive(run, station, queue);
    else leave(run, station, queue);
  }
  return {
    wait: run.waits / arrivals,
    waiting: run.waitingTime / run.now,
    busyTime: run.busyTime / run.now,
    waited: run.found / arrivals,
    emptyTime: run.emptyTime / run.now,
  };
}

/** Exponential times of a given mean from their own stream of random numbers. */
function exponential(mean: number, seed: number): () => number {
  const { uniform } = seededRandom(seed);
  return () => -mean * Math.log(uniform());
}

describe('one server, random arrivals', () => {
  const ARRIVALS = 600_000;
  const thinkTime = exponential(1.25, 11);

  it('M/M/1: waits 4 minutes, 3.2 waiting, busy 0.8 of the time (Kelton, Ex. 2.6.1: 1.25 min apart, 1 min of service)', () => {
    const counts = simulate({ servers: 1, serviceTime: exponential(1, 12), thinkTime, source: null }, ARRIVALS);
    // One standard error of the mean wait is 1.4 % here: waits of neighbours are alike.
    expect(Math.abs(counts.wait / 4 - 1)).toBeLessThan(0.04);
    expect(Math.abs(counts.waiting / 3.2 - 1)).toBeLessThan(0.04);
    expect(Math.abs(counts.busyTime - 0.8)).toBeLessThan(0.006);
    // Random arrivals see time averages.
    expect(Math.abs(counts.waited - 0.8)).toBeLessThan(0.006);
  });

  it('M/D/1: half of that with service always as long (Saylor Academy 4.5: waits 2, 1.6 waiting)', () => {
    const counts = simulate({ servers: 1, serviceTime: () => 1, thinkTime, source: null }, ARRIVALS);
    expect(Math.abs(counts.wait / 2 - 1)).toBeLessThan(0.03);
    expect(Math.abs(counts.waiting / 1.6 - 1)).toBeLessThan(0.03);
    expect(Math.abs(counts.busyTime - 0.8)).toBeLessThan(0.006);
  });
});

/*
 * Six machines that run 20 h and take 2 h to mend (anderson-sweeney-williams, Kolkmeyer). The printed probability that all
 * crews are busy, 0.5155 with one, is a share of time. It is not the share of breakdowns that wait: with a finite source the
 * more machines are down, the fewer are left to break, so those who break find it better than the clock does.
 */
describe('six machines and their repairers', () => {
  const EXACT = [
    { crews: 1, emptyTime: 0.4845149, waiting: 0.3296639, wait: 1.2790435, waited: 0.436048, busyTime: 0.5154851 },
    { crews: 2, emptyTime: 0.5602327, waiting: 0.0226558, wait: 0.0833862, waited: 0.072112, busyTime: null },
  ] as const;

  for (const exact of EXACT) {
    it(`with ${exact.crews}: the exact waits, and breakdowns that wait less often than the clock says`, () => {
      const counts = simulate(
        { servers: exact.crews, serviceTime: exponential(2, 21), thinkTime: exponential(20, 22), source: 6 },
        400_000,
      );
      // Standard errors: 0.001 of the shares, 0.5 % of the waits with one repairer and 1.3 % with two.
      const tolerance = exact.crews === 1 ? 0.015 : 0.04;
      expect(Math.abs(counts.emptyTime - exact.emptyTime)).toBeLessThan(0.004);
      expect(Math.abs(counts.waited - exact.waited)).toBeLessThan(0.004);
      expect(Math.abs(counts.wait / exact.wait - 1)).toBeLessThan(tolerance);
      expect(Math.abs(counts.waiting / exact.waiting - 1)).toBeLessThan(tolerance);
      if (exact.busyTime !== null) expect(Math.abs(counts.busyTime - exact.busyTime)).toBeLessThan(0.004);
      expect(counts.busyTime - counts.waited).toBeGreaterThan(0.02);
    });

    it(`with ${exact.crews}: the closed form says the same`, () => {
      const state = machineRepair({ units: 6, timeToFailure: 20, timeToRepair: 2, crews: exact.crews });
      expect(state.failed[0]).toBeCloseTo(exact.emptyTime, 7);
      expect(state.meanWaiting).toBeCloseTo(exact.waiting, 7);
      expect(state.waitingTime).toBeCloseTo(exact.wait, 6);
      expect(state.shareThatWaits).toBeCloseTo(exact.waited, 6);
    });
  }
});
