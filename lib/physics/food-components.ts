import { ZERO_CELSIUS } from './constants.ts';

/** Mass fractions of a food as it is loaded, wet; they sum to 1. */
export interface Composition {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

export type FoodComponent = keyof Composition;

/** The components other than water. */
export const SOLIDS = ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const satisfies readonly FoodComponent[];

/** a + b·t + c·t², t in °C as the source prints it. */
export type Quadratic = readonly [a: number, b: number, c: number];

/** Fits of one component. */
export interface ComponentFits {
  /** Thermal conductivity [W/(m·K)]. */
  readonly conductivity: Quadratic;
  /** Density [kg/m³]. */
  readonly density: Quadratic;
  /** Specific heat [J/(kg·K)]. */
  readonly heat: Quadratic;
}

/**
 * Property fits of food components, −40 to 150 °C.
 * Source: choi-okos-1986, as in ashrae-refrigeration-2006, ch. 9, tables 1 and 2. Two printed slips are avoided: the constant of water's
 * specific heat is 4.1762 (one print has 4.1289; real water is 4.18), and the slope of fat's conductivity is −2.7604e-4.
 * Water's specific heat here is the one for 0 to 150 °C; below 0 °C see `UNFROZEN_WATER_HEAT`.
 */
export const COMPONENTS: Readonly<Record<FoodComponent, ComponentFits>> = {
  water: {
    conductivity: [0.57109, 1.7625e-3, -6.7036e-6],
    density: [997.18, 3.1439e-3, -3.7574e-3],
    heat: [4176.2, -9.0864e-2, 5.4731e-3],
  },
  protein: {
    conductivity: [0.17881, 1.1958e-3, -2.7178e-6],
    density: [1329.9, -0.5184, 0],
    heat: [2008.2, 1.2089, -1.3129e-3],
  },
  fat: {
    conductivity: [0.18071, -2.7604e-4, -1.7749e-7],
    density: [925.59, -0.41757, 0],
    heat: [1984.2, 1.4733, -4.8008e-3],
  },
  carbohydrate: {
    conductivity: [0.20141, 1.3874e-3, -4.3312e-6],
    density: [1599.1, -0.31046, 0],
    heat: [1548.8, 1.9625, -5.9399e-3],
  },
  fibre: {
    conductivity: [0.18331, 1.2497e-3, -3.1683e-6],
    density: [1311.5, -0.36589, 0],
    heat: [1845.9, 1.8306, -4.6509e-3],
  },
  ash: {
    conductivity: [0.32962, 1.4011e-3, -2.9069e-6],
    density: [2423.8, -0.28063, 0],
    heat: [1092.6, 1.8896, -3.6817e-3],
  },
};

/** Ice. Source: choi-okos-1986, as above. */
export const ICE: ComponentFits = {
  conductivity: [2.2196, -6.2489e-3, 1.0154e-4],
  density: [916.89, -0.13071, 0],
  heat: [2062.3, 6.0769, 0],
};

/** Specific heat of water that has not frozen, −40 to 0 °C [J/(kg·K)]. Source: choi-okos-1986, as above. */
export const UNFROZEN_WATER_HEAT: Quadratic = [4081.7, -5.3062, 0.99516];

/** Value of a fit. @param T temperature [K] */
export function valueAt([a, b, c]: Quadratic, T: number): number {
  const t = T - ZERO_CELSIUS;
  return a + (b + c * t) * t;
}

/** Integral of a fit from 0 °C; of a specific heat it is the sensible heat [J/kg]. @param T temperature [K] */
export function integralTo([a, b, c]: Quadratic, T: number): number {
  const t = T - ZERO_CELSIUS;
  return (a + (b / 2 + (c / 3) * t) * t) * t;
}

/** The fit of water's specific heat that holds at a temperature [K]. */
export function waterHeat(T: number): Quadratic {
  return T < ZERO_CELSIUS ? UNFROZEN_WATER_HEAT : COMPONENTS.water.heat;
}
