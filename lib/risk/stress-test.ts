import { baseValues } from '../inputs/base-values.ts';
import type { StageWeeks } from '../model/evaluate-scenario.ts';
import type { Payback, ScenarioFinance } from '../model/scenario-result.ts';
import type { Plan } from '../plan/plan-types.ts';
import { stressedFinance } from './stressed-finance.ts';
import { NO_STRESS, type Stress } from './stressed-plan.ts';

export type StressId = 'asPlanned' | 'revenue' | 'costs' | 'rate' | 'late' | 'customer' | 'all';

/** A stress by name. */
export interface StressCase {
  readonly id: StressId;
  readonly stress: Stress;
}

/** What is left of a scenario under a stress. */
export interface StressOutcome extends StressCase {
  /** Lowest debt cover of any twelve months running [–]; null without debt service. */
  readonly lowestCover: number | null;
  /** Whether that reaches the lender's line; null without debt service. */
  readonly meetsLine: boolean | null;
  /** Least money in the bank at the end of any month [money]. */
  readonly lowestCash: number;
  /** Against today under the same stress, before financing [money]; null for today itself. */
  readonly netPresentValue: number | null;
  readonly payback: Payback | null;
}

/** Stresses that lenders ask of small borrowers; Source: common-practice. */
const CUSTOMARY = { revenueFall: 0.2, costRise: 0.1, rateRise: 0.03, monthsLate: 6 } as const;

/**
 * The customary stresses, the plan as it is first and all together last. Revenue falls by price, at full cost.
 */
export function stressCases(plan: Plan): readonly StressCase[] {
  const { biggestCustomer } = baseValues('financing', plan.financing);
  const all: Stress = { ...CUSTOMARY, customerLost: biggestCustomer };
  const only = (id: StressId, key: keyof Stress): StressCase => ({ id, stress: { ...NO_STRESS, [key]: all[key] } });
  return [
    { id: 'asPlanned', stress: NO_STRESS },
    only('revenue', 'revenueFall'),
    only('costs', 'costRise'),
    only('rate', 'rateRise'),
    only('late', 'monthsLate'),
    only('customer', 'customerLost'),
    { id: 'all', stress: all },
  ];
}

/**
 * What the customary stresses leave of a scenario. Throws RangeError as `stressedFinance` does.
 * @param weeks of the plan as it is, see `stageWeeks`
 */
export function stressTest(plan: Plan, scenarioId: string, weeks: StageWeeks): StressOutcome[] {
  return stressCases(plan).map(({ id, stress }) => ({
    id,
    stress,
    ...measures(stressedFinance(plan, scenarioId, weeks, stress)),
  }));
}

function measures({ lowestCover, meetsLine, lowestCash, versusToday }: ScenarioFinance) {
  return {
    lowestCover,
    meetsLine,
    lowestCash,
    netPresentValue: versusToday?.netPresentValue ?? null,
    payback: versusToday?.payback ?? null,
  };
}
