import { defaultValues } from '../../inputs/default-values.ts';
import type { Quantity } from '../../inputs/quantity.ts';
import type { Product } from '../plan-types.ts';
import { given } from './given.ts';

interface Composition {
  readonly water: Quantity;
  readonly protein: Quantity;
  readonly fat: Quantity;
  readonly fibre: Quantity;
  readonly ash: Quantity;
}

/** Shares of the wet food [%] under its number in the food table [usda-sr28]; carbohydrate is the rest. */
function composition(food: string, parts: readonly [number, number, number, number, number]): Composition {
  const [water, protein, fat, fibre, ash] = parts.map((part) =>
    given(part, '%', 'handbook', { source: 'usda-sr28', note: `Food ${food}` }),
  ) as [Quantity, Quantity, Quantity, Quantity, Quantity];
  return { water, protein, fat, fibre, ash };
}

const strawberries: Product = {
  ...defaultValues('product'),
  id: 'strawberries',
  name: 'Strawberry slices',
  form: 'pieces',
  preFrozen: true,
  ...composition('09318, strawberries, frozen, unsweetened', [89.97, 0.43, 0.11, 2.1, 0.37]),
  load: given(7, 'kg/m²', 'measured'),
  bulkDensity: given(500, 'kg/m³', 'measured', { low: 450, high: 550 }),
  pieceThickness: given(7, 'mm', 'measured'),
  loadingTemperature: given(-18, '°C', 'measured', { note: 'Bought sliced and frozen' }),
  initialFreezing: given(-0.8, '°C', 'handbook', { source: 'ashrae-foods' }),
  permeability: given(2e-8, 's', 'guess', { low: 1e-8, high: 4e-8 }),
  driedConductivity: given(0.045, 'W/(m·K)', 'guess', { low: 0.035, high: 0.055 }),
  price: given(112, 'money/kg', 'measured', { low: 98, high: 125, note: 'Market stall and web shop' }),
  wetCost: given(4.2, 'money/kg', 'quoted', { low: 3.8, high: 5.2 }),
  trimLoss: given(2, '%', 'measured'),
  packaging: given(12, 'money/kg', 'quoted'),
  weeklyDemand: given(26, 'kg/week', 'guess', { low: 14, high: 34 }),
  growth: given(5, '%/year', 'guess', { low: 0, high: 10 }),
  seasonJan: 80,
  seasonFeb: 85,
  seasonNov: 125,
  seasonDec: 150,
};

/** Water as read in the table; the other parts are from memory and with carbohydrate 18.70 % sum to 99.99 %. */
const sweetcorn: Product = {
  ...defaultValues('product'),
  id: 'sweetcorn',
  name: 'Sweetcorn',
  form: 'pieces',
  preFrozen: true,
  ...composition('11167, corn, sweet, yellow, raw', [76.05, 3.27, 1.35, 2, 0.62]),
  load: given(7.5, 'kg/m²', 'measured'),
  bulkDensity: given(600, 'kg/m³', 'measured'),
  pieceThickness: given(8, 'mm', 'measured'),
  loadingTemperature: given(4, '°C', 'measured', { note: 'Cut and frozen here' }),
  initialFreezing: given(-0.6, '°C', 'handbook', { source: 'ashrae-foods' }),
  frozenLimit: given(-10, '°C', 'handbook', {
    source: 'bellows-king-1973',
    low: -15,
    high: -8,
    note: 'From memory: collapse between -8 and -15 °C',
  }),
  price: given(50, 'money/kg', 'measured', { low: 44, high: 56 }),
  wetCost: given(2.4, 'money/kg', 'quoted', { low: 2, high: 3.1 }),
  trimLoss: given(4, '%', 'measured'),
  packaging: given(8, 'money/kg', 'quoted'),
  weeklyDemand: given(34, 'kg/week', 'guess', { low: 18, high: 44 }),
  growth: given(3, '%/year', 'guess'),
};

const soup: Product = {
  ...defaultValues('product'),
  id: 'bean-soup',
  name: 'Bean and ham soup',
  form: 'poured',
  preFrozen: true,
  ...composition('06007, soup, bean with ham, ready to serve', [78.63, 5.19, 3.5, 4.6, 1.52]),
  load: given(7, 'kg/m²', 'measured'),
  bulkDensity: given(980, 'kg/m³', 'measured'),
  pieceThickness: given(7.2, 'mm', 'measured'),
  faceShare: given(1, '1', 'guess', { note: 'Dries from its free top only' }),
  loadingTemperature: given(8, '°C', 'measured', { note: 'Cooled in the refrigerator, then frozen in its trays' }),
  initialFreezing: given(-1.2, '°C', 'guess'),
  permeability: given(1.5e-8, 's', 'guess', { low: 8e-9, high: 3e-8 }),
  price: given(74, 'money/kg', 'measured', { low: 64, high: 82 }),
  wetCost: given(4.8, 'money/kg', 'measured', { low: 4.2, high: 5.8 }),
  trimLoss: given(1, '%', 'measured'),
  packaging: given(11, 'money/kg', 'quoted'),
  weeklyDemand: given(30, 'kg/week', 'guess', { low: 16, high: 40 }),
  growth: given(4, '%/year', 'guess'),
};

/** Water as read in the table; the other parts are from memory and with carbohydrate 91.56 % sum to 100 %. */
const candy: Product = {
  ...defaultValues('product'),
  id: 'puffed-candy',
  name: 'Puffed taffy',
  form: 'bound',
  preFrozen: false,
  ...composition('19382, candies, taffy', [4.85, 0.03, 3.33, 0, 0.23]),
  load: given(5, 'kg/m²', 'measured', { note: 'Pieces need room to swell' }),
  bulkDensity: given(600, 'kg/m³', 'measured'),
  pieceThickness: given(12, 'mm', 'measured'),
  loadingTemperature: given(20, '°C', 'measured'),
  scorchLimit: given(65, '°C', 'guess'),
  shelfSecondary: given(60, '°C', 'measured'),
  equilibriumMoisture: given(0.015, 'kg/kg', 'guess'),
  targetMoisture: given(0.03, 'kg/kg', 'guess', { low: 0.025, high: 0.035 }),
  price: given(35, 'money/kg', 'measured', { low: 29, high: 40 }),
  wetCost: given(7.5, 'money/kg', 'quoted', { low: 7, high: 9 }),
  trimLoss: given(0, '%', 'measured'),
  saleableYield: given(94, '%', 'measured', { note: 'Pieces that burst or stick are given away' }),
  packaging: given(9, 'money/kg', 'quoted'),
  weeklyDemand: given(110, 'kg/week', 'guess', { low: 60, high: 150 }),
  growth: given(-3, '%/year', 'guess', { low: -15, high: 5 }),
  seasonOct: 130,
  seasonDec: 140,
  unsold: 'keep',
  mostKept: given(60, 'kg', 'guess', { note: 'What the dry store takes in sealed drums' }),
};

/** What the demo shop makes. */
export const DEMO_PRODUCTS: readonly Product[] = [strawberries, sweetcorn, soup, candy];
