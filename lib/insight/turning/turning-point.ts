import { evaluateScenario, todayWeek } from '../../model/evaluate-scenario.ts';
import type { Simulate } from '../../model/scenario-week.ts';
import { checkPlan } from '../../plan/check-plan.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { Dial } from './dials.ts';
import { turnedPlan } from './turned-plan.ts';
import { type Sample, type TurningValue, turningValue } from './turning-value.ts';

/** What must be true of one dial for a scenario to be worth its money and to satisfy a lender. */
export interface TurningPoint {
  readonly dial: Dial;
  /** Where its net present value is nothing. */
  readonly worth: TurningValue;
  /** Where its lowest debt cover is the lender's line. */
  readonly cover: TurningValue;
  /** Of the factors tried, the nearest to today's on either side at which the shop cannot run; null where it always can. */
  readonly stopsBelow: number | null;
  readonly stopsAbove: number | null;
}

/** Factors tried on each side of today's, and how closely a turning one is found. Weeks jump a little, so that finer would be no truer. */
const QUICK = { steps: 8, within: 1e-7 } as const;
const SLOW = { steps: 4, within: 1e-3 } as const;

interface Figures {
  readonly worth: number | null;
  readonly cover: number | null;
}

const NO_FIGURES: Figures = { worth: null, cover: null };

function figuresOf(plan: Plan, scenarioId: string, simulate: Simulate): Figures {
  if (!checkPlan(plan).ok) return NO_FIGURES;
  const outcome = evaluateScenario(plan, scenarioId, todayWeek(plan, simulate), simulate);
  if (outcome.kind === 'refused') return NO_FIGURES;
  const { versusToday, lowestCover, line } = outcome.result.finance;
  return { worth: versusToday?.netPresentValue ?? null, cover: lowestCover === null ? null : lowestCover - line };
}

/** Factors from one end of the range to the other, today's among them. */
function factorsIn([low, high]: Dial['range'], steps: number): number[] {
  const along = (from: number, to: number) => Array.from({ length: steps }, (_, k) => from + ((to - from) * k) / steps);
  const below = low < 1 ? along(low, 1) : [];
  const above = high > 1 ? along(high, 1).reverse() : [];
  return [...below, 1, ...above];
}

function stops(samples: readonly Sample[], isRunning: (sample: Sample) => boolean): [number | null, number | null] {
  const still = samples.filter((sample) => !isRunning(sample)).map(({ factor }) => factor);
  const below = still.filter((factor) => factor < 1);
  const above = still.filter((factor) => factor > 1);
  return [below.at(-1) ?? null, above[0] ?? null];
}

/**
 * Turns one dial all along its range and finds where the scenario is no longer worth its money, and where the lender's line is
 * met exactly. Today's shop is turned alike: what is compared is the purchase.
 * Throws RangeError when the plan has no such scenario.
 * @param simulate best one that remembers: dials of money alone then run no week anew
 */
export function turningPoint(plan: Plan, scenarioId: string, dial: Dial, simulate: Simulate): TurningPoint {
  const known = new Map<number, Figures>();
  const at = (factor: number): Figures => {
    const figures = known.get(factor) ?? figuresOf(turnedPlan(plan, dial.paths, factor), scenarioId, simulate);
    known.set(factor, figures);
    return figures;
  };
  const { steps, within } = dial.isSlow ? SLOW : QUICK;
  const factors = factorsIn(dial.range, steps);
  const find = (figure: keyof Figures) =>
    turningValue(
      factors.map((factor) => ({ factor, above: at(factor)[figure] })),
      (factor) => at(factor)[figure],
      within,
    );
  const runs = factors.map((factor) => ({ factor, above: at(factor).worth ?? at(factor).cover }));
  const [stopsBelow, stopsAbove] = stops(runs, (sample) => sample.above !== null);
  return { dial, worth: find('worth'), cover: find('cover'), stopsBelow, stopsAbove };
}
