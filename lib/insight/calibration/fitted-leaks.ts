import type { QuantityField } from '../../inputs/input-field.ts';
import { inBase } from '../../inputs/quantity.ts';
import { fieldOf } from '../../inputs/register.ts';
import type { ChamberType, Plan } from '../../plan/plan-types.ts';
import { toBase } from '../../units/convert.ts';
import type { FittedValue } from './calibration.ts';
import { FACTOR_SCALE } from './fit-scale.ts';
import { leakFromTests, USUAL_VOLUME_DEVIATION } from './leak-from-tests.ts';
import { riseTests } from './logged-batches.ts';
import { priorOf, WIDTH_OF_RANGE } from './prior.ts';

/** Spread of leaks of chambers nobody tested, as a factor's logarithm: common practice, no source. */
const USUAL_SPREAD = 0.7;

export interface FittedLeaks {
  readonly values: readonly FittedValue[];
  /** Chamber types whose longer tests rise more slowly. */
  readonly levellingOff: readonly string[];
}

function volumeDeviation(chamber: ChamberType): number {
  const { value, low = value, high = value } = chamber.volume;
  return high > low ? (high - low) / WIDTH_OF_RANGE / value : USUAL_VOLUME_DEVIATION;
}

function believed(chamber: ChamberType): { readonly value: number; readonly low: number; readonly high: number } {
  const { centre, spread } = priorOf(leakField, chamber.leak, FACTOR_SCALE, USUAL_SPREAD);
  const place = (side: number) => FACTOR_SCALE.from(centre + (side * spread * WIDTH_OF_RANGE) / 2);
  return { value: place(0), low: place(-1), high: place(1) };
}

const leakField = fieldOf('chamber.leak') as QuantityField;
const mostLeak = toBase(leakField.max, leakField.dimension, leakField.unit);

function leakOf(plan: Plan, chamber: ChamberType): { value: FittedValue; levelsOff: boolean }[] {
  const own = riseTests(plan).filter((test) => test.chamber === chamber.id);
  const estimate = leakFromTests(own, inBase(chamber.volume, 'volume'), volumeDeviation(chamber));
  if (!estimate) return [];
  const { leak, deviation, tests, levelsOff } = estimate;
  const room = (deviation * WIDTH_OF_RANGE) / 2;
  const within = (value: number) => Math.min(mostLeak, Math.max(0, value));
  const prior = believed(chamber);
  const value: FittedValue = {
    list: 'chambers',
    id: chamber.id,
    key: 'leak',
    from: 'riseTests',
    count: tests,
    before: inBase(chamber.leak, 'gasLoad'),
    believed: prior,
    after: { value: within(leak), low: within(leak - room), high: within(leak + room) },
    // A test is a measurement of this one value and needs no belief beside it.
    narrowed: Math.min(1, (2 * room) / Math.max(prior.high - prior.low, Number.MIN_VALUE)),
    moved: 0,
    verdict: 'determined',
    partner: null,
    next: null,
  };
  return [{ value, levelsOff }];
}

/** Leak of every chamber type that has pressure-rise tests. */
export function fittedLeaks(plan: Plan): FittedLeaks {
  const found = plan.chambers.flatMap((chamber) => leakOf(plan, chamber));
  return {
    values: found.map(({ value }) => value),
    levellingOff: found.flatMap(({ value, levelsOff }) => (levelsOff ? [value.id] : [])),
  };
}
