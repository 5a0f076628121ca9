import { floorNeed } from '../../model/floor-need.ts';
import { stageCapital } from '../../model/scenario-capital.ts';
import { scenarioStages } from '../../model/scenario-stages.ts';
import { supplyNeed } from '../../model/supply-need.ts';
import type { OptionPlan } from './option-plan.ts';
import type { EarlyLimit, OptionLimits, OptionNeeds } from './option-types.ts';

/** Sums closer than this share are the same: rounding, not need. */
const ROUNDING = 1e-9;

/** What an option asks for before its week is run; exact, and the same as the sheet says. */
export function optionNeeds({ plan, scenario }: OptionPlan): OptionNeeds {
  const { rating, circuits } = supplyNeed(plan, scenario);
  const capital = scenarioStages(plan, scenario).reduce((sum, stage) => sum + stageCapital(plan, stage).total, 0);
  return { capital, supplyCurrent: rating, circuits, floorSpace: floorNeed(plan, scenario) };
}

/** True when a need is more than a limit allows. */
export function exceeds(need: number, limit: number | null): boolean {
  return limit !== null && need > limit + ROUNDING * Math.abs(limit);
}

/** The limits that these needs break, in a fixed order. */
export function brokenLimits(needs: OptionNeeds, limits: OptionLimits): EarlyLimit[] {
  const pairs: readonly (readonly [EarlyLimit, number])[] = [
    ['budget', needs.capital],
    ['supplyCurrent', needs.supplyCurrent],
    ['circuits', needs.circuits],
    ['floorSpace', needs.floorSpace],
  ];
  return pairs.filter(([limit, need]) => exceeds(need, limits[limit])).map(([limit]) => limit);
}
