import { type ReferenceRow, type RowFamily, rowsOf } from './reference-row.ts';

const C = 273.15;

const COMPONENT_NAMES = ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

/** At 20 and −20 °C in the order of COMPONENT_NAMES, recomputed with independent software from the printed fits. */
const COMPONENT_TABLE = {
  'component conductivity': [
    [0.20164, 0.15381],
    [0.17512, 0.18616],
    [0.22743, 0.17193],
    [0.20704, 0.15705],
    [0.35648, 0.30044],
  ],
  'component density': [
    [1319.53, 1340.27],
    [917.24, 933.94],
    [1592.89, 1605.31],
    [1304.18, 1318.82],
    [2418.19, 2429.41],
  ],
  'component specific heat': [
    [2031.9, 1983.5],
    [2011.7, 1952.8],
    [1585.7, 1507.2],
    [1880.7, 1807.4],
    [1128.9, 1053.3],
  ],
} as const;

type ComponentLaw = keyof typeof COMPONENT_TABLE;

/** Water at 20 °C, then ice at 0, −10, −20, −30 and −40 °C. */
const WATER_TABLE: Readonly<Record<ComponentLaw, readonly number[]>> = {
  'component conductivity': [0.60366, 2.2196, 2.2922, 2.3852, 2.4985, 2.632],
  'component density': [995.74, 916.89, 918.2, 919.5, 920.81, 922.12],
  'component specific heat': [4176.6, 2062.3, 2001.5, 1940.8, 1880, 1819.2],
};

/** Water, then the order of COMPONENT_NAMES, at 100 °C, from the printed fits. */
const HOT_TABLE: Readonly<Record<ComponentLaw, readonly number[]>> = {
  'component conductivity': [0.680304, 0.271212, 0.151331, 0.296838, 0.276597, 0.440661],
  'component density': [959.92, 1278.06, 883.833, 1568.05, 1274.91, 2395.74],
  'component specific heat': [4221.84, 2115.96, 2083.52, 1685.65, 1982.45, 1244.74],
};

const UNITS: Readonly<Record<ComponentLaw, string>> = {
  'component conductivity': 'W/(m·K)',
  'component density': 'kg/m³',
  'component specific heat': 'J/(kg·K)',
};

function componentRows(law: ComponentLaw): readonly ReferenceRow[] {
  const family: RowFamily = {
    law,
    source: 'choi-okos-1986',
    where: 'tables of fits, recomputed with independent software',
    unit: UNITS[law],
    tolerance: 4e-5,
    why: 'five printed digits',
    fromMemory: false,
  };
  const solids = COMPONENT_NAMES.flatMap((name, i) =>
    [20, -20].map((t, j) => [{ [name]: 1, T: C + t }, COMPONENT_TABLE[law][i]?.[j] as number] as const),
  );
  const water = WATER_TABLE[law].map((value, i) =>
    i === 0
      ? ([{ water: 1, T: C + 20 }, value] as const)
      : ([{ water: 1, ice: 1, T: C + 10 - 10 * i }, value] as const),
  );
  const hot = ['water', ...COMPONENT_NAMES].map(
    (name, i) => [{ [name]: 1, T: C + 100 }, HOT_TABLE[law][i] as number] as const,
  );
  return rowsOf(law.replaceAll(' ', '-'), family, [...solids, ...water, ...hot]);
}

const BEEF = { water: 0.5821, protein: 0.1748, fat: 0.235, ash: 0.0081, initialFreezing: C - 1.7 };

const PLANK = { thickness: 0.1, ambient: C - 34, freezing: C - 2, conductivity: 1.6 };
const BARE = { ...PLANK, coefficient: 600 };
const BOXED = { ...PLANK, coefficient: 1 / (1 / 600 + 0.001 / 0.06) };

/** One made-up slab for three methods: 0.1 m between cold faces at −30 °C, from 5 to −10 °C. */
const SHARED = { thickness: 0.1, coefficient: 30, ambient: C - 30 };

/** A frozen load from −18 to −30 °C. */
const FROZEN = { initial: 255.15, finalCentre: 243.15, density: 900, heat: 2200, conductivity: 1.7 };

export const FOOD_ROWS: readonly ReferenceRow[] = [
  ...componentRows('component conductivity'),
  ...componentRows('component density'),
  ...componentRows('component specific heat'),
  ...rowsOf(
    'unfrozen-water',
    {
      law: 'component specific heat',
      source: 'choi-okos-1986',
      where: 'water that has not frozen at −10 and −30 °C, from the printed fit',
      unit: 'J/(kg·K)',
      tolerance: 2e-6,
      why: 'six digits',
      fromMemory: false,
    },
    [
      [{ water: 1, T: C - 10 }, 4234.28],
      [{ water: 1, T: C - 30 }, 5136.53],
    ],
  ),
  ...rowsOf(
    'latent-heat',
    {
      law: 'food latent heat',
      source: 'ashrae-refrigeration-2006',
      where: 'ch. 9, table 3: carrots, sweet corn, strawberries',
      unit: 'J/kg',
      tolerance: 6e-3,
      why: 'printed in whole units, the last one converted from inch-pound; 334 kJ/kg of water',
      fromMemory: false,
    },
    [
      [{ water: 0.8779 }, 293_000],
      [{ water: 0.7596 }, 254_000],
      [{ water: 0.9157 }, 307_000],
    ],
  ),
  ...rowsOf(
    'ice-fraction-exact',
    {
      law: 'ice fraction',
      source: 'tchigeov-1979',
      where: 'formula recomputed with the inputs of ASHRAE ch. 9, example 1',
      unit: 'kg/kg',
      tolerance: 1e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    [[{ water: 0.58, protein: 0.42, initialFreezing: C - 1.7, T: C - 20 }, 0.51638]],
  ),
  ...rowsOf(
    'ice-fraction-printed',
    {
      law: 'ice fraction',
      source: 'ashrae-refrigeration-2006',
      where: 'ch. 9, example 1',
      unit: 'kg/kg',
      tolerance: 1e-2,
      why: 'two printed digits',
      fromMemory: true,
    },
    [[{ water: 0.58, protein: 0.42, initialFreezing: C - 1.7, T: C - 20 }, 0.52]],
  ),
  ...rowsOf(
    'lamb-heat-exact',
    {
      law: 'food specific heat',
      source: 'choi-okos-1986',
      where: 'lamb of ASHRAE ch. 9, example 2, recomputed with the right water constant',
      unit: 'J/(kg·K)',
      tolerance: 2e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    [[{ water: 0.7342, protein: 0.2029, fat: 0.0525, ash: 0.0106, T: C + 5 }, 3590.8]],
  ),
  ...rowsOf(
    'lamb-heat-printed',
    {
      law: 'food specific heat',
      source: 'ashrae-refrigeration-2006',
      where: 'ch. 9, example 2',
      unit: 'J/(kg·K)',
      tolerance: 1.1e-2,
      why: 'the print uses a water constant 1.1 % lower than ours',
      fromMemory: true,
    },
    [[{ water: 0.7342, protein: 0.2029, fat: 0.0525, ash: 0.0106, T: C + 5 }, 3560]],
  ),
  ...rowsOf(
    'enthalpy-unfrozen',
    {
      law: 'food enthalpy change',
      source: 'chen-1985',
      where: 'unfrozen form, beef from 10 °C to its freezing point',
      unit: 'J/kg',
      tolerance: 3e-2,
      why: 'another method, rounded specific heats',
      fromMemory: true,
    },
    [[{ ...BEEF, from: C + 10, to: C - 1.7 }, 37_241]],
  ),
  ...rowsOf(
    'enthalpy-frozen',
    {
      law: 'food enthalpy change',
      source: 'chen-1985',
      where: 'frozen form, beef from 10 to −20 °C',
      unit: 'J/kg',
      tolerance: 8e-2,
      why: 'another method: it binds 0.4 kg of water to each kg of protein, ours follows Tchigeov',
      fromMemory: true,
    },
    [[{ ...BEEF, from: C + 10, to: C - 20 }, 231_582]],
  ),
  ...rowsOf(
    'plank-exact',
    {
      law: 'freezing time, Plank',
      source: 'earle-unit-operations',
      where:
        'example 6.6, inputs recalled, arithmetic recomputed; boxed then bare, with and without the correction of the heat',
      unit: 's',
      tolerance: 3e-4,
      why: 'four printed digits',
      fromMemory: true,
    },
    [
      [{ ...BOXED, heat: 1090 * 2.56e5 }, 4.113 * 3600],
      [{ ...BARE, heat: 1090 * 2.56e5 }, 2.094 * 3600],
      [{ ...BOXED, heat: 1090 * 3.23e5 }, 5.189 * 3600],
      [{ ...BARE, heat: 1090 * 3.23e5 }, 2.642 * 3600],
    ],
  ),
  ...rowsOf(
    'plank-printed',
    {
      law: 'freezing time, Plank',
      source: 'earle-unit-operations',
      where: 'example 6.6 as printed: 4.2 and 2.1 h',
      unit: 's',
      tolerance: 2.5e-2,
      why: 'the print rounds the resistance of the cardboard',
      fromMemory: true,
    },
    [
      [{ ...BOXED, heat: 1090 * 2.56e5 }, 4.2 * 3600],
      [{ ...BARE, heat: 1090 * 2.56e5 }, 2.1 * 3600],
    ],
  ),
  ...rowsOf(
    'plank-shared',
    {
      law: 'freezing time, Plank',
      source: 'derived',
      where: 'one made-up slab for three methods, recomputed',
      unit: 's',
      tolerance: 1e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    [[{ ...SHARED, freezing: C - 1, conductivity: 1.6, heat: 1050 * 2.5e5 }, 6.155 * 3600]],
  ),
  ...rowsOf(
    'cleland-earle-shared',
    {
      law: 'freezing time, Cleland-Earle',
      source: 'cleland-earle-1979',
      where: 'slab form recalled; the made-up slab, recomputed',
      unit: 's',
      tolerance: 1e-4,
      why: 'four printed digits',
      fromMemory: true,
    },
    [
      [
        {
          ...SHARED,
          freezing: C - 1,
          conductivity: 1.6,
          heat: 1050 * (2.5e5 + 9 * 1800),
          initial: C + 5,
          unfrozenCapacity: 1050 * 3500,
          frozenCapacity: 1050 * 1800,
        },
        7.686 * 3600,
      ],
    ],
  ),
  ...rowsOf(
    'pham-shared',
    {
      law: 'freezing time, Pham',
      source: 'pham-1986',
      where: 'method recalled; the made-up slab, recomputed',
      unit: 's',
      tolerance: 1e-4,
      why: 'four printed digits',
      fromMemory: true,
    },
    [
      [
        {
          ...SHARED,
          sides: 2,
          initial: C + 5,
          finalCentre: C - 10,
          unfrozenDensity: 1050,
          unfrozenHeat: 3500,
          frozenDensity: 1050,
          frozenHeat: 1800,
          frozenConductivity: 1.6,
          latentHeat: 2.5e5,
        },
        7.893 * 3600,
      ],
    ],
  ),
  ...rowsOf(
    'eigenvalue',
    {
      law: 'first eigenvalue of a slab',
      source: 'heat-conduction-texts',
      where: 'table of series coefficients, Biot number 0.1, 1 and 10',
      unit: '-',
      tolerance: 2e-4,
      why: 'four printed digits',
      fromMemory: true,
    },
    [
      [{ biot: 0.1 }, 0.3111],
      [{ biot: 1 }, 0.8603],
      [{ biot: 10 }, 1.4289],
    ],
  ),
  ...rowsOf(
    'tempering',
    {
      law: 'tempering time',
      source: 'derived',
      where: 'forty terms of the series summed with independent software; Biot number 0.71, 0.18 and 2.9',
      unit: 's',
      tolerance: 1e-4,
      why: 'one term stands for forty',
      fromMemory: false,
    },
    [
      [{ ...FROZEN, thickness: 0.02, sides: 1, coefficient: 60, ambient: 238.15 }, 1077.96573],
      [{ ...FROZEN, thickness: 0.02, sides: 2, coefficient: 30, ambient: 233.15 }, 570.41365],
      [{ ...FROZEN, thickness: 0.05, sides: 2, coefficient: 200, ambient: 233.15 }, 505.18088],
    ],
  ),
];
