import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../lib/numeric/seeded-random.ts';
import { kOfNAvailability, kOfNReliability, kOfNTimeToFailure } from '../../lib/risk/k-of-n.ts';
import { machineRepair, type RepairTerms } from '../../lib/risk/machine-repair.ts';
import fixtures from '../fixtures/risk.json' with { type: 'json' };

const anyTerms: fc.Arbitrary<RepairTerms> = fc.record({
  units: fc.integer({ min: 1, max: 12 }),
  timeToFailure: fc.double({ min: 1, max: 1000, noNaN: true }),
  timeToRepair: fc.double({ min: 0.1, max: 500, noNaN: true }),
  crews: fc.integer({ min: 1, max: 12 }),
});

/** A second method: units failing and being mended one by one in time; shares of time with j down, and of breakdowns that wait. */
function simulate({ units, timeToFailure, timeToRepair, crews }: RepairTerms, failures: number, seed: number) {
  const { uniform } = seededRandom(seed);
  const time = new Array<number>(units + 1).fill(0);
  let down = 0;
  let broken = 0;
  let waited = 0;
  while (broken < failures) {
    const failing = (units - down) / timeToFailure;
    const mending = Math.min(down, crews) / timeToRepair;
    time[down] = (time[down] ?? 0) - Math.log(uniform()) / (failing + mending);
    if (uniform() * (failing + mending) < failing) {
      broken += 1;
      if (down >= crews) waited += 1;
      down += 1;
    } else down -= 1;
  }
  const whole = time.reduce((sum, value) => sum + value, 0);
  return { failed: time.map((value) => value / whole), shareThatWaits: waited / failures };
}

describe('machineRepair', () => {
  it('agrees with the null vector of the generator matrix', () => {
    expect(fixtures.repair).toHaveLength(6);
    for (const { terms, failed } of fixtures.repair) {
      const [units = 0, timeToFailure = 0, timeToRepair = 0, crews = 0] = terms;
      const state = machineRepair({ units, timeToFailure, timeToRepair, crews });
      failed.forEach((share, down) => {
        expect(state.failed[down]).toBeCloseTo(share, 11);
      });
    }
  });

  it('agrees with a simulation, the share of breakdowns that wait included', () => {
    const terms = { units: 6, timeToFailure: 20, timeToRepair: 2, crews: 1 };
    const state = machineRepair(terms);
    const simulated = simulate(terms, 200_000, 17);
    expect(Math.abs(simulated.shareThatWaits - state.shareThatWaits)).toBeLessThan(0.006);
    state.failed.forEach((share, down) => {
      expect(Math.abs((simulated.failed[down] ?? 0) - share)).toBeLessThan(0.006);
    });
  });

  it('obeys its own identities', () => {
    fc.assert(
      fc.property(anyTerms, (terms) => {
        const state = machineRepair(terms);
        expect(state.failed.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        // Little's law, and every repair takes its time.
        expect(state.downTime - state.waitingTime).toBeCloseTo(terms.timeToRepair, 6);
        expect(state.failureRate * state.downTime).toBeCloseTo(state.meanFailed, 9);
        expect(state.shareThatWaits).toBeGreaterThanOrEqual(0);
        expect(state.shareThatWaits).toBeLessThanOrEqual(1);
      }),
      { seed: 91 },
    );
  });

  it('refuses what cannot be', () => {
    const fine = { units: 2, timeToFailure: 1, timeToRepair: 1, crews: 1 };
    for (const wrong of [{ units: 0 }, { crews: 1.5 }, { timeToFailure: 0 }, { timeToRepair: Number.NaN }]) {
      expect(() => machineRepair({ ...fine, ...wrong })).toThrow(RangeError);
    }
  });
});

describe('k of n', () => {
  it('adds up every case by hand', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), fc.double({ min: 0, max: 1, noNaN: true }), (n, reliability) => {
        for (let k = 0; k <= n; k += 1) {
          let chance = 0;
          for (let mask = 0; mask < 2 ** n; mask += 1) {
            const working = mask.toString(2).replaceAll('0', '').length;
            if (working >= k) chance += reliability ** working * (1 - reliability) ** (n - working);
          }
          expect(kOfNReliability(k, n, reliability)).toBeCloseTo(chance, 10);
        }
      }),
      { seed: 92, numRuns: 20 },
    );
  });

  it('is the binomial formula when every unit has a crew, and less when they share one', () => {
    const terms = { units: 4, timeToFailure: 900, timeToRepair: 60, crews: 4 };
    const each = 900 / 960;
    for (const k of [1, 2, 3, 4]) {
      expect(kOfNAvailability(k, terms)).toBeCloseTo(kOfNReliability(k, 4, each), 12);
      expect(kOfNAvailability(k, { ...terms, crews: 1 })).toBeLessThan(kOfNAvailability(k, terms));
    }
    expect(kOfNAvailability(0, terms)).toBeCloseTo(1, 12);
  });

  it('lasts as long as the integral of its reliability', () => {
    const step = 0.001;
    let area = 0;
    for (let t = step / 2; t < 40; t += step) area += step * kOfNReliability(2, 3, Math.exp(-t));
    expect(kOfNTimeToFailure(2, 3, 1)).toBeCloseTo(area, 5);
  });

  it('refuses counts and chances out of range', () => {
    expect(() => kOfNReliability(4, 3, 0.5)).toThrow(RangeError);
    expect(() => kOfNReliability(1, 3, 1.5)).toThrow(RangeError);
    expect(() => kOfNTimeToFailure(0, 3, 1)).toThrow(RangeError);
    expect(() => kOfNAvailability(3, { units: 2, timeToFailure: 1, timeToRepair: 1, crews: 1 })).toThrow(RangeError);
  });
});
