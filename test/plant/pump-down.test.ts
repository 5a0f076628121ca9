import { describe, expect, it } from 'vitest';
import { ATMOSPHERE, pumpDown } from '../../lib/plant/pump-down.ts';
import type { ChamberSpec, ChamberUnitSpec, PumpSpec } from '../../lib/plant/types.ts';
import { CHAMBER, GOOD_PUMP, HOSE, SMALL_PUMP, UNIT } from './sample-shop.ts';

function unit(change: Partial<ChamberSpec>): ChamberUnitSpec {
  return { chamber: { ...CHAMBER, ...change }, hose: HOSE };
}

function down(units: readonly ChamberUnitSpec[], pump: PumpSpec, start = ATMOSPHERE) {
  const outcome = pumpDown(
    units,
    pump,
    units.map(() => start),
  );
  if (outcome.kind === 'stalls') throw new Error(`stalls at ${outcome.pressure} Pa`);
  return outcome;
}

describe('pump-down', () => {
  it('takes minutes, three times as many with a third of the pump, and in proportion to what is pumped', () => {
    const time = down([UNIT], GOOD_PUMP).duration;
    expect(time / 60).toBeGreaterThan(5);
    expect(time / 60).toBeLessThan(10);
    expect(down([UNIT], SMALL_PUMP).duration / time).toBeGreaterThan(16 / 5);
    expect(down([UNIT, UNIT, UNIT], GOOD_PUMP).duration / time).toBeGreaterThan(2.9);
    expect(down([UNIT, UNIT, UNIT], GOOD_PUMP).duration / time).toBeLessThan(3.3);
  });

  it('leaves the gas that makes up the ceiling with the vapour of the trap at rest', () => {
    const { gas } = down([UNIT], GOOD_PUMP);
    expect(gas[0]).toBeLessThan(CHAMBER.pressureCeiling);
    expect(gas[0]).toBeGreaterThan(0.9 * CHAMBER.pressureCeiling);
  });

  it('takes leak and outgassing into account', () => {
    const time = down([UNIT], GOOD_PUMP).duration;
    expect(down([unit({ leak: 0, outgassing: 0 })], GOOD_PUMP).duration).toBeLessThan(time);
    expect(down([unit({ leak: 0.1 })], GOOD_PUMP).duration).toBeGreaterThan(time);
  });

  it('lasts until the last of several is there; the others go on sinking', () => {
    const both = down([unit({ pressureCeiling: 200 }), unit({ pressureCeiling: 60 })], GOOD_PUMP);
    expect(both.duration).toBeGreaterThan(down([unit({ pressureCeiling: 200 })], GOOD_PUMP).duration);
    expect(both.gas[0]).toBeLessThan(80);
  });

  it('is no time at all when nothing is above its ceiling', () => {
    expect(down([UNIT, UNIT], GOOD_PUMP, 20).duration).toBe(0);
  });

  it('from the pressure of two joined chambers is a little shorter than from atmosphere', () => {
    const half = down([UNIT, UNIT], GOOD_PUMP, ATMOSPHERE / 2).duration;
    const whole = down([UNIT, UNIT], GOOD_PUMP).duration;
    // ln 2 time constants of the two.
    expect((whole - half) / (Math.log(2) * ((2 * CHAMBER.volume) / GOOD_PUMP.speed))).toBeCloseTo(1, 1);
  });

  it('stalls where leak and pump balance above the ceiling, and says at what pressure', () => {
    const outcome = pumpDown([unit({ leak: 1, outgassing: 0 })], GOOD_PUMP, [ATMOSPHERE]);
    expect(outcome.kind).toBe('stalls');
    if (outcome.kind !== 'stalls') return;
    // p_ult + Q/S = 225.5 Pa at the pump; the hose takes some more.
    expect(outcome.pressure).toBeGreaterThan(225);
    expect(outcome.pressure).toBeLessThan(245);
  });
});
