import type { QuantityField } from '../../inputs/input-field.ts';
import { inBase } from '../../inputs/quantity.ts';
import { fieldOf } from '../../inputs/register.ts';
import { FITTED_SOURCE } from '../../plan/fitted-source.ts';
import type { Plan, Product } from '../../plan/plan-types.ts';
import { namedParts } from '../../plan/rules/product-rule.ts';
import type { FittedValue } from './calibration.ts';
import { ODDS_SCALE } from './fit-scale.ts';
import { loggedBatches } from './logged-batches.ts';
import { type Prior, priorOf, WIDTH_OF_RANGE } from './prior.ts';
import { waterFromWeights } from './water-from-weights.ts';

/** Spread of water in one food from farm to farm, on the odds scale: a tenth of its solids in fruit. Common practice, no source. */
const USUAL_SPREAD = 0.12;

const waterField = fieldOf('product.water') as QuantityField;

/** The register's default is no belief about this food, so a fitted value stands for itself, with the usual room. */
function waterPrior(product: Product): Prior {
  const { source, low, high, ...bare } = product.water;
  const quantity = source === FITTED_SOURCE ? bare : { source, low, high, ...bare };
  return priorOf(waterField, quantity, ODDS_SCALE, USUAL_SPREAD);
}

/** Most water there is room for beside the other parts of the composition; a trace is left to carbohydrate. */
function mostWater(product: Product): number {
  return Math.min(0.995, 1 - (namedParts(product) - inBase(product.water, 'fraction')) - 1e-4);
}

function range(prior: Prior, most: number) {
  const place = (side: number) =>
    Math.min(most, Math.max(0.005, ODDS_SCALE.from(prior.centre + (side * prior.spread * WIDTH_OF_RANGE) / 2)));
  return { value: place(0), low: place(-1), high: place(1) };
}

/** Above this share of the old spread the weighings have said nothing. */
const SAYS_NOTHING = 0.85;

function waterOf(plan: Plan, product: Product): FittedValue[] {
  const prior = waterPrior(product);
  const own = loggedBatches(plan).filter((batch) => batch.product === product.id);
  const estimate = waterFromWeights(own, inBase(product.targetMoisture, 'moisture'), prior);
  if (!estimate) return [];
  const { place, deviation, weighings } = estimate;
  const most = mostWater(product);
  const narrowed = deviation / prior.spread;
  return [
    {
      list: 'products',
      id: product.id,
      key: 'water',
      from: 'weights',
      count: weighings,
      before: inBase(product.water, 'fraction'),
      believed: range(prior, most),
      after: range({ centre: place, spread: deviation }, most),
      narrowed,
      moved: (place - prior.centre) / prior.spread,
      verdict: narrowed > SAYS_NOTHING ? 'undetermined' : 'determined',
      partner: null,
      next: null,
    },
  ];
}

/** Water of every product that has been weighed before and after drying. */
export function fittedWaters(plan: Plan): readonly FittedValue[] {
  return plan.products.flatMap((product) => waterOf(plan, product));
}
