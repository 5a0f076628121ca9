import { describe, expect, it } from 'vitest';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import { dryLoneLoad } from '../../lib/plant/lone-load.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import type { ChamberSpec, CrewSpec, FreezerSpec, ProductSpec, ShopSpec } from '../../lib/plant/types.ts';
import { problemOf } from './run-shop.ts';
import { CHAMBER, DAY_CREW, FRUIT, FULL_CREW, GOOD_PUMP, HOSE, mixOf, SOUP, sharedShop, UNIT } from './sample-shop.ts';

const SHORT = { warmUpWeeks: 1, measuredWeeks: 1 };

function shop(change: Partial<ShopSpec> = {}): ShopSpec {
  return sharedShop(2, GOOD_PUMP, { ...SHORT, ...change });
}

function withChamber(change: Partial<ChamberSpec>): ShopSpec {
  const unit = { chamber: { ...CHAMBER, ...change }, hose: HOSE };
  return shop({ groups: [{ pump: GOOD_PUMP, chambers: [unit, unit] }] });
}

function withProduct(change: Partial<ProductSpec>): ShopSpec {
  return shop({ mix: mixOf({ ...FRUIT, ...change }) });
}

const FREEZER: FreezerSpec = { temperature: 245.15, coefficient: 20, capacity: 60, power: 400 };

describe('a shop that cannot work says why', () => {
  it('the trap is too small for the water of a load', () => {
    const problem = problemOf(withChamber({ trap: { ...CHAMBER.trap, capacity: 8 } }));
    expect(problem).toMatchObject({ kind: 'trapOverfill', productId: 'fruit', chamber: 'Mid-size', capacity: 8 });
    // 12 kg of fruit, 1.2 kg dry, 3 % of that left: 10.764 kg.
    if (problem.kind === 'trapOverfill') expect(problem.water).toBeCloseTo(10.764, 9);
  });

  it('the pump cannot bring a leaky chamber to its ceiling', () => {
    const problem = problemOf(withChamber({ leak: 1 }));
    expect(problem).toMatchObject({ kind: 'pumpCannotReach', pump: 'Good pump', pressure: CHAMBER.pressureCeiling });
    if (problem.kind === 'pumpCannotReach') expect(problem.reached).toBeGreaterThan(225);
  });

  it('the roughing pump cannot, and is the one that is named', () => {
    const roughingPump = { ...GOOD_PUMP, name: 'Tired pump', ultimate: 200 };
    expect(problemOf(shop({ startPractice: 'roughing', roughingPump }))).toMatchObject({
      kind: 'pumpCannotReach',
      pump: 'Tired pump',
    });
  });

  it('the target moisture is below what the product settles at', () => {
    const desorption = { ...FRUIT.desorption, target: 0.01 };
    expect(problemOf(withProduct({ desorption }))).toEqual({
      kind: 'neverDry',
      productId: 'fruit',
      chamber: 'Mid-size',
    });
  });

  it('no shift is long enough for a task', () => {
    const crew: CrewSpec = {
      ...DAY_CREW,
      shifts: [
        { weekday: 0, start: 0, end: 3600, people: 5 },
        { weekday: 1, start: 0, end: 86_400, people: 0 },
      ],
    };
    expect(problemOf(shop({ crew }))).toEqual({
      kind: 'nobodyCanDo',
      task: 'load',
      needed: 1500 + 240 * 12,
      longestShift: 3600,
    });
    expect(problemOf(shop({ crew: { ...crew, shifts: [] } }))).toMatchObject({ kind: 'nobodyCanDo', longestShift: 0 });
  });

  it('a task longer than the evening fits into the night when the same people stay', () => {
    const night = (people: number): CrewSpec => ({
      ...FULL_CREW,
      shifts: [0, 1, 2, 3, 4, 5, 6].flatMap((weekday) => [
        { weekday, start: 0, end: 3000, people },
        { weekday, start: 83_400, end: 86_400, people: 1 },
      ]),
    });
    expect(simulateShop(shop({ crew: night(1) })).ok).toBe(true);
    expect(problemOf(shop({ crew: night(2) })).kind).toBe('nobodyCanDo');
  });

  it('the shelf is not cold enough to freeze the load', () => {
    const fresh = { ...SOUP, preFrozen: false, loadingTemperature: 281.15, frozenLimit: 240 };
    expect(problemOf(shop({ mix: mixOf(fresh) }))).toEqual({
      kind: 'freezingImpossible',
      productId: 'soup',
      chamber: 'Mid-size',
    });
  });

  it('the freezer is not cold enough', () => {
    const made = { ...FRUIT, loadingTemperature: 281.15 };
    const warm = { ...FREEZER, temperature: 262 };
    expect(problemOf(shop({ mix: mixOf(made), freezer: warm })).kind).toBe('freezingImpossible');
  });

  it('the freezer cannot hold one load', () => {
    expect(problemOf(shop({ freezer: { ...FREEZER, capacity: 11.9 } }))).toEqual({
      kind: 'freezerTooSmall',
      productId: 'fruit',
      load: expect.closeTo(12, 9),
      capacity: 11.9,
    });
    // The same freezer is no matter for a product that does not go there.
    expect(simulateShop(shop({ freezer: { ...FREEZER, capacity: 12 } })).ok).toBe(true);
    expect(
      simulateShop(shop({ mix: mixOf({ ...FRUIT, preFrozen: false }), freezer: { ...FREEZER, capacity: 1 } })).ok,
    ).toBe(true);
  });

  it('there is nothing to make, or nothing to make it in', () => {
    expect(problemOf(shop({ mix: [] }))).toEqual({ kind: 'nothingToMake' });
    expect(problemOf(shop({ mix: [{ product: FRUIT, share: 0, weeklyCap: null }] }))).toEqual({
      kind: 'nothingToMake',
    });
    expect(problemOf(shop({ groups: [{ pump: GOOD_PUMP, chambers: [] }] }))).toEqual({ kind: 'nothingToMake' });
  });

  it('a load never dries because its ice may not be as warm as the trap', () => {
    // Frozen at −48 °C at most, under a trap that stands at −48 °C with no load: the ice gives nothing off.
    const chamber = { freezingTemperature: 213.15, trapCooling: 2700 };
    const cold = withChamber(chamber);
    const mix = mixOf({ ...FRUIT, frozenLimit: 224, loadingTemperature: 216.15 });
    expect(problemOf({ ...cold, mix })).toEqual({
      kind: 'dryingStalls',
      productId: 'fruit',
      chamber: 'Mid-size',
      reason: 'frozenLimit',
    });
  });

  it('a demand too small for one batch is no problem: the chambers stand idle', () => {
    const outcome = simulateShop(shop({ mix: [{ product: FRUIT, share: 1, weeklyCap: 0.1 }] }));
    expect(outcome.ok).toBe(true);
    if (outcome.ok) expect(outcome.value.batches).toBe(0);
  });
});

describe('a lone load that cannot be dried says why', () => {
  it('the pump stalls', () => {
    const leaky = { ...UNIT, chamber: { ...CHAMBER, leak: 1 } };
    const outcome = dryLoneLoad(leaky, GOOD_PUMP, chamberLoad(FRUIT, leaky.chamber));
    expect(outcome.kind).toBe('pumpStalls');
  });

  it('drying stalls', () => {
    const outcome = dryLoneLoad(UNIT, GOOD_PUMP, chamberLoad({ ...FRUIT, frozenLimit: 224 }, CHAMBER));
    expect(outcome).toEqual({ kind: 'dryingStalls', limit: 'frozenLimit' });
  });

  it('desorption stalls on a shelf that is too cool for it', () => {
    const outcome = dryLoneLoad(UNIT, GOOD_PUMP, chamberLoad({ ...FRUIT, shelfSecondary: 215 }, CHAMBER));
    expect(outcome.kind).toBe('dryingStalls');
    if (outcome.kind === 'dryingStalls') expect(outcome.limit).toBe('desorption');
  });
});
