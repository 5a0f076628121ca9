import type { StageWeeks } from '../model/evaluate-scenario.ts';
import { brent } from '../numeric/brent.ts';
import type { Plan } from '../plan/plan-types.ts';
import { stressedFinance } from './stressed-finance.ts';
import { NO_STRESS } from './stressed-plan.ts';

/** How far revenue may fall until debt cover is down to a line. */
export type ReverseStress =
  /** It may fall by this share [–]. */
  | { readonly kind: 'falls'; readonly revenueFall: number }
  /** The plan as it is does not reach the line. */
  | { readonly kind: 'alreadyBelow'; readonly lowestCover: number }
  /** Not even without any revenue. */
  | { readonly kind: 'never'; readonly lowestCover: number }
  /** There is nothing to pay to lenders. */
  | { readonly kind: 'noDebt' }
  /** The search ran out of steps near this share. */
  | { readonly kind: 'notConverged'; readonly revenueFall: number };

/** Share of revenue to which the answer is known [–]; cents make finer steps than this meaningless. */
const FINENESS = 1e-9;

/**
 * Fall of revenue, all prices alike and from the first month, at which the lowest debt cover of any twelve months is down
 * to a line [–]: costs, sales in kilograms and the loan stay. Found by root search; cover falls with revenue throughout.
 * Throws RangeError as `stressedFinance` does.
 * @param weeks of the plan as it is, see `stageWeeks`
 * @param line 1, where earnings just pay the lenders, or the lender's own line [–]
 */
export function reverseStress(plan: Plan, scenarioId: string, weeks: StageWeeks, line: number): ReverseStress {
  const coverAt = (revenueFall: number) =>
    stressedFinance(plan, scenarioId, weeks, { ...NO_STRESS, revenueFall }).lowestCover;
  const asPlanned = coverAt(0);
  const withoutRevenue = coverAt(1);
  if (asPlanned === null || withoutRevenue === null) return { kind: 'noDebt' };
  if (asPlanned < line) return { kind: 'alreadyBelow', lowestCover: asPlanned };
  if (withoutRevenue > line) return { kind: 'never', lowestCover: withoutRevenue };
  const found = brent((fall) => (coverAt(fall) ?? line) - line, 0, 1, { absolute: FINENESS });
  if (found.kind === 'root') return { kind: 'falls', revenueFall: found.root };
  return { kind: 'notConverged', revenueFall: found.kind === 'notConverged' ? found.root : 0 };
}
