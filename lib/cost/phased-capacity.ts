/** Capacity from a month on, until the next phase. */
export interface CapacityPhase {
  /** First month, 0 = first of the plan. */
  readonly month: number;
  /** Capacity in full swing by month of the plan [any unit per week]. */
  readonly perWeek: readonly number[];
}

/** How a newly bought part of the plant comes up to speed. */
export interface RampTerms {
  /** Months until the new part gives all it can; 0 for at once. */
  readonly months: number;
  /** Share of it that is given in its first month, 0–1. */
  readonly startShare: number;
}

/**
 * Capacity by month [same unit per week]. Each rise over the phase before comes up in equal steps from the starting
 * share to the whole over the ramp; what was there already is not held back, and a fall is at once. The first phase is
 * the shop as it runs and does not ramp when it begins before or in month 0 with nothing before it.
 * Throws RangeError when phases are not in order of month, or on a negative capacity or ramp, or one of too few months.
 * @param phases in order of month; 0 before the first
 * @param horizonMonths months of the plan
 */
export function phasedCapacity(phases: readonly CapacityPhase[], ramp: RampTerms, horizonMonths: number): number[] {
  requirePhases(phases, ramp, horizonMonths);
  return Array.from({ length: horizonMonths }, (_, month) => {
    const current = phases.findLastIndex((phase) => phase.month <= month);
    return current < 0 ? 0 : rampedCapacity(phases, ramp, current, month);
  });
}

function rampedCapacity(phases: readonly CapacityPhase[], ramp: RampTerms, current: number, month: number): number {
  const phase = phases[current];
  if (!phase) return 0;
  const held = phases.slice(0, current + 1).reduce((sum, later, k) => {
    const before = phases[k - 1];
    const rise = inMonth(later, month) - (before ? inMonth(before, month) : 0);
    return k > 0 && rise > 0 ? sum + rise * (1 - rampShare(month - later.month, ramp)) : sum;
  }, 0);
  return Math.max(0, inMonth(phase, month) - held);
}

function inMonth(phase: CapacityPhase, month: number): number {
  return phase.perWeek[month] ?? 0;
}

/** Share given in the month that many months after the start: startShare at 0, 1 from `months` on. */
function rampShare(age: number, ramp: RampTerms): number {
  if (age >= ramp.months) return 1;
  return ramp.startShare + ((1 - ramp.startShare) * age) / ramp.months;
}

function requirePhases(phases: readonly CapacityPhase[], ramp: RampTerms, horizonMonths: number): void {
  phases.forEach((phase, k) => {
    const before = phases[k - 1];
    if (before && before.month >= phase.month) {
      throw new RangeError(`capacity phase of month ${phase.month} follows that of month ${before.month}`);
    }
    const wrong = phase.perWeek.find((capacity) => !(capacity >= 0));
    if (wrong !== undefined) throw new RangeError(`capacity ${wrong} in the phase of month ${phase.month}`);
    if (phase.perWeek.length < horizonMonths) throw new RangeError(`capacity of ${phase.perWeek.length} months`);
  });
  if (!(ramp.months >= 0) || !(ramp.startShare >= 0 && ramp.startShare <= 1)) {
    throw new RangeError(`ramp of ${ramp.months} months from a share of ${ramp.startShare}`);
  }
}
