import { defaultValues } from '../../inputs/default-values.ts';
import { compositionValues } from '../../inputs/presets/composition-values.ts';
import { FOOD_COMPOSITIONS, type FoodComposition } from '../../inputs/presets/food-compositions.ts';
import type { Quantity } from '../../inputs/quantity.ts';
import type { Product } from '../plan-types.ts';
import type { OwnAnswers } from './own-answers.ts';
import { toldQuantity } from './scaled.ts';

/** More products than this are better added in the catalogue. */
const MOST = 6;

function guess(value: number, unit: string): Quantity {
  return { value, unit, origin: 'guess' };
}

/** How a food lies in the tray and dries, beside the usual values, which are those of fruit in pieces. */
function formValues(form: FoodComposition['form']): Partial<Product> {
  if (form === 'poured') {
    return { form, faceShare: guess(1, '1'), bulkDensity: guess(980, 'kg/m³'), load: guess(7, 'kg/m²') };
  }
  if (form === 'pieces') return { form };
  return {
    form,
    preFrozen: false,
    loadingTemperature: guess(20, '°C'),
    load: guess(5, 'kg/m²'),
    bulkDensity: guess(600, 'kg/m³'),
    equilibriumMoisture: guess(0.015, 'kg/kg'),
  };
}

function foodsOf(keys: readonly string[]): readonly FoodComposition[] {
  const chosen = [...new Set(keys)].flatMap((key) => FOOD_COMPOSITIONS.find((food) => food.key === key) ?? []);
  return chosen.length > 0 ? chosen.slice(0, MOST) : FOOD_COMPOSITIONS.slice(0, 1);
}

/** The products that the answers name, each with the price told and its part of the demand. */
export function ownProducts({ foods, price, weeklyDemand }: OwnAnswers): readonly Product[] {
  const chosen = foodsOf(foods);
  return chosen.map((food) => ({
    ...defaultValues('product'),
    id: food.key,
    name: food.label,
    ...formValues(food.form),
    ...compositionValues(food),
    price: toldQuantity('product.price', price, 'measured'),
    weeklyDemand:
      weeklyDemand === null ? null : toldQuantity('product.weeklyDemand', weeklyDemand, 'guess', 1 / chosen.length),
  }));
}
