import { type Cents, sumCents, toCents } from './cents.ts';
import { type DepreciationMethod, monthlyDepreciation } from './depreciation.ts';
import { accumulate } from './series.ts';

/** A thing bought to be used for years. Prices are positive amounts. */
export interface CapitalPurchase {
  readonly name: string;
  /** Month of the plan at whose start it is bought, 0 = first; below 0 for what the shop owns already. */
  readonly month: number;
  /** Price with installation [money]. */
  readonly amount: number;
  /** Useful life, whole months ≥ 1: until it is replaced, and down to salvage in market value. */
  readonly lifeMonths: number;
  /** What it fetches at the end of its life [money]. */
  readonly salvage: number;
  readonly method: DepreciationMethod;
  /** Share written off at once in the month of purchase, 0–1. */
  readonly expensedShare: number;
  /** True when the same thing is bought again each time its life ends. */
  readonly replaced: boolean;
  /** Sold, or given in part exchange, at the start of a month; null when kept. */
  readonly sold: { readonly month: number; readonly amount: number } | null;
}

/** All assets together by month of the plan, in whole cents, all positive but the gain. */
export interface AssetBook {
  /** Book value before the first month of what the shop owns already. */
  readonly opening: Cents;
  /** Paid at the start of each month. */
  readonly bought: readonly Cents[];
  /** Received at the start of each month for things sold or replaced. */
  readonly sold: readonly Cents[];
  /** Received less book value. */
  readonly gain: readonly Cents[];
  readonly depreciation: readonly Cents[];
  /** Book value at the end of each month. */
  readonly bookValue: readonly Cents[];
  /** What the things still held would fetch after the last month: from price to salvage evenly over the life. */
  readonly marketValue: Cents;
}

/** One thing from the month it is bought to the month it goes. */
export interface Holding {
  readonly purchase: CapitalPurchase;
  readonly from: number;
  /** Month at whose start it goes; null when held beyond the plan. */
  readonly until: number | null;
  /** Received when it goes [cents]. */
  readonly proceeds: Cents;
  /** From `from` on. */
  readonly depreciation: readonly Cents[];
  /** Written off after so many months of holding, 0 first. */
  readonly writtenOff: readonly Cents[];
}

/**
 * Purchases, replacements, sales, depreciation and book value by month.
 * Throws RangeError on terms that `monthlyDepreciation` refuses and on months that are not whole.
 * @param purchases in any order
 * @param horizonMonths months of the plan
 */
export function assetBook(purchases: readonly CapitalPurchase[], horizonMonths: number): AssetBook {
  const holdings = purchases.flatMap((purchase) => holdingsOf(purchase, horizonMonths));
  const byMonth = (amount: (holding: Holding, month: number) => Cents) =>
    Array.from({ length: horizonMonths }, (_, month) => sumCents(holdings.map((holding) => amount(holding, month))));
  return {
    opening: sumCents(holdings.map((holding) => (holding.from < 0 ? bookValueBefore(holding, 0) : 0))),
    bought: byMonth((holding, month) => (holding.from === month ? toCents(holding.purchase.amount) : 0)),
    sold: byMonth((holding, month) => (holding.until === month ? holding.proceeds : 0)),
    gain: byMonth((holding, month) =>
      holding.until === month ? holding.proceeds - bookValueBefore(holding, month) : 0,
    ),
    depreciation: byMonth(depreciationIn),
    bookValue: byMonth((holding, month) => (isHeld(holding, month) ? bookValueBefore(holding, month + 1) : 0)),
    marketValue: sumCents(holdings.map((holding) => marketValueAt(holding, horizonMonths))),
  };
}

/**
 * A thing and all that replace it within the plan, each from its purchase to the month it goes.
 * Throws RangeError on months that are not whole or a sale that does not come after the purchase.
 */
export function holdingsOf(purchase: CapitalPurchase, horizonMonths: number): Holding[] {
  if (!Number.isInteger(purchase.month))
    throw new RangeError(`"${purchase.name}" is bought in month ${purchase.month}`);
  if (purchase.sold && purchase.sold.month <= purchase.month) {
    throw new RangeError(
      `"${purchase.name}" is sold in month ${purchase.sold.month}, not after month ${purchase.month}`,
    );
  }
  const holdings: Holding[] = [];
  const last = Math.min(horizonMonths, purchase.sold?.month ?? horizonMonths);
  for (let from = purchase.month; from < last; from += purchase.lifeMonths) {
    const holding = holdingFrom(purchase, from);
    // What went before the plan began leaves no trace in it.
    if (holding.until === null || holding.until >= 0) holdings.push(holding);
    if (!purchase.replaced) break;
  }
  return holdings;
}

function holdingFrom(purchase: CapitalPurchase, from: number): Holding {
  const depreciation = monthlyDepreciation({
    cost: toCents(purchase.amount),
    salvage: toCents(purchase.salvage),
    lifeMonths: purchase.lifeMonths,
    method: purchase.method,
    expensedShare: purchase.expensedShare,
    month: from,
  });
  return { purchase, from, ...ending(purchase, from), depreciation, writtenOff: accumulate(depreciation, 0) };
}

function ending(purchase: CapitalPurchase, from: number): Pick<Holding, 'until' | 'proceeds'> {
  const worn = purchase.replaced ? from + purchase.lifeMonths : null;
  const sold = purchase.sold;
  if (sold && (worn === null || sold.month <= worn)) return { until: sold.month, proceeds: toCents(sold.amount) };
  return { until: worn, proceeds: toCents(purchase.salvage) };
}

function isHeld(holding: Holding, month: number): boolean {
  return month >= holding.from && (holding.until === null || month < holding.until);
}

function depreciationIn(holding: Holding, month: number): Cents {
  return isHeld(holding, month) ? (holding.depreciation[month - holding.from] ?? 0) : 0;
}

/** Book value at the start of a month [cents], of a thing held until then. */
function bookValueBefore(holding: Holding, month: number): Cents {
  const months = Math.min(Math.max(0, month - holding.from), holding.depreciation.length);
  return toCents(holding.purchase.amount) - (holding.writtenOff[months] ?? 0);
}

function marketValueAt(holding: Holding, month: number): Cents {
  if (!isHeld(holding, month - 1)) return 0;
  // A thing replaced at the very end of the plan fetches its salvage, like one replaced within it.
  const { amount, salvage, lifeMonths } = holding.purchase;
  const worn = Math.min(1, (month - holding.from) / lifeMonths);
  return toCents(amount - (amount - salvage) * worn);
}
