import { describe, expect, it } from 'vitest';
import { expectedFailures } from '../../lib/model/pump-failure-expected.ts';
import { type PumpAtWork, type PumpFailureTerms, SECONDS_PER_YEAR } from '../../lib/model/pump-failure-terms.ts';
import { failureSpread } from '../../lib/risk/pump-failure.ts';
import { type FailureYear, simulateFailures } from '../../lib/risk/pump-failure-simulation.ts';

const DAY = 86_400;

const PUMP: PumpAtWork = {
  chambers: 3,
  failuresPerYear: 4,
  loadsUnderVacuum: 2.2,
  loadValue: 120,
  batchesPerYear: 900,
  contributionPerYear: 40_000,
};

const TERMS: PumpFailureTerms = {
  pumps: [PUMP, PUMP, PUMP],
  repairTime: 15 * DAY,
  swapTime: null,
  crews: 3,
  spoiledShare: 0.5,
  repairBill: 300,
};

function meanOf(years: readonly FailureYear[], key: keyof FailureYear) {
  const values = years.map((year) => year[key]);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  return { mean, error: Math.sqrt(variance / values.length) };
}

const CASES: readonly (readonly [string, PumpFailureTerms])[] = [
  ['each mended at once', TERMS],
  ['one crew for all', { ...TERMS, crews: 1 }],
  ['a spare on the shelf', { ...TERMS, swapTime: 0.5 * DAY, crews: 4 }],
  ['a spare that takes long to put in, one crew', { ...TERMS, swapTime: 6 * DAY, crews: 1 }],
  ['a single shared pump', { ...TERMS, pumps: [{ ...PUMP, chambers: 6, loadsUnderVacuum: 5 }], crews: 1 }],
  ['a single shared pump and a spare', { ...TERMS, pumps: [PUMP], swapTime: DAY, crews: 1 }],
];

describe('expectedFailures and simulateFailures', () => {
  it.each(CASES)('agree: %s', (_, terms) => {
    const expected = expectedFailures(terms);
    const years = simulateFailures(terms, 8000, 31);
    const pairs = [
      ['failures', expected.failures],
      ['downtime', expected.downtime],
      ['spoiledLoads', expected.spoiledLoads],
      ['cost', expected.cost.total],
    ] as const;
    for (const [key, value] of pairs) {
      const { mean, error } = meanOf(years, key);
      // Four standard errors of the simulated mean: one in 16,000 honest runs would fail.
      expect(Math.abs(mean - value), `${key}: ${mean} ± ${error} against ${value}`).toBeLessThan(4 * error);
      expect(error).toBeLessThan(0.02 * value);
    }
  });

  const RARE = { ...PUMP, failuresPerYear: 3 };
  const OFTEN = { ...PUMP, failuresPerYear: 7, contributionPerYear: 90_000 };

  it('agree for unlike pumps that are mended at once: each alone is exact', () => {
    const terms = { ...TERMS, pumps: [RARE, OFTEN] };
    const alone = [RARE, OFTEN].map((pump) => expectedFailures({ ...terms, pumps: [pump] }));
    const together = expectedFailures(terms);
    const sum = (key: 'failures' | 'downtime' | 'lostBatches') => alone.reduce((total, one) => total + one[key], 0);
    for (const key of ['failures', 'downtime', 'lostBatches'] as const) {
      expect(together[key] / sum(key)).toBeCloseTo(1, 10);
    }
    const cost = alone.reduce((total, one) => total + one.cost.total, 0);
    expect(together.cost.total / cost).toBeCloseTo(1, 10);
  });

  it('agree within half a hundredth for unlike pumps that share a crew or a spare', () => {
    // Pumps of one kind of which one runs half as long again; each is down for a twentieth of the time.
    const pumps = [
      { ...RARE, failuresPerYear: 1 },
      { ...OFTEN, failuresPerYear: 1.5 },
    ];
    for (const change of [{ crews: 1 }, { swapTime: DAY, crews: 3 }]) {
      const terms = { ...TERMS, pumps, ...change };
      const { mean, error } = meanOf(simulateFailures(terms, 40_000, 8), 'cost');
      const { total } = expectedFailures(terms).cost;
      expect(Math.abs(mean - total)).toBeLessThan(0.005 * total + 3 * error);
      expect(error).toBeLessThan(0.01 * total);
    }
  });
});

describe('expectedFailures', () => {
  it('counts a lone pump by hand', () => {
    // Availability 1/(1 + λR), λ = 4 a year, R = 15 days.
    const { failures, availability, lostBatches, cost, stopped } = expectedFailures({ ...TERMS, pumps: [PUMP] });
    const up = 1 / (1 + (4 * 15 * DAY) / SECONDS_PER_YEAR);
    expect(availability).toBeCloseTo(up, 12);
    expect(stopped[1]).toBeCloseTo(1 - up, 12);
    expect(failures).toBeCloseTo(4 * up, 12);
    expect(cost.spoiled).toBeCloseTo(4 * up * 2.2 * 0.5 * 120, 9);
    expect(cost.idle).toBeCloseTo(40_000 * (1 - up), 9);
    expect(cost.repairs).toBeCloseTo(4 * up * 300, 9);
    expect(cost.total).toBeCloseTo(cost.spoiled + cost.idle + cost.repairs, 9);
    expect(lostBatches).toBeCloseTo(4 * up * 1.1 + 900 * (1 - up), 9);
  });

  it('makes a crew that is shared cost more, and a spare less', () => {
    const cost = (change: Partial<PumpFailureTerms>) => expectedFailures({ ...TERMS, ...change }).cost.total;
    expect(cost({ crews: 1 })).toBeGreaterThan(cost({}));
    expect(cost({ swapTime: 0.2 * DAY, crews: 4 })).toBeLessThan(cost({}));
  });

  it('costs nothing when nothing fails', () => {
    const { failures, lostBatches, availability, cost } = expectedFailures({
      ...TERMS,
      pumps: [{ ...PUMP, failuresPerYear: 0 }],
    });
    expect([failures, lostBatches, availability, cost.total]).toEqual([0, 0, 1, 0]);
  });
});

describe('simulateFailures', () => {
  const POISSON: PumpFailureTerms = {
    ...TERMS,
    pumps: [{ ...PUMP, failuresPerYear: 1, contributionPerYear: 0, loadsUnderVacuum: 0 }],
    repairTime: 60,
    repairBill: 100,
  };

  it('has a Poisson number of failures where mending takes no time', () => {
    // Failures 0, 1, 2 and 3 at most in 36.8, 73.6, 92.0 and 98.1 % of years: median 1, one year in twenty 3.
    const years = simulateFailures(POISSON, 20_000, 5);
    const spread = failureSpread(years);
    expect(Math.abs(spread.withoutFailure - Math.exp(-1))).toBeLessThan(4 * Math.sqrt((0.368 * 0.632) / 20_000));
    expect([spread.median, spread.worstInTwenty]).toEqual([100, 300]);
    expect(spread.standardError).toBeCloseTo(100 / Math.sqrt(20_000), 1);
  });

  it('spoils a binomial number of loads', () => {
    const terms = { ...POISSON, pumps: [{ ...PUMP, failuresPerYear: 1, contributionPerYear: 0 }] };
    const years = simulateFailures(terms, 20_000, 6).filter((year) => year.failures === 1);
    const chance = (2.2 / 3) * 0.5;
    const none = years.filter((year) => year.spoiledLoads === 0).length / years.length;
    const all = years.filter((year) => year.spoiledLoads === 3).length / years.length;
    expect(Math.abs(none - (1 - chance) ** 3)).toBeLessThan(0.025);
    expect(Math.abs(all - chance ** 3)).toBeLessThan(0.012);
  });

  it('is never stopped for longer than there is time', () => {
    const hopeless = { ...TERMS, pumps: [{ ...PUMP, failuresPerYear: 200 }], repairTime: 300 * DAY, crews: 1 };
    for (const { downtime } of simulateFailures(hopeless, 300, 1)) {
      expect(downtime).toBeLessThanOrEqual(SECONDS_PER_YEAR * (1 + 1e-9));
    }
  });

  it('depends on terms and seed alone', () => {
    expect(simulateFailures(TERMS, 50, 3)).toEqual(simulateFailures(TERMS, 50, 3));
    expect(simulateFailures(TERMS, 50, 3)).not.toEqual(simulateFailures(TERMS, 50, 4));
    expect(simulateFailures(TERMS, 80, 3).slice(0, 50)).toEqual(simulateFailures(TERMS, 50, 3));
  });

  it('refuses half a year', () => {
    expect(() => simulateFailures(TERMS, 0.5, 3)).toThrow(RangeError);
  });
});
