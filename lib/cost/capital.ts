import { requireAmounts, requireFractions } from './require-amounts.ts';

/** What a line of the purchase is for. */
export type CapitalGroup =
  | 'chambers'
  | 'pumps'
  | 'hoses'
  | 'manifold'
  | 'electrical'
  | 'ventilation'
  | 'freezer'
  | 'other';

/** Things bought, each of one kind. */
export interface CapitalItem {
  readonly name: string;
  readonly group: CapitalGroup;
  readonly count: number;
  /** Price of one [money]. */
  readonly price: number;
  /** Installation of one [money]. */
  readonly installation: number;
}

export interface CapitalTerms {
  readonly items: readonly CapitalItem[];
  /** Delivery of all [money]. */
  readonly delivery: number;
  /** Laid by for what was forgotten, a share of items and delivery, 0–1. */
  readonly contingency: number;
  /** Received for old equipment given in [money]. */
  readonly tradeIn: number;
}

export interface CapitalLine {
  readonly name: string;
  readonly group: CapitalGroup | 'delivery' | 'contingency' | 'tradeIn';
  /** [money]; a trade-in is negative. */
  readonly amount: number;
}

/** Money to be found for a purchase; costs are positive. */
export interface CapitalCost {
  /** The lines sum to `total`. */
  readonly lines: readonly CapitalLine[];
  readonly total: number;
}

/**
 * Capital of a purchase [money], line by line: count·(price + installation), delivery, contingency, less trade-ins.
 * Lines of nothing are left out.
 * Throws RangeError on a negative amount or a contingency outside 0–1.
 */
export function capitalCost(terms: CapitalTerms): CapitalCost {
  requireAmounts({ delivery: terms.delivery, tradeIn: terms.tradeIn });
  requireFractions({ contingency: terms.contingency });
  const items = terms.items.map(itemLine);
  const delivered = total(items) + terms.delivery;
  const lines: CapitalLine[] = [
    ...items,
    { name: 'Delivery', group: 'delivery' as const, amount: terms.delivery },
    { name: 'Contingency', group: 'contingency' as const, amount: delivered * terms.contingency },
    { name: 'Old equipment given in', group: 'tradeIn' as const, amount: 0 - terms.tradeIn },
  ].filter((line) => line.amount !== 0);
  return { lines, total: total(lines) };
}

function itemLine(item: CapitalItem): CapitalLine {
  requireAmounts({ count: item.count, price: item.price, installation: item.installation });
  return { name: item.name, group: item.group, amount: item.count * (item.price + item.installation) };
}

function total(lines: readonly CapitalLine[]): number {
  return lines.reduce((sum, line) => sum + line.amount, 0);
}
