import { describe, expect, it } from 'vitest';
import { STANDARD_CONTROL } from '../../lib/plant/group-advance.ts';
import { prepareLoads } from '../../lib/plant/prepare-loads.ts';
import { fillFreezer, largestDeficit, leaveFreezer, planNext } from '../../lib/plant/shop-mix.ts';
import { openShop, type Shop } from '../../lib/plant/shop-state.ts';
import type { FreezerSpec, MixShare, ShopSpec } from '../../lib/plant/types.ts';
import { reportOf } from './run-shop.ts';
import { CANDY, FRUIT, GOOD_PUMP, QUICK_CREW, SOUP, sharedShop } from './sample-shop.ts';

const THREE: readonly MixShare[] = [
  { product: FRUIT, share: 0.5, weeklyCap: null },
  { product: SOUP, share: 0.3, weeklyCap: null },
  { product: CANDY, share: 0.2, weeklyCap: null },
];

const FREEZER: FreezerSpec = { temperature: 241.15, coefficient: 20, capacity: 30, power: 400 };

function shopOf(change: Partial<ShopSpec>, count = 3): Shop {
  const spec = sharedShop(count, GOOD_PUMP, { crew: QUICK_CREW, warmUpWeeks: 1, measuredWeeks: 1, ...change });
  const prepared = prepareLoads(spec);
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.error));
  return openShop(spec, prepared.value, 0, STANDARD_CONTROL);
}

/** The product of a chamber's next load, which is then forgotten so that the chamber can be asked again. */
function chosen(shop: Shop, chamber = 0): string | null {
  const run = shop.chambers[chamber] as Shop['chambers'][number];
  if (!planNext(shop, run)) return null;
  const id = run.next?.load.product.id ?? null;
  run.next = null;
  return id;
}

describe('what a chamber makes next', () => {
  it('is the product furthest behind its share', () => {
    const shop = shopOf({ mix: THREE });
    const order = Array.from({ length: 10 }, () => chosen(shop));
    expect(order.slice(0, 3)).toEqual(['fruit', 'soup', 'candy']);
    const count = (id: string) => order.filter((made) => made === id).length;
    expect([count('fruit'), count('soup'), count('candy')]).toEqual([5, 3, 2]);
  });

  it('is never a product without a share', () => {
    const shop = shopOf({ mix: [...THREE.slice(0, 1), { product: SOUP, share: 0, weeklyCap: null }] });
    expect(Array.from({ length: 4 }, () => chosen(shop))).toEqual(['fruit', 'fruit', 'fruit', 'fruit']);
  });

  it('is not a product the market has had enough of this week, and nothing when that is all', () => {
    // A batch gives 1.236 kg.
    const capped = shopOf({ mix: [{ product: FRUIT, share: 1, weeklyCap: 3 }] });
    expect([chosen(capped), chosen(capped), chosen(capped)]).toEqual(['fruit', 'fruit', null]);
    const both = shopOf({
      mix: [
        { product: FRUIT, share: 0.9, weeklyCap: 1.3 },
        { product: SOUP, share: 0.1, weeklyCap: null },
      ],
    });
    expect([chosen(both), chosen(both), chosen(both)]).toEqual(['fruit', 'soup', 'soup']);
    expect(largestDeficit(both, both.chambers[0] as Shop['chambers'][number])).toBe(1);
  });

  it('may be that product again next week, with the room left over', () => {
    const shop = shopOf({ mix: [{ product: FRUIT, share: 1, weeklyCap: 2 }] });
    expect([chosen(shop), chosen(shop)]).toEqual(['fruit', null]);
    shop.now = 7 * 86_400;
    expect([chosen(shop), chosen(shop), chosen(shop)]).toEqual(['fruit', 'fruit', null]);
  });
});

describe('the freezer', () => {
  function frozenShop(): Shop {
    return shopOf({ mix: [{ product: FRUIT, share: 1, weeklyCap: null }], freezer: FREEZER });
  }

  it('takes loads in order of asking as long as they fit, and the next when one leaves', () => {
    const shop = frozenShop();
    for (const chamber of shop.chambers) planNext(shop, chamber);
    // 12 kg each into 30 kg.
    expect(shop.freezer.used).toBeCloseTo(24, 9);
    expect(shop.freezer.waiting).toEqual([2]);
    const first = shop.chambers[0]?.next;
    if (!first) throw new Error('no load');
    leaveFreezer(shop, first);
    expect(shop.freezer.used).toBeCloseTo(24, 9);
    expect(shop.freezer.waiting).toEqual([]);
  });

  it('makes a load wait until it is frozen', () => {
    const shop = frozenShop();
    planNext(shop, shop.chambers[0] as Shop['chambers'][number]);
    expect(shop.chambers[0]?.next?.ready).toBe(false);
    expect(shop.queue.heap.some((event) => event.payload.kind === 'frozen')).toBe(true);
  });

  it('does nothing for products that are not frozen beforehand', () => {
    const shop = shopOf({ mix: [{ product: CANDY, share: 1, weeklyCap: null }], freezer: FREEZER });
    planNext(shop, shop.chambers[0] as Shop['chambers'][number]);
    expect(shop.chambers[0]?.next?.ready).toBe(true);
    fillFreezer(shop);
    expect(shop.freezer.used).toBe(0);
  });
});

describe('over whole weeks', () => {
  const weeks = { crew: QUICK_CREW, warmUpWeeks: 1, measuredWeeks: 3 };

  it('the planned mix is kept', () => {
    const { products, batches } = reportOf(sharedShop(3, GOOD_PUMP, { ...weeks, mix: THREE }));
    products.forEach((week, i) => {
      expect(Math.abs(week.batches / batches - (THREE[i]?.share as number))).toBeLessThan(0.02);
    });
  });

  it('the market is not flooded, and chambers stand idle for want of demand', () => {
    const report = reportOf(sharedShop(2, GOOD_PUMP, { ...weeks, mix: [{ product: FRUIT, share: 1, weeklyCap: 8 }] }));
    expect(report.dryOut).toBeLessThan(8 * 1.05);
    expect(report.dryOut).toBeGreaterThan(8 * 0.85);
    expect(report.phases.idleNoDemand).toBeGreaterThan(86_400);
    expect(report.utilisation.demand).toBeCloseTo(report.dryOut / 8, 9);
    expect(reportOf(sharedShop(2, GOOD_PUMP, weeks)).utilisation.demand).toBeNull();
  });

  it('a freezer for one load holds back three chambers, a large one does not', () => {
    // Made here and frozen here, so that the freezer has hours to do.
    const fresh = { ...FRUIT, pieceThickness: 0.03, loadingTemperature: 281.15 };
    const of = (capacity: number) =>
      reportOf(
        sharedShop(3, GOOD_PUMP, {
          ...weeks,
          mix: [{ product: fresh, share: 1, weeklyCap: null }],
          freezer: { ...FREEZER, coefficient: 8, capacity },
        }),
      );
    const tight = of(13);
    const ample = of(100);
    expect(tight.phases.waitingForFreezer).toBeGreaterThan(10 * ample.phases.waitingForFreezer);
    expect(tight.batches).toBeLessThan(ample.batches);
    expect(tight.utilisation.freezer).toBeGreaterThan(0.7);
    expect(tight.utilisation.freezer).toBeLessThanOrEqual(1);
    expect(reportOf(sharedShop(1, GOOD_PUMP, weeks)).utilisation.freezer).toBeNull();
  });
});
