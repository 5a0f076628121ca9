import type { Payback, ScenarioFinance } from '../model/scenario-result.ts';
import type { Plan } from '../plan/plan-types.ts';
import { type Plants, stressedFinance } from './stressed-finance.ts';
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
  /** Against today under the same stress, before financing [money]; null for today itself. */
  readonly netPresentValue: number | null;
  readonly payback: Payback | null;
}

/** Stresses that lenders ask of small borrowers; Source: common-practice. */
const CUSTOMARY = { revenueFall: 0.2, costRise: 0.1, rateRise: 0.03, monthsLate: 6 } as const;

/** A guess, to be replaced by the share of the shop's own biggest customer. */
const BIGGEST_CUSTOMER = 0.25;

/**
 * The customary stresses, the plan as it is first and all together last. Revenue falls by price, at full cost.
 * @param biggestCustomer share of sales that the biggest customer takes [–], 0–1
 */
export function stressCases(biggestCustomer = BIGGEST_CUSTOMER): readonly StressCase[] {
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
 * @param plants as simulated for today and for the scenario
 */
export function stressTest(
  plan: Plan,
  scenarioId: string,
  plants: Plants,
  biggestCustomer = BIGGEST_CUSTOMER,
): StressOutcome[] {
  return stressCases(biggestCustomer).map(({ id, stress }) => ({
    id,
    stress,
    ...measures(stressedFinance(plan, scenarioId, plants, stress)),
  }));
}

function measures({ lowestCover, versusToday }: ScenarioFinance) {
  return {
    lowestCover,
    netPresentValue: versusToday?.netPresentValue ?? null,
    payback: versusToday?.payback ?? null,
  };
}
