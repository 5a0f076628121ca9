import { describe, expect, it } from 'vitest';
import { STANDARD_CONTROL } from '../../lib/plant/group-advance.ts';
import { prepareLoads } from '../../lib/plant/prepare-loads.ts';
import { assignCrew, requestCrew } from '../../lib/plant/shop-crew.ts';
import { planNext } from '../../lib/plant/shop-mix.ts';
import { openShop, type Shop } from '../../lib/plant/shop-state.ts';
import type { CrewSpec, TaskName } from '../../lib/plant/types.ts';
import { DAY_CREW, GOOD_PUMP, sharedShop } from './sample-shop.ts';

const HOUR = 3600;

function shopWith(people: number): Shop {
  const crew: CrewSpec = { ...DAY_CREW, shifts: [{ weekday: 0, start: 7 * HOUR, end: 15 * HOUR, people }] };
  const spec = sharedShop(4, GOOD_PUMP, { crew });
  const prepared = prepareLoads(spec);
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.error));
  const shop = openShop(spec, prepared.value, 0, STANDARD_CONTROL);
  for (const chamber of shop.chambers) planNext(shop, chamber);
  return shop;
}

function ask(shop: Shop, hour: number, ...wishes: readonly (readonly [chamber: number, task: TaskName])[]): void {
  shop.now = hour * HOUR;
  for (const [chamber, task] of wishes) requestCrew(shop, shop.chambers[chamber] as Shop['chambers'][number], task);
}

function begun(shop: Shop): readonly string[] {
  return assignCrew(shop).map((request) => `${request.task} ${request.chamber}`);
}

describe('who is served first', () => {
  it('finished batches, then dirty chambers, then empty ones', () => {
    const shop = shopWith(3);
    ask(shop, 7, [0, 'load'], [1, 'clean'], [2, 'unload']);
    expect(begun(shop)).toEqual(['unload 2', 'clean 1', 'load 0']);
  });

  it('who asked earlier, then the chamber with the lower number', () => {
    const shop = shopWith(4);
    ask(shop, 7, [3, 'load']);
    ask(shop, 7.5, [2, 'load'], [1, 'load']);
    expect(begun(shop)).toEqual(['load 3', 'load 1', 'load 2']);
  });

  it('only as many as there are people; the others go on waiting', () => {
    const shop = shopWith(2);
    ask(shop, 7, [0, 'load'], [1, 'load'], [2, 'load']);
    expect(begun(shop)).toEqual(['load 0', 'load 1']);
    expect(shop.requests.map((request) => request.chamber)).toEqual([2]);
    expect(begun(shop)).toEqual([]);
  });
});

describe('when a task is begun', () => {
  it('not before the shift, and not when it would outlast it', () => {
    const shop = shopWith(2);
    ask(shop, 6, [0, 'load']);
    expect(begun(shop)).toEqual([]);
    // Loading 12 kg takes 1500 + 12·240 s = 73 min.
    shop.now = 14 * HOUR;
    expect(begun(shop)).toEqual([]);
    shop.now = 13.5 * HOUR;
    expect(begun(shop)).toEqual(['load 0']);
    const done = shop.queue.heap.find((event) => event.payload.kind === 'taskDone');
    expect(done?.time).toBe(13.5 * HOUR + 4380);
  });

  it('a short task may go before a long one that no longer fits', () => {
    const shop = shopWith(1);
    ask(shop, 14, [0, 'unload'], [1, 'clean']);
    shop.now = 14.25 * HOUR;
    // Unloading takes 51 min, cleaning 36 min, and the shift ends in 45.
    expect(begun(shop)).toEqual(['clean 1']);
  });
});
