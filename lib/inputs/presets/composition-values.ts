import type { Quantity } from '../quantity.ts';
import type { FoodComposition } from './food-compositions.ts';

/** The parts of a composition that a product holds; carbohydrate without fibre is what is left. */
export interface CompositionValues {
  readonly water: Quantity;
  readonly protein: Quantity;
  readonly fat: Quantity;
  readonly fibre: Quantity;
  readonly ash: Quantity;
}

/**
 * The parts of a food as a product holds them [%]. Parts of meat sum to a little over 100 g in the table, as protein is
 * reckoned from nitrogen; they are then scaled down to 100 %, rounded to 0.01 %.
 */
export function compositionValues(food: FoodComposition): CompositionValues {
  const sum = food.water + food.protein + food.fat + food.carbohydrate + food.ash;
  const scale = Math.min(1, 100 / sum);
  const note = `${food.label}: ${food.food}${food.origin === 'guess' ? '' : '; recalled from the table'}`;
  const source = food.origin === 'handbook' ? { source: 'usda-sr28' } : {};
  const part = (share: number): Quantity => {
    return { value: Math.floor(share * scale * 100 + 1e-6) / 100, unit: '%', origin: food.origin, ...source, note };
  };
  return {
    water: part(food.water),
    protein: part(food.protein),
    fat: part(food.fat),
    fibre: part(food.fibre),
    ash: part(food.ash),
  };
}
