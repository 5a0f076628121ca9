import { type PumpAtWork, type PumpFailureTerms, SECONDS_PER_YEAR } from '../model/pump-failure-terms.ts';
import { log } from '../numeric/portable-math.ts';
import { type SeededRandom, seededRandom } from '../numeric/seeded-random.ts';

/** What happened in one year. */
export interface FailureYear {
  readonly failures: number;
  /** Time that pumps were stopped, added up over them [s]. */
  readonly downtime: number;
  readonly spoiledLoads: number;
  /** Spoiled loads, idle chambers and mending [money]. */
  readonly cost: number;
}

/** Where a pump is at work, is missed, or is being put in. Times here are in years. */
interface Place {
  readonly pump: PumpAtWork;
  state: 'running' | 'empty' | 'fitting';
  /** When that ends by itself. */
  until: number;
}

interface Yard {
  readonly terms: PumpFailureTerms;
  readonly random: SeededRandom;
  readonly places: readonly Place[];
  /** Pumps being mended: when each is ready, and where it is put back; null when that is left open. */
  mending: { readonly ready: number; readonly place: Place | null }[];
  /** Pumps waiting for a crew, the longest first. */
  queue: (Place | null)[];
  /** Places waiting for a pump, the longest first. */
  missing: Place[];
  onShelf: number;
  now: number;
}

/**
 * Years of failing pumps, lived through event by event: every pump runs for an exponential time, is mended for an
 * exponential time by a crew that takes one pump after another, and a spare takes its place meanwhile. Each chamber on a
 * pump that stops has a load under vacuum by chance, and each such load is lost by chance. All pumps run at the start.
 * The same terms and seed give the same years.
 * Source: derived; the second method beside `expectedFailures`.
 * Throws RangeError when the years are not a whole number of 1 or more, or on a bad seed.
 */
export function simulateFailures(terms: PumpFailureTerms, years: number, seed: number): FailureYear[] {
  if (!Number.isInteger(years) || years < 1)
    throw new RangeError(`${years} years, expected a whole number of 1 or more`);
  const yard = openYard(terms, seed);
  return Array.from({ length: years }, (_, year) => liveYear(yard, year + 1));
}

function openYard(terms: PumpFailureTerms, seed: number): Yard {
  const random = seededRandom(seed);
  const places = terms.pumps.map((pump): Place => ({ pump, state: 'running', until: nextFailure(random, pump) }));
  const onShelf = terms.swapTime === null ? 0 : 1;
  return { terms, random, places, mending: [], queue: [], missing: [], onShelf, now: 0 };
}

function exponential(random: SeededRandom, mean: number): number {
  return -mean * log(random.uniform());
}

function nextFailure(random: SeededRandom, pump: PumpAtWork): number {
  return pump.failuresPerYear > 0 ? exponential(random, 1 / pump.failuresPerYear) : Number.POSITIVE_INFINITY;
}

function liveYear(yard: Yard, end: number): FailureYear {
  const year = { failures: 0, downtime: 0, spoiledLoads: 0, cost: 0 };
  while (yard.now < end) {
    const until = Math.min(end, nextEvent(yard));
    for (const { pump, state } of yard.places) {
      if (state === 'running') continue;
      year.downtime += (until - yard.now) * SECONDS_PER_YEAR;
      year.cost += (until - yard.now) * pump.contributionPerYear;
    }
    yard.now = until;
    if (until === end) break;
    for (const place of failing(yard)) {
      const spoiled = spoiledLoads(yard, place.pump);
      year.failures += 1;
      year.spoiledLoads += spoiled;
      year.cost += spoiled * place.pump.loadValue + yard.terms.repairBill;
      breakDown(yard, place);
    }
    finishFitting(yard);
    finishMending(yard);
  }
  return year;
}

function nextEvent({ places, mending }: Yard): number {
  const moving = places.reduce((soonest, place) => Math.min(soonest, place.until), Number.POSITIVE_INFINITY);
  return mending.reduce((soonest, { ready }) => Math.min(soonest, ready), moving);
}

function failing({ places, now }: Yard): Place[] {
  return places.filter((place) => place.state === 'running' && place.until <= now);
}

function spoiledLoads({ random, terms }: Yard, pump: PumpAtWork): number {
  const chance = (pump.loadsUnderVacuum / pump.chambers) * terms.spoiledShare;
  let spoiled = 0;
  for (let chamber = 0; chamber < pump.chambers; chamber += 1) if (random.uniform() < chance) spoiled += 1;
  return spoiled;
}

function breakDown(yard: Yard, place: Place): void {
  place.state = 'empty';
  place.until = Number.POSITIVE_INFINITY;
  const hasSpare = yard.terms.swapTime !== null;
  yard.queue.push(hasSpare ? null : place);
  if (hasSpare) yard.missing.push(place);
  callCrews(yard);
  fitPumps(yard);
}

function callCrews(yard: Yard): void {
  while (yard.mending.length < yard.terms.crews && yard.queue.length > 0) {
    const time = exponential(yard.random, yard.terms.repairTime / SECONDS_PER_YEAR);
    yard.mending.push({ ready: yard.now + time, place: yard.queue.shift() ?? null });
  }
}

/** Puts pumps from the shelf where they are missed. */
function fitPumps(yard: Yard): void {
  while (yard.onShelf > 0) {
    const place = yard.missing.shift();
    if (!place) return;
    yard.onShelf -= 1;
    place.state = 'fitting';
    place.until = yard.now + exponential(yard.random, (yard.terms.swapTime ?? 0) / SECONDS_PER_YEAR);
  }
}

function start(yard: Yard, place: Place): void {
  place.state = 'running';
  place.until = yard.now + nextFailure(yard.random, place.pump);
}

function finishFitting(yard: Yard): void {
  for (const place of yard.places) if (place.state === 'fitting' && place.until <= yard.now) start(yard, place);
}

function finishMending(yard: Yard): void {
  const ready = yard.mending.filter((pump) => pump.ready <= yard.now);
  if (ready.length === 0) return;
  yard.mending = yard.mending.filter((pump) => pump.ready > yard.now);
  for (const { place } of ready) {
    if (place) start(yard, place);
    else yard.onShelf += 1;
  }
  callCrews(yard);
  fitPumps(yard);
}
