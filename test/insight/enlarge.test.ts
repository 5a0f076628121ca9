import { describe, expect, it } from 'vitest';
import { enlarge } from '../../lib/insight/enlarge.ts';
import type { Resource } from '../../lib/insight/insight-types.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';
import { CHAMBER, DAY_CREW, FRUIT, GOOD_PUMP, SMALL_PUMP, sharedShop } from '../plant/sample-shop.ts';

const SHOP: ShopSpec = sharedShop(
  2,
  { ...GOOD_PUMP, table: [{ pressure: 10, speed: 0.002 }] },
  {
    startPractice: 'roughing',
    roughingPump: SMALL_PUMP,
    crew: DAY_CREW,
    mix: [{ product: FRUIT, share: 1, weeklyCap: 20 }],
    freezer: { temperature: 250, coefficient: 20, capacity: 70, power: 500 },
  },
);

/** Paths of the numbers that differ, with the factor between them. */
function changes(before: unknown, after: unknown, path = ''): Record<string, number> {
  if (typeof before === 'number' && typeof after === 'number') {
    return before === after ? {} : { [path]: Math.round(1e6 * (after / before)) / 1e6 };
  }
  if (typeof before !== 'object' || typeof after !== 'object' || !before || !after) {
    expect(after, path).toEqual(before);
    return {};
  }
  expect(Object.keys(after), path).toEqual(Object.keys(before));
  const parts = Object.entries(before).map(([key, value]) =>
    changes(value, (after as Record<string, unknown>)[key], path === '' ? key : `${path}.${key}`),
  );
  return Object.assign({}, ...parts);
}

function changed(resource: Resource, shop: ShopSpec = SHOP): Record<string, number> {
  const larger = enlarge(shop, resource, 1.25);
  if (!larger) throw new Error(`${resource} should have something to enlarge`);
  return changes(shop, larger);
}

/** The same change in both chambers of the shop. */
function inBoth(part: Record<string, number>): Record<string, number> {
  return Object.fromEntries(
    [0, 1].flatMap((unit) => Object.entries(part).map(([key, factor]) => [`groups.0.chambers.${unit}.${key}`, factor])),
  );
}

const TRAP = {
  'chamber.trap.area': 1.25,
  'chamber.trap.capacity': 1.25,
  'chamber.trap.vapourConductance': 1.25,
  'chamber.trap.curve.1.load': 1.25,
};

describe('enlarge', () => {
  it('pump: speed and tolerance of every pump, the roughing pump and measured speeds included, and nothing else', () => {
    expect(changed('pump')).toEqual({
      'groups.0.pump.speed': 1.25,
      'groups.0.pump.vapourTolerance': 1.25,
      'groups.0.pump.table.0.speed': 1.25,
      'roughingPump.speed': 1.25,
      'roughingPump.vapourTolerance': 1.25,
    });
  });

  it('hose: a quarter more conductance by less length', () => {
    expect(changed('hose')).toEqual(inBoth({ 'hose.length': 0.8 }));
  });

  it('trap: surface, capacity, passage and cold', () => {
    expect(changed('trap')).toEqual(inBoth(TRAP));
  });

  it('heater: its power', () => {
    expect(changed('heater')).toEqual(inBoth({ 'chamber.heaterPower': 1.25 }));
  });

  it('chambers: shelves, room, heat and trap, leak, outgassing and hands with them, but neither hose nor pump', () => {
    const room = { 'chamber.shelfArea': 1.25, 'chamber.volume': 1.25, 'chamber.heaterPower': 1.25 };
    const gas = { 'chamber.leak': 1.25, 'chamber.outgassing': 1.25 };
    const hands = {
      'crew.tasks.load.perBatch': 1.25,
      'crew.tasks.unload.perBatch': 1.25,
      'crew.tasks.clean.perBatch': 1.25,
    };
    expect(changed('chambers')).toEqual({ ...inBoth({ ...room, ...gas, ...TRAP }), ...hands });
  });

  it('freezer: how much it holds', () => {
    expect(changed('freezer')).toEqual({ 'freezer.capacity': 1.25 });
  });

  it('demand: what the market takes', () => {
    expect(changed('demand')).toEqual({ 'mix.0.weeklyCap': 1.25 });
  });

  it('crew: longer shifts, with as many people and as long tasks', () => {
    const longer = enlarge(SHOP, 'crew', 1.25);
    expect(longer?.crew.tasks).toEqual(SHOP.crew.tasks);
    longer?.crew.shifts.forEach((shift, i) => {
      const before = SHOP.crew.shifts[i];
      expect(shift.people).toBe(before?.people);
      expect(shift.weekday).toBe(before?.weekday);
      expect(shift.end - shift.start).toBeCloseTo(1.25 * ((before?.end ?? 0) - (before?.start ?? 0)), 6);
      expect(shift.end).toBeLessThanOrEqual(86_400);
      expect(shift.start).toBeGreaterThanOrEqual(0);
    });
    expect({ ...longer, crew: SHOP.crew }).toEqual(SHOP);
  });

  it('crew: more people where the day has no room for longer shifts', () => {
    const night = { weekday: 0, start: 0, end: 80_000, people: 2 };
    const longer = enlarge({ ...SHOP, crew: { ...SHOP.crew, shifts: [night] } }, 'crew', 1.25);
    expect(longer?.crew.shifts).toEqual([{ ...night, people: 3 }]);
  });

  it('has nothing to enlarge where the week knows no limit', () => {
    expect(enlarge(SHOP, 'power', 1.25)).toBeNull();
    expect(enlarge({ ...SHOP, freezer: null }, 'freezer', 1.25)).toBeNull();
    const open = SHOP.mix.map((entry) => ({ ...entry, weeklyCap: null }));
    expect(enlarge({ ...SHOP, mix: open }, 'demand', 1.25)).toBeNull();
  });

  it('leaves a product without a limit without one', () => {
    const mix = [
      { product: FRUIT, share: 0.5, weeklyCap: 20 },
      { product: FRUIT, share: 0.5, weeklyCap: null },
    ];
    expect(enlarge({ ...SHOP, mix }, 'demand', 1.25)?.mix.map((entry) => entry.weeklyCap)).toEqual([25, null]);
  });

  it('keeps chambers of one type one object, so that what is computed per type is computed once', () => {
    for (const resource of ['chambers', 'trap', 'heater', 'hose'] as const) {
      const [first, second] = enlarge(SHOP, resource, 1.25)?.groups[0]?.chambers ?? [];
      expect(first?.chamber).toBe(second?.chamber);
    }
  });

  it('leaves the shop it was given as it was', () => {
    const before = structuredClone(SHOP);
    for (const resource of ['chambers', 'pump', 'hose', 'trap', 'heater', 'freezer', 'crew', 'demand'] as const) {
      enlarge(SHOP, resource, 1.25);
    }
    expect(SHOP).toEqual(before);
    expect(SHOP.groups[0]?.chambers[0]?.chamber).toBe(CHAMBER);
  });
});
