import type { OptionContext } from './option-context.ts';
import { brokenLimits, optionNeeds } from './option-needs.ts';
import { optionPlan } from './option-plan.ts';
import type { Binding, EarlyLimit, OptionChoice, OptionLimits, OptionSpace } from './option-types.ts';

/** A market from which a week takes this share leaves nothing to grow into. */
const MARKET_FULL = 0.97;

function countOf(choice: OptionChoice, chamber: string): number {
  return choice.chambers.find((entry) => entry.chamber === chamber)?.count ?? 0;
}

/** The choice with one chamber more of a type, in the order of the space. */
function oneMore(space: OptionSpace, choice: OptionChoice, chamber: string): OptionChoice {
  const chambers = space.chambers
    .map((range) => ({ chamber: range.chamber, count: countOf(choice, range.chamber) }))
    .map((entry) => (entry.chamber === chamber ? { ...entry, count: entry.count + 1 } : entry))
    .filter((entry) => entry.count > 0);
  return { ...choice, chambers };
}

/** What one chamber more would break, type by type; empty where the space has no room for one of any type. */
function breaks(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  choice: OptionChoice,
): EarlyLimit[][] {
  return space.chambers
    .filter((range) => countOf(choice, range.chamber) < range.most)
    .map(({ chamber }) => optionPlan(context.plan, context.baseId, oneMore(space, choice, chamber)))
    .map((option) => brokenLimits(optionNeeds(option), limits));
}

/**
 * What keeps an option from growing: the limits that one chamber more would break, of the type that breaks fewest; the number of chambers
 * that was set; a market that is full. Nothing where one chamber more would do.
 * @param demandUse share of the market that the week takes [–]; null where it has no limit
 */
export function bindings(
  context: OptionContext,
  space: OptionSpace,
  limits: OptionLimits,
  choice: OptionChoice,
  demandUse: number | null,
): Binding[] {
  const steps = breaks(context, space, limits, choice);
  const [easiest] = steps.toSorted((a, b) => a.length - b.length);
  const market: Binding[] = demandUse !== null && demandUse >= MARKET_FULL ? ['market'] : [];
  const all = choice.chambers.reduce((sum, { count }) => sum + count, 0);
  const allowed: Binding[] = all >= space.mostChambers || !easiest ? ['mostChambers'] : [];
  return [...(easiest ?? []), ...allowed, ...market];
}
