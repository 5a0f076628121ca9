import type { Simulate } from '../../model/scenario-week.ts';
import { shopSpec } from '../../model/shop-spec.ts';
import { leastStanding, optionBooks, yearlyCash } from './cash-ceiling.ts';
import { type LoneWeeks, loneOutput } from './lone-output.ts';
import { makings } from './making.ts';
import { marginCeiling, type Span } from './margin-ceiling.ts';
import { marginEstimate } from './margin-estimate.ts';
import { optionChoices } from './option-choices.ts';
import type { OptionContext } from './option-context.ts';
import { brokenLimits, optionNeeds } from './option-needs.ts';
import { type OptionPlan, optionPlan } from './option-plan.ts';
import type { Candidate, EarlyLimit, OptionChoice, OptionLimits, OptionSpace } from './option-types.ts';

/** What is left of a space once everything is ruled out that no week needs to be run for. */
export interface Candidates {
  readonly candidates: readonly Candidate[];
  /** Options of the space. */
  readonly all: number;
  /** How many break which limit, each counted under the first it breaks. */
  readonly ruledOut: Readonly<Record<EarlyLimit, number>>;
}

/** Things that many options have in common, by what tells them apart. */
interface Shared {
  readonly margins: Map<string, number>;
  readonly loneWeeks: LoneWeeks;
}

/** Options that differ in a spare pump alone have the same weeks. */
function familyOf({ sparePump: _, ...physical }: OptionChoice): string {
  return JSON.stringify(physical);
}

function remembered(known: Map<string, number>, key: string, work: () => number): number {
  const value = known.get(key) ?? work();
  known.set(key, value);
  return value;
}

/** The bound on an option's yearly cash and the guess at it. */
function prospects(
  context: OptionContext,
  option: OptionPlan,
  capital: number,
  shared: Shared,
  simulate: Simulate,
): Pick<Candidate, 'ceiling' | 'estimate'> {
  const { plan, scenario } = option;
  const spec = shopSpec(plan, scenario);
  const books = optionBooks(context, option, capital);
  const standing = leastStanding(plan, scenario, spec);
  const crewKey = `${scenario.pattern} ${scenario.freezers > 0}`;
  const key = (span: Span) => JSON.stringify([scenario.chambers, crewKey, span]);
  const most = (span: Span) =>
    remembered(shared.margins, key(span), () => marginCeiling(plan, spec, span, context.dryingTimes));
  const output = loneOutput(spec, crewKey, shared.loneWeeks, simulate);
  const ways = makings(plan, spec, context.dryingTimes);
  return {
    ceiling: yearlyCash(context, books, standing, most),
    estimate: yearlyCash(context, books, standing, (span) => marginEstimate(plan, ways, output, span)),
  };
}

/**
 * Goes through a space and keeps what may do: each option is held against the limits that need no week – what it costs, its current,
 * circuits and floor are exact – and gets a bound and a guess of what it brings.
 * @param simulate runs the short weeks of lone chambers that the guess rests on
 */
export function listCandidates(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  simulate: Simulate,
): Candidates {
  const ruledOut = { budget: 0, supplyCurrent: 0, circuits: 0, floorSpace: 0 };
  const shared: Shared = { margins: new Map(), loneWeeks: new Map() };
  const candidates: Candidate[] = [];
  let place = 0;
  for (const choice of optionChoices(space)) {
    const option = optionPlan(context.plan, context.baseId, choice);
    const needs = optionNeeds(option);
    const [broken] = brokenLimits(needs, limits);
    if (broken) ruledOut[broken] += 1;
    else {
      const { capital } = needs;
      const prospect = prospects(context, option, capital, shared, simulate);
      candidates.push({ choice, place, family: familyOf(choice), capital, ...prospect });
    }
    place += 1;
  }
  return { candidates, all: place, ruledOut };
}
