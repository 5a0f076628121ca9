import { inBase } from '../../inputs/quantity.ts';
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

/** Each product can exist and can get dry. */
export function productRule(plan: Plan): readonly Finding[] {
  return plan.products.flatMap((product, i) => {
    const path = `products.${i}`;
    return [...compositionFindings(product, path), ...moistureFindings(product, path)];
  });
}
