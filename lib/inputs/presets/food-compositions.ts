import type { Origin } from '../quantity.ts';

/** How food lies in the tray: the words of the input `product.form`. */
export type Form = 'pieces' | 'poured' | 'bound';

/** The composition of one usual food, per 100 g as bought or cooked. */
export interface FoodComposition {
  readonly key: string;
  /** What it is called in the list to choose from. */
  readonly label: string;
  /** Number and name in the food table. */
  readonly food: string;
  readonly origin: Extract<Origin, 'handbook' | 'guess'>;
  /** Shares of the wet food [%]. Carbohydrate is "by difference" and includes the fibre. */
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
  /** How the food usually lies in the tray. */
  readonly form: Form;
}

type Row = readonly [
  key: string,
  label: string,
  food: string,
  parts: readonly [water: number, protein: number, fat: number, carbohydrate: number, fibre: number, ash: number],
  form: Form,
];

/*
 * Source: usda-sr28, in the public domain. The figures were recalled and not read off the table, except for the water of
 * strawberries, sweetcorn and taffy; that water, protein, fat, carbohydrate and ash sum to 100 g is tested.
 */
const ROWS: readonly Row[] = [
  ['strawberry', 'Strawberries', '09316, strawberries, raw', [90.95, 0.67, 0.3, 7.68, 2, 0.4], 'pieces'],
  ['raspberry', 'Raspberries', '09302, raspberries, raw', [85.75, 1.2, 0.65, 11.94, 6.5, 0.46], 'pieces'],
  ['blueberry', 'Blueberries', '09050, blueberries, raw', [84.21, 0.74, 0.33, 14.49, 2.4, 0.24], 'pieces'],
  ['apple', 'Apples', '09003, apples, raw, with skin', [85.56, 0.26, 0.17, 13.81, 2.4, 0.19], 'pieces'],
  ['banana', 'Bananas', '09040, bananas, raw', [74.91, 1.09, 0.33, 22.84, 2.6, 0.82], 'pieces'],
  ['mango', 'Mangoes', '09176, mangos, raw', [83.46, 0.82, 0.38, 14.98, 1.6, 0.36], 'pieces'],
  ['pineapple', 'Pineapple', '09266, pineapple, raw', [86, 0.54, 0.12, 13.12, 1.4, 0.22], 'pieces'],
  ['peach', 'Peaches', '09236, peaches, yellow, raw', [88.87, 0.91, 0.25, 9.54, 1.5, 0.43], 'pieces'],
  ['avocado', 'Avocados', '09037, avocados, raw', [73.23, 2, 14.66, 8.53, 6.7, 1.58], 'pieces'],
  ['pea', 'Green peas', '11304, peas, green, raw', [78.86, 5.42, 0.4, 14.45, 5.7, 0.87], 'pieces'],
  ['sweetcorn', 'Sweetcorn', '11167, corn, sweet, yellow, raw', [76.05, 3.27, 1.35, 18.7, 2, 0.62], 'pieces'],
  ['carrot', 'Carrots', '11124, carrots, raw', [88.29, 0.93, 0.24, 9.58, 2.8, 0.97], 'pieces'],
  ['onion', 'Onions', '11282, onions, raw', [89.11, 1.1, 0.1, 9.34, 1.7, 0.35], 'pieces'],
  ['potato', 'Potatoes', '11352, potatoes, flesh and skin, raw', [79.25, 2.05, 0.09, 17.49, 2.1, 1.11], 'pieces'],
  ['tomato', 'Tomatoes', '11529, tomatoes, red, ripe, raw', [94.52, 0.88, 0.2, 3.89, 1.2, 0.5], 'pieces'],
  ['mushroom', 'Mushrooms', '11260, mushrooms, white, raw', [92.45, 3.09, 0.34, 3.26, 1, 0.85], 'pieces'],
  ['spinach', 'Spinach', '11457, spinach, raw', [91.4, 2.86, 0.39, 3.63, 2.2, 1.72], 'pieces'],
  ['beans', 'Cooked black beans', '16015, beans, black, boiled', [65.74, 8.86, 0.54, 23.71, 8.7, 1.15], 'pieces'],
  ['rice', 'Cooked rice', '20045, rice, white, long-grain, cooked', [68.44, 2.69, 0.28, 28.17, 0.4, 0.41], 'pieces'],
  ['pasta', 'Cooked pasta', '20121, spaghetti, cooked', [62.13, 5.8, 0.93, 30.86, 1.8, 0.27], 'pieces'],
  [
    'chicken',
    'Cooked chicken',
    '05064, chicken breast, meat only, roasted',
    [65.26, 31.02, 3.57, 0, 0, 1.06],
    'pieces',
  ],
  ['shrimp', 'Shrimp', '15149, shrimp, mixed species, raw', [75.86, 20.31, 1.73, 0.91, 0, 1.2], 'pieces'],
  ['egg', 'Eggs', '01123, egg, whole, raw', [76.15, 12.56, 9.51, 0.72, 0, 1.06], 'poured'],
  ['milk', 'Milk', '01077, milk, whole', [88.13, 3.15, 3.25, 4.8, 0, 0.67], 'poured'],
  ['yogurt', 'Yogurt', '01116, yogurt, plain, whole milk', [87.9, 3.47, 3.25, 4.66, 0, 0.72], 'poured'],
  ['ice-cream', 'Ice cream', '19095, ice creams, vanilla', [61, 3.5, 11, 23.6, 0.7, 0.9], 'poured'],
  ['taffy', 'Taffy candy', '19382, candies, taffy', [4.85, 0.03, 3.33, 91.56, 0, 0.23], 'bound'],
  ['jellybean', 'Jelly candy', '19108, candies, jellybeans', [6.3, 0, 0.05, 93.55, 0.2, 0.1], 'bound'],
  ['marshmallow', 'Marshmallows', '19116, candies, marshmallows', [16.4, 1.8, 0.2, 81.3, 0.1, 0.3], 'bound'],
];

/** No table has it: a quarter of soluble coffee in three quarters of water, all but protein, fat and ash carbohydrate. */
const COFFEE: FoodComposition = {
  key: 'coffee',
  label: 'Coffee extract',
  food: 'strong coffee extract, a quarter of it solids',
  origin: 'guess',
  water: 75,
  protein: 3,
  fat: 0.1,
  carbohydrate: 19.7,
  fibre: 0,
  ash: 2.2,
  form: 'poured',
};

function fromRow([key, label, food, parts, form]: Row): FoodComposition {
  const [water, protein, fat, carbohydrate, fibre, ash] = parts;
  return { key, label, food, origin: 'handbook', water, protein, fat, carbohydrate, fibre, ash, form };
}

/** Compositions of usual foods, to start a product from. */
export const FOOD_COMPOSITIONS: readonly FoodComposition[] = [...ROWS.map(fromRow), COFFEE];
