import { inBase } from '../../inputs/quantity.ts';
import { seasonWeights } from '../../inputs/season-weights.ts';
import { exp, log } from '../../numeric/portable-math.ts';
import type { Finding } from '../../result.ts';
import type { Plan, Product } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** How far above 1 the named parts may sum, since food tables round each to 0.01 %. */
const ROUNDING = 5e-4;

/** Sum of water, protein, fat, fibre and ash [kg/kg wet]; what is left is carbohydrate. */
export function namedParts(product: Product): number {
  const parts = [product.water, product.protein, product.fat, product.fibre, product.ash];
  return parts.reduce((sum, part) => sum + inBase(part, 'fraction'), 0);
}

function compositionFindings(product: Product, path: string): readonly Finding[] {
  const sum = namedParts(product);
  if (sum <= 1 + ROUNDING) return [];
  const shown = `${(100 * sum).toFixed(2)} %`;
  const problem = `Water, protein, fat, fibre and minerals of ${product.name} sum to ${shown}.`;
  return [
    planError(`${path}.water`, shown, problem, 'Make them sum to 100 % or less; the rest is counted as carbohydrate.'),
  ];
}

function moistureFindings(product: Product, path: string): readonly Finding[] {
  const { targetMoisture, equilibriumMoisture } = product;
  if (inBase(targetMoisture, 'moisture') > inBase(equilibriumMoisture, 'moisture')) return [];
  const problem = `${product.name} is to end at or below the moisture it would settle at, so it would never be done.`;
  const remedy = 'Raise the moisture when done, or lower the moisture it would settle at.';
  return [planError(`${path}.targetMoisture`, `${targetMoisture.value} ${targetMoisture.unit}`, problem, remedy)];
}

/** Molar gas constant [J/(mol·K)]; plans know no physics, and this one number is all they need of it. */
const GAS_CONSTANT = 8.314462618;

/** Held water cannot leave faster than this, whatever the warmth [1/s]: half of it within a minute, where real food takes an hour. */
const FASTEST_DESORPTION = 0.012;

/** Rate and temperature brake go together: each alone may be large, but not so that the last drying takes seconds. */
function desorptionFindings(product: Product, path: string): readonly Finding[] {
  const temperature = inBase(product.shelfSecondary, 'temperature');
  const energy = inBase(product.desorptionEnergy, 'molarEnergy');
  const rate = inBase(product.desorptionRate, 'rate') * exp(-energy / (GAS_CONSTANT * temperature));
  if (rate <= FASTEST_DESORPTION) return [];
  const minutes = log(2) / rate / 60;
  const shown = `${product.desorptionRate.value} ${product.desorptionRate.unit}`;
  const problem = `${product.name} would lose half of its held water in ${minutes.toPrecision(2)} minutes, which no food does.`;
  return [
    planError(
      `${path}.desorptionRate`,
      shown,
      problem,
      'Lower the rate of the last drying, or raise its temperature brake.',
    ),
  ];
}

function seasonFindings(product: Product, path: string): readonly Finding[] {
  if (seasonWeights(product).some((weight) => weight > 0)) return [];
  const problem = `${product.name} has no demand in any month of the year.`;
  const remedy = 'Give at least one month a weight above 0; for no demand at all set the weekly demand to 0.';
  return [planError(`${path}.seasonJan`, '0 %', problem, remedy)];
}

/** Each product can exist, can get dry and has a season. */
export function productRule(plan: Plan): readonly Finding[] {
  return plan.products.flatMap((product, i) => {
    const path = `products.${i}`;
    return [
      ...compositionFindings(product, path),
      ...moistureFindings(product, path),
      ...desorptionFindings(product, path),
      ...seasonFindings(product, path),
    ];
  });
}
