import { type BestMixOutcome, bestMix, type MixProduct } from '../cost/best-mix.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import type { PlantReport, ProductWeek } from '../plant/report-types.ts';
import type { ScenarioBestMix } from './scenario-result.ts';
import type { AccountedWeek } from './scenario-week.ts';

/** A batch of a product as the week was: what it leaves, and the hours it has a chamber and people for. */
function batchOf(plan: Plan, { account }: AccountedWeek, made: ProductWeek): MixProduct {
  const costed = account.week.products.find((product) => product.productId === made.productId);
  const { weeklyDemand, saleableYield } = baseValues('product', findById(plan.products, made.productId, 'product'));
  const dryPerBatch = made.dryOut / made.batches;
  const handsOn = costed?.resources.crew ?? 0;
  return {
    productId: made.productId,
    contribution: costed?.contribution.perBatch ?? 0,
    uses: { chambers: made.cycleTime, crew: handsOn / made.batches },
    demand: weeklyDemand === null || dryPerBatch <= 0 ? null : weeklyDemand / saleableYield / dryPerBatch,
  };
}

/**
 * Time there is in a week: chambers but for the hours they wait to be loaded, which another mix would not save, and people
 * on shift. [s/week]
 */
function hoursOf({ chambers, phases, crew }: PlantReport): Readonly<Record<'chambers' | 'crew', number>> {
  const waiting = phases.waitingToLoad + phases.waitingForFreezer;
  return { chambers: Math.max(0, chambers * WEEK - waiting), crew: crew.onShift };
}

function shown(outcome: BestMixOutcome, products: readonly MixProduct[], present: number): ScenarioBestMix | null {
  if (outcome.kind !== 'best') return null;
  return {
    batches: products.map(({ productId }, k) => ({ productId, perWeek: outcome.units[k] ?? 0 })),
    contribution: outcome.contribution,
    gain: outcome.contribution - present,
    worthOfHour: { chambers: outcome.worthOfHour.chambers ?? 0, crew: outcome.worthOfHour.crew ?? 0 },
  };
}

/**
 * The mix of the scenario's products that leaves most in a week under chamber hours, people's hours and what the market takes, and what
 * one hour more of each would bring. Batches take what they took in the simulated week, so that a mix far from the planned one
 * is an estimate: the timetable changes with it. Null when nothing was made.
 */
export function scenarioBestMix(plan: Plan, week: AccountedWeek): ScenarioBestMix | null {
  const made = week.plant.products.filter((product) => product.batches > 0);
  if (made.length === 0) return null;
  const products = made.map((product) => batchOf(plan, week, product));
  const present = products.reduce((sum, { contribution }, k) => sum + contribution * (made[k]?.batches ?? 0), 0);
  return shown(bestMix(products, hoursOf(week.plant)), products, present);
}
