import { requireAmounts } from './require-amounts.ts';

const SECONDS_PER_HOUR = 3600;

export interface LabourTerms {
  /** Hands-on time by task [s/week]: machines running alone are not labour. */
  readonly tasks: Readonly<Record<string, number>>;
  /** People-time on shift, the owner's included [s/week]. */
  readonly onShift: number;
  /** Paid to the hired hand [money/h]. */
  readonly wage: number;
  /** Employer's taxes, insurance and benefits on top of the wage [–], 0.3 for 30 %. */
  readonly onCost: number;
  /** True when hired hours on shift are paid whether there is work or not; false when only hours worked are paid. */
  readonly guaranteed: boolean;
  /** The owner's own hours [s/week] and what they would be worth [money/h]. */
  readonly owner: { readonly time: number; readonly rate: number };
}

/** Labour by what is paid and what is not; all costs are positive. */
export interface LabourCost {
  /** [s/week] */
  readonly handsOn: number;
  /** Hired time that is paid [s/week]. */
  readonly paidTime: number;
  /** Wage with on-cost [money/h]. */
  readonly loadedWage: number;
  /** Hired labour [money/week]. */
  readonly paid: number;
  /** Part of `paid` by task, in proportion to hands-on time; what is paid for waiting is `idle` [money/week]. */
  readonly byTask: Readonly<Record<string, number>>;
  readonly idle: number;
  /** The owner's time at its rate: shown, never part of `paid` [money/week]. */
  readonly ownerUnpaid: number;
  /** True when `paid` rises and falls with what is made. */
  readonly flexible: boolean;
}

/**
 * Labour [money/week]. The owner does hands-on work first, the hired hand what is left. Guaranteed hours are paid for
 * the whole hired shift, and for work beyond it; otherwise only hired hands-on hours are.
 * Throws RangeError on a negative amount.
 */
export function labourCost(terms: LabourTerms): LabourCost {
  requireAmounts({ ...terms.tasks, onShift: terms.onShift, wage: terms.wage, onCost: terms.onCost });
  requireAmounts({ ownerTime: terms.owner.time, ownerRate: terms.owner.rate });
  const handsOn = Object.values(terms.tasks).reduce((sum, time) => sum + time, 0);
  const hired = Math.max(0, handsOn - terms.owner.time);
  const hiredShift = Math.max(0, terms.onShift - terms.owner.time);
  const paidTime = terms.guaranteed ? Math.max(hiredShift, hired) : hired;
  const loadedWage = terms.wage * (1 + terms.onCost);
  const money = (time: number) => (time / SECONDS_PER_HOUR) * loadedWage;
  return {
    handsOn,
    paidTime,
    loadedWage,
    paid: money(paidTime),
    byTask: scaled(terms.tasks, handsOn > 0 ? money(hired) / handsOn : 0),
    idle: money(paidTime - hired),
    ownerUnpaid: (terms.owner.time / SECONDS_PER_HOUR) * terms.owner.rate,
    flexible: !terms.guaranteed,
  };
}

function scaled(tasks: Readonly<Record<string, number>>, factor: number): Record<string, number> {
  return Object.fromEntries(Object.entries(tasks).map(([name, time]) => [name, time * factor]));
}
