/** How many times the earnings cover what is due to lenders. */
export interface DebtServiceCover {
  /** By full year of the plan [–]; null for a year without debt service. */
  readonly byYear: readonly (number | null)[];
  /** Lowest over any twelve months running [–]; null when none has debt service. */
  readonly lowest: number | null;
  /** Last month of the lowest twelve months, 0 = first month of the plan; null as above. */
  readonly lowestEndsIn: number | null;
}

/**
 * Debt service coverage ratio [–]: EBITDA/(interest + principal paid), by year and for the worst trailing twelve months.
 * Earnings are before tax and before the owner's draws; pass them already lowered if the lender counts otherwise.
 * Months beyond the last full year count only in the trailing figure.
 * Source: sba-sop-50-10, definition of operating cash flow over debt service.
 * Throws RangeError when the two series differ in length or a payment is negative.
 * @param ebitda by month [money]
 * @param debtService interest and principal paid by month, ≥ 0 [money]
 */
export function debtServiceCover(ebitda: readonly number[], debtService: readonly number[]): DebtServiceCover {
  if (ebitda.length !== debtService.length || debtService.some((payment) => payment < 0)) {
    throw new RangeError(`debt service of ${debtService.length} months against earnings of ${ebitda.length}`);
  }
  const trailing = ebitda.map((_, month) => (month < 11 ? null : cover(ebitda, debtService, month - 11)));
  const byYear = trailing.filter((_, month) => month % 12 === 11);
  const lowest = trailing.reduce((low, ratio) => (ratio !== null && (low === null || ratio < low) ? ratio : low), null);
  return { byYear, lowest, lowestEndsIn: lowest === null ? null : trailing.indexOf(lowest) };
}

function cover(ebitda: readonly number[], debtService: readonly number[], from: number): number | null {
  const due = twelveMonths(debtService, from);
  return due > 0 ? twelveMonths(ebitda, from) / due : null;
}

function twelveMonths(series: readonly number[], from: number): number {
  return series.slice(from, from + 12).reduce((sum, value) => sum + value, 0);
}
