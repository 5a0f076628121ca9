import { optionContext } from '../../../lib/insight/options/option-context.ts';
import type { OptionLimits, OptionSpace } from '../../../lib/insight/options/option-types.ts';
import { todayWeek } from '../../../lib/model/evaluate-scenario.ts';
import type { Simulate } from '../../../lib/model/scenario-week.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { simulateShop } from '../../../lib/plant/simulate-shop.ts';
import { plantMemory } from '../../../lib/risk/plant-memory.ts';
import { smallPlan } from '../../model/edited-plan.ts';
import type { Loose } from '../../plan/edited-demo.ts';

/** Weeks that are run without a warm-up, each shop once: quick enough to work out a whole space. */
export function quickMemory() {
  const run: Simulate = (spec) => simulateShop({ ...spec, warmUpWeeks: 0 });
  return plantMemory(run, 1000);
}

/** One chamber today; three years to look ahead. */
export function tinyPlan(edit: (document: Loose) => void = () => {}): Plan {
  return smallPlan((document) => {
    document.financing.horizon.value = 36;
    document.site.supplyCurrent = { value: 500, unit: 'A', origin: 'guess' };
    edit(document);
  });
}

export const TINY_SPACE: OptionSpace = {
  chambers: [{ chamber: 'mid', least: 1, most: 3 }],
  mostChambers: 3,
  arrangements: ['own', 'shared', 'groups'],
  pumps: ['small', 'good'],
  hoses: ['wide'],
  patterns: ['days', 'two-shifts'],
  practices: ['isolate'],
  roughingPumps: [],
  spares: ['none', 'onShelf'],
  freezers: { least: 1, most: 1 },
};

export const NO_LIMITS: OptionLimits = {
  budget: null,
  dscrLine: null,
  supplyCurrent: null,
  circuits: null,
  floorSpace: null,
};

/** The ground of a search for a plan whose today can run. */
export function contextOf(plan: Plan, simulate: Simulate) {
  const week = todayWeek(plan, simulate);
  if (!week.ok) throw new Error(JSON.stringify(week.error));
  return optionContext(plan, 'two', week.value);
}
