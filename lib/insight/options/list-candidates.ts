import type { Simulate } from '../../model/scenario-week.ts';
import { shopSpec } from '../../model/shop-spec.ts';
import type { ShopSpec } from '../../plant/types.ts';
import type { Candidates } from './candidates.ts';
import { leastStanding, optionBooks, yearlyCash } from './cash-ceiling.ts';
import { loneOutput } from './lone-output.ts';
import { makings } from './making.ts';
import { marginCeiling, type Span } from './margin-ceiling.ts';
import { marginEstimate } from './margin-estimate.ts';
import { optionChoices } from './option-choices.ts';
import type { OptionContext } from './option-context.ts';
import { brokenLimits, optionNeeds } from './option-needs.ts';
import { type OptionPlan, optionPlan } from './option-plan.ts';
import type { Candidate, OptionChoice, OptionLimits, OptionSpace } from './option-types.ts';
import { remembered } from './remembered.ts';

/** Options that differ in a spare pump alone have the same weeks. */
function familyOf({ sparePump: _, ...physical }: OptionChoice): string {
  return JSON.stringify(physical);
}

/** The bound on an option's yearly cash and the guess at it. */
function prospects(
  context: OptionContext,
  option: OptionPlan,
  choice: OptionChoice,
  capital: number,
  simulate: Simulate,
): Pick<Candidate, 'ceiling' | 'estimate'> {
  const { plan, scenario } = option;
  const { known } = context;
  let made: ShopSpec | null = null;
  const spec = () => {
    made ??= shopSpec(plan, scenario);
    return made;
  };
  const crewKey = `${scenario.pattern} ${scenario.freezers > 0}`;
  const types = scenario.chambers.map(({ chamber }) => chamber).join(' ');
  const ways = remembered(known.makings, `${types} ${crewKey}`, () => makings(plan, spec(), known.dryingTimes));
  const most = (span: Span) =>
    remembered(known.margins, JSON.stringify([scenario.chambers, crewKey, span]), () =>
      marginCeiling(plan, spec(), span, ways),
    );
  const output = loneOutput(choice, spec, crewKey, known.loneWeeks, simulate);
  const books = optionBooks(context, option, capital);
  const standing = leastStanding(plan, scenario);
  return {
    ceiling: yearlyCash(context, books, standing, most),
    estimate: yearlyCash(context, books, standing, (span) => marginEstimate(plan, ways, output, span, known.demands)),
  };
}

/**
 * Goes through a space and keeps what may do: each option is held against the limits that need no week – what it costs, its current,
 * circuits and floor are exact – and gets a bound and a guess of what it brings.
 * @param simulate runs the short weeks of lone chambers that the guess rests on
 * @param firstPlace place of the first option, where this is a slice of a larger space
 */
export function listCandidates(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  simulate: Simulate,
  firstPlace = 0,
): Candidates {
  const ruledOut = { budget: 0, supplyCurrent: 0, circuits: 0, floorSpace: 0 };
  const candidates: Candidate[] = [];
  let place = firstPlace;
  for (const choice of optionChoices(space)) {
    const option = optionPlan(context.plan, context.baseId, choice);
    const needs = optionNeeds(option);
    const [broken] = brokenLimits(needs, limits);
    if (broken) ruledOut[broken] += 1;
    else {
      const { capital } = needs;
      const prospect = prospects(context, option, choice, capital, simulate);
      candidates.push({ choice, place, family: familyOf(choice), capital, ...prospect });
    }
    place += 1;
  }
  return { candidates, all: place - firstPlace, ruledOut };
}
