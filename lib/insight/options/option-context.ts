import { fromCents, sumCents } from '../../finance/cents.ts';
import type { Projection } from '../../finance/project-plan.ts';
import { horizonMonths } from '../../model/horizon-months.ts';
import { planProjection } from '../../model/plan-projection.ts';
import type { ScenarioWeek } from '../../model/scenario-week.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { LoneWeeks } from './lone-output.ts';
import type { DryingTimes, Making } from './making.ts';
import type { Demands } from './margin-estimate.ts';

/** What all options of a search are measured against, worked out once. */
export interface OptionContext {
  readonly plan: Plan;
  /** Products, month of purchase and whatever else the search does not choose. */
  readonly baseId: string;
  readonly week: ScenarioWeek;
  /** The shop as it is, month by month. */
  readonly today: Projection;
  readonly horizon: number;
  /** Earnings before tax and write-offs of the shop as it is, by month [money]. */
  readonly todayEarnings: readonly number[];
  /** Cash of the shop as it is over the horizon, see `plainCash` [money]. */
  readonly todayCash: number;
  /** Things that many options have in common; they are filled as options are gone through. */
  readonly known: Known;
}

/** What has been worked out already, by what tells it apart. */
export interface Known {
  readonly dryingTimes: DryingTimes;
  readonly loneWeeks: LoneWeeks;
  readonly margins: Map<string, number>;
  readonly makings: Map<string, readonly Making[]>;
  readonly demands: Demands;
}

/** The ground of a search. @param week of today's shop, see `todayWeek` */
export function optionContext(plan: Plan, baseId: string, week: ScenarioWeek): OptionContext {
  const today = planProjection(plan, [], [{ month: -1, week }]);
  return {
    plan,
    baseId,
    week,
    today,
    horizon: horizonMonths(plan),
    todayEarnings: today.income.ebitda.map(fromCents),
    todayCash: fromCents(plainCash(today)),
    known: { dryingTimes: new Map(), loneWeeks: new Map(), margins: new Map(), makings: new Map(), demands: new Map() },
  };
}

/** Cash of a projection over its horizon, loans and working capital left out [cents]: operations, equipment and the tax on them. */
function plainCash({ timeline }: Projection): number {
  return sumCents([...timeline.operations, ...timeline.equipment, ...timeline.taxWithoutLoans]);
}

/** Money tied up in unpaid bills and goods less what suppliers wait for, at the end of a month [cents]; month −1 is the opening. */
export function tiedUp({ balance }: Pick<Projection, 'balance'>, month: number): number {
  const at = month + 1;
  return (balance.receivables[at] ?? 0) + (balance.inventory[at] ?? 0) - (balance.payables[at] ?? 0);
}
