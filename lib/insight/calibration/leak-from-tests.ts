import { pow } from '../../numeric/portable-math.ts';
import { leakRate } from '../../physics/leak-rate.ts';
import type { RiseTest } from './logged-batches.ts';

/** Gas load of one chamber by its pressure-rise tests [Pa·m³/s]. */
export interface LeakEstimate {
  readonly leak: number;
  /** Standard deviation [Pa·m³/s]: readings, volume, and what tests differ by more than that. */
  readonly deviation: number;
  readonly tests: number;
  /** Longer tests give clearly less than shorter ones: part of the rise is vapour or outgassing, which dies down. */
  readonly levelsOff: boolean;
}

/** How far one reading of a gauge may be off, as a share of it: common practice, no source. */
const READING = 0.03;
/** How well a chamber's free volume is known when it has no low and high: common practice, no source. */
export const USUAL_VOLUME_DEVIATION = 0.08;
/** Below this a gauge says nothing [Pa]. */
const LEAST_READING = 0.1;
/** A test this much longer than another is compared with it. */
const CLEARLY_LONGER = 2;
/** And gives this much less if the rise dies down. */
const CLEARLY_LESS = 0.6;

interface Rated {
  readonly time: number;
  readonly rate: number;
  readonly deviation: number;
}

function rated(test: RiseTest, volume: number): Rated {
  const readings = Math.sqrt((READING * test.from) ** 2 + (READING * test.to) ** 2 + LEAST_READING ** 2);
  return {
    time: test.time,
    rate: leakRate(volume, test.to - test.from, test.time),
    deviation: leakRate(volume, readings, test.time),
  };
}

function levelsOff(tests: readonly Rated[]): boolean {
  const byTime = [...tests].sort((a, b) => a.time - b.time);
  const [shortest, longest] = [byTime[0], byTime.at(-1)];
  if (!shortest || !longest || longest.time < CLEARLY_LONGER * shortest.time) return false;
  const doubt = 2 * Math.sqrt(shortest.deviation ** 2 + longest.deviation ** 2);
  return longest.rate < CLEARLY_LESS * shortest.rate && shortest.rate - longest.rate > doubt;
}

/**
 * Leak of a chamber [Pa·m³/s]: Q = V·Δp/Δt of its tests, weighted by how well each was read; where tests differ by more than
 * their readings explain, the deviation grows with it. Null without tests.
 * Source: pressure-rise-monograph.
 * @param volume [m³]
 * @param volumeDeviation standard deviation as a share of the volume
 */
export function leakFromTests(
  tests: readonly RiseTest[],
  volume: number,
  volumeDeviation: number,
): LeakEstimate | null {
  if (tests.length === 0) return null;
  const all = tests.map((test) => rated(test, volume));
  const weight = all.reduce((sum, test) => sum + pow(test.deviation, -2), 0);
  const leak = all.reduce((sum, test) => sum + test.rate * pow(test.deviation, -2), 0) / weight;
  const misfit = all.reduce((sum, test) => sum + ((test.rate - leak) / test.deviation) ** 2, 0);
  const excess = Math.max(1, misfit / Math.max(1, all.length - 1));
  const deviation = Math.sqrt(excess / weight + (volumeDeviation * leak) ** 2);
  return { leak, deviation, tests: all.length, levelsOff: levelsOff(all) };
}
