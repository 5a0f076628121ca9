import { WEEKS_PER_MONTH } from '../cost/month-length.ts';
import { breakEven, marginOfSafety } from '../finance/break-even.ts';
import type { BreakEvenPoint, ScenarioBreakEven } from './scenario-result.ts';
import type { ScenarioWeek } from './scenario-week.ts';

const WEEKS_PER_YEAR = 12 * WEEKS_PER_MONTH;

/** Nothing sold, or each kilogram costs more than it brings: there is no such point. */
const NONE: BreakEvenPoint = { perWeek: null, salesPerWeek: null, marginOfSafety: null };

/**
 * Sales at which a normal week just covers its costs at the present mix of products: without loans, and with the payments of
 * the dearest year on top. Standing cost is rent, guaranteed wages and the like, with what failing pumps take.
 * @param yearlyDebtService interest and principal of the year in which most is due [money/year]
 */
export function scenarioBreakEven(week: ScenarioWeek, yearlyDebtService: number): ScenarioBreakEven {
  const { spoiled, repairs } = week.failures.cost;
  const fixed = week.account.week.standingCost.week + (spoiled + repairs) / WEEKS_PER_YEAR;
  const debt = yearlyDebtService / WEEKS_PER_YEAR;
  return { fixedPerWeek: fixed, operating: pointOf(week, fixed), withLoans: pointOf(week, fixed + debt) };
}

function pointOf({ account }: ScenarioWeek, fixed: number): BreakEvenPoint {
  const { revenue, runningCost, products } = account.week;
  const saleable = products.reduce((sum, product) => sum + product.saleable, 0);
  if (!(saleable > 0) || !(revenue > 0)) return NONE;
  const point = breakEven(fixed, revenue / saleable, runningCost.week / saleable);
  if (!point) return NONE;
  return {
    perWeek: point.volume,
    salesPerWeek: point.revenue,
    marginOfSafety: marginOfSafety(revenue, point.revenue),
  };
}
