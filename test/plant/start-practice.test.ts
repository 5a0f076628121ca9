import { describe, expect, it } from 'vitest';
import { ATMOSPHERE, pumpDown } from '../../lib/plant/pump-down.ts';
import type { LaneSpan, PlantReport } from '../../lib/plant/report-types.ts';
import type { ShopSpec, StartPractice } from '../../lib/plant/types.ts';
import { laneUnion } from './lane-union.ts';
import { meanPhase, reportOf } from './run-shop.ts';
import { CHAMBER, GOOD_PUMP, HOSE, mixOf, QUICK_CREW, SMALL_PUMP, SOUP, sharedShop } from './sample-shop.ts';

/** Leaky enough that a shut valve shows. */
const UNIT = { chamber: { ...CHAMBER, leak: 0.02 }, hose: HOSE };

/** Two chambers half a cycle apart, so that each starts while the other dries. */
function run(startPractice: StartPractice, change: Partial<ShopSpec> = {}): PlantReport {
  return reportOf({
    ...sharedShop(2, GOOD_PUMP),
    groups: [{ pump: GOOD_PUMP, chambers: [UNIT, UNIT] }],
    startPractice,
    startPattern: 'staggered',
    roughingPump: SMALL_PUMP,
    mix: mixOf(SOUP),
    crew: QUICK_CREW,
    warmUpWeeks: 1,
    measuredWeeks: 1,
    ...change,
  });
}

function spansOf(report: PlantReport, phase: LaneSpan['phase']): readonly LaneSpan[] {
  return report.week.lanes.filter((span) => span.phase === phase);
}

/** Pump-downs during which the other chamber is at one stage of its drying from end to end. */
function disturbing(report: PlantReport): readonly LaneSpan[] {
  return spansOf(report, 'pumpDown').filter((span) =>
    (['primary', 'secondary'] as const).some((stage) =>
      laneUnion(report.week.lanes, [1 - span.chamber], [stage]).some(
        ([start, end]) => start < span.start && span.end < end,
      ),
    ),
  );
}

function durationOf(units: number, pump: typeof GOOD_PUMP, pressure: number): number {
  const chambers = Array.from({ length: units }, () => UNIT);
  const down = pumpDown(
    chambers,
    pump,
    chambers.map(() => pressure),
  );
  if (down.kind === 'stalls') throw new Error('stalls');
  return down.duration;
}

describe('starting a chamber while another dries', () => {
  const isolated = run('isolate');
  const flooded = run('allOpen');
  const roughed = run('roughing');

  it('happens in these shops', () => {
    for (const report of [isolated, flooded, roughed]) expect(disturbing(report).length).toBeGreaterThan(5);
  });

  it('with the others shut off: their gas rises by their own leak', () => {
    let seen = 0;
    for (const span of disturbing(isolated)) {
      const samples = (isolated.week.samples[0] ?? []).filter(
        (sample) => sample.time >= span.start && sample.time < span.end,
      );
      const pressures = samples.map((sample) => sample.chamberPressure as number);
      // Near the ceiling the heat is held back, and less vapour hides the gas that has come.
      if (Math.max(...pressures) > 0.95 * CHAMBER.pressureCeiling) continue;
      seen += 1;
      const times = samples.map((sample) => sample.time);
      const rise = (pressures.at(-1) as number) - (pressures[0] as number);
      const expected = (0.02 * ((times.at(-1) as number) - (times[0] as number))) / CHAMBER.volume;
      // A little less than Q·Δt/V, for warmer ice gives its vapour a little more slowly; more with what outgasses.
      expect(rise).toBeGreaterThan(0.6 * expected);
      expect(rise).toBeLessThan(1.3 * expected + 1);
    }
    expect(seen).toBeGreaterThan(0);
  });

  it('with the others shut off: nothing is flooded and the newcomer has the pump to itself', () => {
    expect(isolated.limits.flooded).toBe(0);
    expect(meanPhase(isolated, 'pumpDown') / durationOf(1, GOOD_PUMP, ATMOSPHERE)).toBeCloseTo(1, 6);
  });

  it('with all valves open: the others are flooded to the joint pressure and stand still until it is pumped down', () => {
    const lost = spansOf(flooded, 'pumpDown')
      .flatMap((span) =>
        laneUnion(flooded.week.lanes, [1 - span.chamber], ['primary', 'secondary']).map(([start, end]) =>
          Math.max(0, Math.min(end, span.end) - Math.max(start, span.start)),
        ),
      )
      .reduce((sum, seconds) => sum + seconds, 0);
    expect(Math.abs(flooded.limits.flooded / lost - 1)).toBeLessThan(1e-3);
    // Σ V·p/Σ V of one at atmosphere and one at its few pascals, equal volumes: half of atmosphere.
    const joint = durationOf(2, GOOD_PUMP, ATMOSPHERE / 2);
    for (const span of disturbing(flooded)) expect((span.end - span.start) / joint).toBeCloseTo(1, 2);
  });

  it('with a roughing pump: the newcomer takes as long as that pump, the others lose nothing', () => {
    expect(roughed.limits.flooded).toBe(0);
    expect(meanPhase(roughed, 'pumpDown') / durationOf(1, SMALL_PUMP, ATMOSPHERE)).toBeCloseTo(1, 6);
    expect(roughed.energy.pumps).toBeGreaterThan(0);
  });

  it('costs the others most with all valves open, least with a roughing pump', () => {
    const time = (report: PlantReport) => meanPhase(report, 'primary') + meanPhase(report, 'secondary');
    expect(time(flooded)).toBeGreaterThan(time(isolated) + 0.9 * meanPhase(flooded, 'pumpDown'));
    expect(time(isolated)).toBeGreaterThanOrEqual(time(roughed));
    expect(flooded.batches).toBeLessThan(isolated.batches);
  });

  it('costs nobody anything when a chamber has a pump of its own', () => {
    const group = { pump: GOOD_PUMP, chambers: [UNIT] };
    for (const practice of ['isolate', 'allOpen'] as const) {
      const own = run(practice, { groups: [group, group] });
      expect(own.limits.flooded).toBe(0);
      expect(meanPhase(own, 'pumpDown') / durationOf(1, GOOD_PUMP, ATMOSPHERE)).toBeCloseTo(1, 6);
    }
  });
});

describe('chambers that ask at the same instant', () => {
  it('are pumped down as one, in the time the pump needs for their common volume', () => {
    const report = run('isolate', { startPattern: 'together' });
    const [first, second] = [0, 1].map((chamber) =>
      spansOf(report, 'pumpDown').filter((span) => span.chamber === chamber),
    );
    expect(first?.length).toBeGreaterThan(3);
    expect(first?.map((span) => span.start)).toEqual(second?.map((span) => span.start));
    expect(meanPhase(report, 'pumpDown') / durationOf(2, GOOD_PUMP, ATMOSPHERE)).toBeCloseTo(1, 6);
  });

  it('one that asks while another is being pumped down waits for it', () => {
    const slow = { ...GOOD_PUMP, speed: GOOD_PUMP.speed / 8 };
    const report = run('isolate', {
      groups: [{ pump: slow, chambers: [UNIT, { ...UNIT, chamber: { ...UNIT.chamber, trapCooling: 6000 } }] }],
      startPattern: 'together',
    });
    expect(report.phases.waitingForPump).toBeGreaterThan(0);
  });

  it('need a roughing pump when the practice says so', () => {
    expect(() => run('roughing', { roughingPump: null })).toThrow(RangeError);
  });
});
