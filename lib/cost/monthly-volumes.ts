import { WEEKS_PER_MONTH } from './month-length.ts';
import { type DemandTerms, monthlyDemand } from './monthly-demand.ts';
import { requireAmounts, requireFractions } from './require-amounts.ts';

/**
 * What becomes of what could be made but not sold in its month.
 * `makeToOrder`: it is not made. `keep`: it is made and stored up to a limit, then sold first. `discard`: it is made,
 * paid for and thrown away.
 */
export type UnsoldRule =
  | { readonly kind: 'makeToOrder' }
  | { readonly kind: 'keep'; readonly mostKept: number }
  | { readonly kind: 'discard' };

export interface VolumeTerms {
  readonly horizonMonths: number;
  /** Calendar month in which the plan starts, 0 = January. */
  readonly startMonth: number;
  /** Dry food the plant can make by month, in weeks without a stop [kg/week]. */
  readonly capacity: readonly number[];
  /** Share of the dry food that can be sold, 0–1. */
  readonly saleableYield: number;
  /** Weeks closed in each calendar month, January first; empty for none. */
  readonly closedWeeks: readonly number[];
  /** Share of open time that pumps and chambers are in order by month of the plan, 0–1. */
  readonly availability: readonly number[];
  readonly demand: DemandTerms;
  readonly unsold: UnsoldRule;
}

/** One month of one product, in kilograms that can be sold unless said. */
export interface VolumeMonth {
  readonly capacity: number;
  /** Null for no limit. */
  readonly demand: number | null;
  readonly made: number;
  readonly sold: number;
  readonly discarded: number;
  /** In store at the end of the month. */
  readonly stock: number;
  /** Share of the capacity that was used, 0–1; what costs that go with batches are scaled by. */
  readonly used: number;
  /** Weeks' worth of full running: open weeks × availability × used [week]. */
  readonly runningWeeks: number;
}

/**
 * Sales of one product by month: min(capacity × yield + stock, demand), with closures, availability, season and growth.
 * A month has 365.25/12/7 weeks.
 * Throws RangeError on lengths that do not fit, a share outside 0–1 or a negative amount.
 */
export function monthlyVolumes(terms: VolumeTerms): VolumeMonth[] {
  requireVolumes(terms);
  let stock = 0;
  return Array.from({ length: terms.horizonMonths }, (_, month) => {
    const made = volumeMonth(terms, month, stock);
    stock = made.stock;
    return made;
  });
}

function volumeMonth(terms: VolumeTerms, month: number, stock: number): VolumeMonth {
  const weeks = openWeeks(terms, month) * (terms.availability[month] ?? 0);
  const capacity = (terms.capacity[month] ?? 0) * weeks * terms.saleableYield;
  const demand = monthlyDemand(terms.demand, terms.startMonth, month);
  const outcome = sell(capacity, demand, stock, terms.unsold);
  const used = capacity > 0 ? outcome.made / capacity : 0;
  return { capacity, demand, ...outcome, used, runningWeeks: weeks * used };
}

type Outcome = Pick<VolumeMonth, 'made' | 'sold' | 'discarded' | 'stock'>;

function sell(capacity: number, demand: number | null, stock: number, unsold: UnsoldRule): Outcome {
  const wanted = demand ?? Number.POSITIVE_INFINITY;
  if (unsold.kind === 'makeToOrder') {
    const sold = Math.min(capacity, wanted);
    return { made: sold, sold, discarded: 0, stock: 0 };
  }
  if (unsold.kind === 'discard') {
    const sold = Math.min(capacity, wanted);
    return { made: capacity, sold, discarded: capacity - sold, stock: 0 };
  }
  // With a store nothing is made beyond what the month sells and the store still takes.
  const made = Math.min(capacity, Math.max(0, wanted + unsold.mostKept - stock));
  const sold = Math.min(stock + made, wanted);
  return { made, sold, discarded: 0, stock: stock + made - sold };
}

function openWeeks(terms: VolumeTerms, month: number): number {
  const closed = terms.closedWeeks[(terms.startMonth + month) % 12] ?? 0;
  return Math.max(0, WEEKS_PER_MONTH - closed);
}

function requireVolumes(terms: VolumeTerms): void {
  const { horizonMonths, capacity, availability, closedWeeks, demand } = terms;
  if (capacity.length !== horizonMonths) {
    throw new RangeError(`capacity of ${capacity.length} months for a plan of ${horizonMonths}`);
  }
  if (availability.length !== horizonMonths) {
    throw new RangeError(`availability of ${availability.length} months for a plan of ${horizonMonths}`);
  }
  for (const year of [closedWeeks, demand.seasonality]) {
    if (year.length !== 0 && year.length !== 12) throw new RangeError(`a year has 12 months, got ${year.length}`);
  }
  for (const amount of [...capacity, ...closedWeeks, ...demand.seasonality]) requireAmounts({ amount });
  for (const share of availability) requireFractions({ saleableYield: terms.saleableYield, availability: share });
  requireDemand(terms);
}

function requireDemand({ demand, unsold, startMonth }: VolumeTerms): void {
  requireAmounts({ demand: demand.perMonth ?? 0, mostKept: unsold.kind === 'keep' ? unsold.mostKept : 0 });
  if (!(demand.growth > -1)) throw new RangeError(`demand growth ${demand.growth} must be above -1`);
  if (demand.seasonality.length > 0 && !demand.seasonality.some((weight) => weight > 0)) {
    throw new RangeError('seasonality is 0 in every month');
  }
  if (!Number.isInteger(startMonth) || startMonth < 0 || startMonth > 11) {
    throw new RangeError(`start month ${startMonth} must be 0 to 11`);
  }
}
