import { WEEK } from './crew.ts';
import { pushEvent } from './event-queue.ts';
import { dryOutput } from './load-law.ts';
import { type ChamberRun, mixShare, type NextLoad, PRIORITY, type Shop } from './shop-state.ts';

/** Rounding room when dry kilograms are compared with the market's weekly limit [kg]. */
const CAP_SLACK = 1e-9;

/** True when the market has room for one batch more, unused room of earlier weeks carried along. */
function marketHasRoom(shop: Shop, index: number, output: number): boolean {
  const { weeklyCap } = mixShare(shop, index);
  if (weeklyCap === null) return true;
  const room = weeklyCap * (Math.floor(shop.now / WEEK) + 1);
  return (shop.promised[index] as number) + output <= room + CAP_SLACK;
}

/** Place in the mix of the product furthest behind its planned share that can still be sold; null when none can. */
export function largestDeficit(shop: Shop, chamber: ChamberRun): number | null {
  const total = shop.started.reduce((sum, count) => sum + count, 0) + 1;
  let best: number | null = null;
  let bestDeficit = Number.NEGATIVE_INFINITY;
  shop.spec.mix.forEach((entry, index) => {
    const deficit = entry.share * total - (shop.started[index] as number);
    if (entry.share <= 0 || deficit <= bestDeficit) return;
    const output = dryOutput(shop.prepared(chamber.spec, index).load);
    if (!marketHasRoom(shop, index, output)) return;
    best = index;
    bestDeficit = deficit;
  });
  return best;
}

function needsFreezer(shop: Shop, next: NextLoad): boolean {
  return shop.spec.freezer !== null && next.load.product.preFrozen;
}

function noteFreezer(shop: Shop): void {
  shop.freezer.log.push([shop.now, shop.freezer.used]);
}

/** Puts waiting loads into the freezer in order of asking, as long as the first in line fits. */
export function fillFreezer(shop: Shop): void {
  const { freezer, spec } = shop;
  while (freezer.waiting.length > 0) {
    const chamber = shop.chambers[freezer.waiting[0] as number] as ChamberRun;
    const next = chamber.next as NextLoad;
    if (!spec.freezer || freezer.used + next.load.wet > spec.freezer.capacity + CAP_SLACK) return;
    freezer.waiting.shift();
    freezer.used += next.load.wet;
    next.frozenMass = next.load.wet;
    noteFreezer(shop);
    const { freezerTime } = shop.prepared(chamber.spec, next.mixIndex);
    pushEvent(shop.queue, shop.now + freezerTime, PRIORITY.frozen, { kind: 'frozen', chamber: chamber.index });
  }
}

/** Takes a load out of the freezer when it goes into its chamber. */
export function leaveFreezer(shop: Shop, load: NextLoad): void {
  if (load.frozenMass === 0) return;
  shop.freezer.used -= load.frozenMass;
  load.frozenMass = 0;
  noteFreezer(shop);
  fillFreezer(shop);
}

/** Chooses the chamber's next load if it has none and the market has room; true when it has one afterwards. */
export function planNext(shop: Shop, chamber: ChamberRun): boolean {
  if (chamber.next) return true;
  const index = largestDeficit(shop, chamber);
  if (index === null) return false;
  const { load } = shop.prepared(chamber.spec, index);
  shop.started[index] = (shop.started[index] as number) + 1;
  shop.promised[index] = (shop.promised[index] as number) + dryOutput(load);
  const next: NextLoad = { mixIndex: index, load, ready: true, frozenMass: 0 };
  chamber.next = next;
  if (needsFreezer(shop, next)) {
    next.ready = false;
    shop.freezer.waiting.push(chamber.index);
    fillFreezer(shop);
  }
  return true;
}
