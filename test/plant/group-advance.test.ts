import { describe, expect, it } from 'vitest';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import type { ChamberUnit } from '../../lib/plant/chamber-unit.ts';
import { advanceGroup, type GroupRun, groupRun, rewindGroup, STANDARD_CONTROL } from '../../lib/plant/group-advance.ts';
import {
  DRIED,
  GAS,
  HEAT,
  MOISTURE,
  pumpGroup,
  setValue,
  stateValue,
  TEMPERATURE,
} from '../../lib/plant/group-state.ts';
import { LOG_END, LOG_START, stepCount, stepValue } from '../../lib/plant/step-log.ts';
import type { ProductSpec } from '../../lib/plant/types.ts';
import { CHAMBER, FRUIT, GOOD_PUMP, SOUP, UNIT } from './sample-shop.ts';

const HOUR = 3600;

/** Two chambers, just pumped down, with their loads. */
function dryingPair(first: ProductSpec = FRUIT, second: ProductSpec = SOUP): GroupRun {
  const group = pumpGroup({ pump: GOOD_PUMP, chambers: [UNIT, UNIT] });
  [first, second].forEach((product, i) => {
    const unit = group.units[i] as ChamberUnit;
    unit.load = chamberLoad(product, CHAMBER);
    unit.mode = 'primary';
    unit.valveOpen = true;
    setValue(group, i, MOISTURE, unit.load.boundMoisture);
    setValue(group, i, TEMPERATURE, 250);
    setValue(group, i, GAS, 60);
  });
  return groupRun(group, STANDARD_CONTROL);
}

describe('advanceGroup', () => {
  it('stops exactly at the time it is given', () => {
    const run = dryingPair();
    for (const time of [100, 101, 5000.5, 2 * HOUR]) {
      advanceGroup(run, time, 0);
      expect(run.group.time).toBe(time);
    }
  });

  it('stops at the end of a stage, with the ice gone to the last grain', () => {
    const run = dryingPair();
    advanceGroup(run, 100 * HOUR, 0);
    expect(run.finished).toEqual([1]);
    expect(stateValue(run.group, 1, DRIED)).toBe(1);
    expect(stateValue(run.group, 0, DRIED)).toBeLessThan(1);
    expect(run.group.time / HOUR).toBeGreaterThan(6);
  });

  it('stops once for loads that end together', () => {
    const run = dryingPair(SOUP, SOUP);
    advanceGroup(run, 100 * HOUR, 0);
    expect(run.finished).toEqual([0, 1]);
  });

  it('writes steps without a gap', () => {
    const run = dryingPair();
    advanceGroup(run, 3 * HOUR, 0);
    expect(stepValue(run.log, 0, LOG_START)).toBe(0);
    for (let step = 1; step < stepCount(run.log); step += 1) {
      expect(stepValue(run.log, step, LOG_START)).toBe(stepValue(run.log, step - 1, LOG_END));
    }
    expect(stepValue(run.log, stepCount(run.log) - 1, LOG_END)).toBe(3 * HOUR);
  });

  it('dries nothing that is flooded or shut off from all heat', () => {
    const run = dryingPair();
    (run.group.units[0] as ChamberUnit).flooded = true;
    advanceGroup(run, HOUR, 0);
    expect(stateValue(run.group, 0, DRIED)).toBe(0);
    expect(stateValue(run.group, 0, HEAT)).toBe(0);
    expect(stateValue(run.group, 1, DRIED)).toBeGreaterThan(0);
  });
});

describe('rewindGroup', () => {
  it('goes back as if the steps beyond had not been taken', () => {
    const straight = dryingPair();
    advanceGroup(straight, 1.3 * HOUR, 0);
    const back = dryingPair();
    advanceGroup(back, 5 * HOUR, 0);
    rewindGroup(back, 1.3 * HOUR);
    expect(back.group.time).toBe(1.3 * HOUR);
    expect(stepValue(back.log, stepCount(back.log) - 1, LOG_END)).toBe(1.3 * HOUR);
    for (const unit of [0, 1]) {
      for (const place of [DRIED, HEAT]) {
        expect(stateValue(back.group, unit, place) / stateValue(straight.group, unit, place)).toBeCloseTo(1, 4);
      }
    }
  });

  it('leaves a group alone that has not run ahead, and refuses what is long past', () => {
    const run = dryingPair();
    advanceGroup(run, HOUR, 0);
    rewindGroup(run, 2 * HOUR);
    expect(run.group.time).toBe(HOUR);
    advanceGroup(run, 2 * HOUR, HOUR);
    expect(() => rewindGroup(run, 10)).toThrow(RangeError);
  });
});
