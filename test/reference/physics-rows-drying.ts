import { type ReferenceRow, rowsOf } from './reference-row.ts';

const C = 273.15;
const HOUR = 3600;
const TORR = 133.322;
const MICRON = TORR / 1000;

/** Shelf at 0 °C, 20 W/(m²·K), 13.332 Pa: resistance [m/s], ice temperature [°C], flux [kg/(m²·h)]. */
const COUPLED = [
  [1e5, -30.783, 0.78081],
  [2e5, -27.053, 0.68621],
  [3e5, -24.659, 0.62554],
] as const;

const SHELF = { transfer: 20, shelf: C, pressure: 13.332 };

/** Coffee extract under a surface at 30 °C, 97 µm of mercury outside. */
const COFFEE = { conductivity: 0.035, surface: C + 30, ambient: 97 * MICRON, permeability: 2.6252e-8 };

const GROWING = { ice: 700, surface: 1e5, slope: 1.6e8, driving: 60 };
const GROWING_TIME = 29.16667 * HOUR;

/** Evaporating temperature [°C] and Carnot coefficient with condensation at 30 and at 40 °C. */
const CARNOT = [
  [-60, 2.368, 2.131],
  [-50, 2.789, 2.479],
  [-45, 3.042, 2.684],
  [-40, 3.331, 2.914],
  [-35, 3.664, 3.175],
  [-30, 4.052, 3.474],
  [-20, 5.063, 4.219],
  [-15, 5.737, 4.694],
] as const;

/** Frost density [kg/m³] and conductivity by the two correlations [W/(m·K)]. */
const FROST = [
  [100, 0.10816, 0.1649],
  [200, 0.21569, 0.201],
  [300, 0.34681, 0.2403],
  [400, 0.50153, 0.2828],
  [500, 0.67985, 0.3285],
] as const;

const DESORPTION = { start: 0.12, equilibrium: 0, rate: 1e-4 };

/** Ice on a wall at −40 °C under water at 0 °C. */
const FREEZING_WALL = { conductivity: 2.4, difference: 40, density: 917, heat: 333_400 };

export const DRYING_ROWS: readonly ReferenceRow[] = [
  ...rowsOf(
    'shelf-transfer',
    {
      law: 'shelf heat transfer',
      source: 'pikal-1984',
      where: 'coefficients in cal/(s·cm²·K) at 0.1 Torr: 21.8 W/(m²·K) in all',
      unit: 'W/(m²·K)',
      tolerance: 1e-3,
      why: 'three printed digits',
      fromMemory: true,
    },
    [
      [
        {
          contact: 2.75e-4 * 41840,
          pressureSlope: (33.2e-4 * 41840) / TORR,
          pressureDamping: 3.5 / TORR,
          radiation: 0,
          p: 0.1 * TORR,
        },
        21.8,
      ],
    ],
  ),
  ...rowsOf(
    'coupled-temperature',
    {
      law: 'coupled ice temperature',
      source: 'derived',
      where: 'shelf heat against sublimation, made-up inputs, solved with independent software',
      unit: 'K',
      tolerance: 2.5e-6,
      why: 'half a millikelvin printed',
      fromMemory: false,
    },
    COUPLED.map(([resistance, t]) => [{ ...SHELF, resistance }, C + t] as const),
  ),
  ...rowsOf(
    'coupled-flux',
    {
      law: 'coupled flux',
      source: 'derived',
      where: 'the same solution',
      unit: 'kg/(m²·s)',
      tolerance: 1e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    COUPLED.map(([resistance, , flux]) => [{ ...SHELF, resistance }, flux / HOUR] as const),
  ),
  ...rowsOf(
    'coffee-temperature',
    {
      law: 'front temperature',
      source: 'freeze-drying-encyclopedia',
      where: 'worked coffee example: −29.4 °C, found by drawing',
      unit: 'K',
      tolerance: 0.15 / 243.75,
      why: 'a drawing is read to 0.15 °C',
      fromMemory: false,
    },
    [[COFFEE, C - 29.4]],
  ),
  ...rowsOf(
    'coffee-pressure',
    {
      law: 'front pressure',
      source: 'freeze-drying-encyclopedia',
      where: 'worked coffee example: 301 µm of mercury, found by drawing',
      unit: 'Pa',
      tolerance: 2e-2,
      why: 'a drawing is read to 2 %',
      fromMemory: false,
    },
    [[COFFEE, 301 * MICRON]],
  ),
  ...rowsOf(
    'coffee-exact',
    {
      law: 'front temperature',
      source: 'derived',
      where: 'the coffee example solved with independent software',
      unit: 'K',
      tolerance: 4e-6,
      why: 'a millikelvin printed',
      fromMemory: false,
    },
    [[COFFEE, C - 29.317]],
  ),
  ...rowsOf(
    'coffee-time',
    {
      law: 'front drying time',
      source: 'derived',
      where: 'the coffee slab, 12.5 mm dried from both faces, recomputed: 5.11 to 5.48 h',
      unit: 's',
      tolerance: 1e-3,
      why: 'three printed digits',
      fromMemory: false,
    },
    [
      [{ conductivity: 0.035, surface: C + 30, front: C - 29.4, ice: 690, depth: 0.00625 }, 5.11 * HOUR],
      [{ conductivity: 0.035, surface: C + 30, front: C - 29.4, ice: 740, depth: 0.00625 }, 5.48 * HOUR],
    ],
  ),
  ...rowsOf(
    'growing-time',
    {
      law: 'drying time, growing resistance',
      source: 'derived',
      where: 'closed form for a fixed driving pressure, recomputed',
      unit: 's',
      tolerance: 2e-7,
      why: 'seven printed digits',
      fromMemory: false,
    },
    [[{ ...GROWING, depth: 0.01 }, GROWING_TIME]],
  ),
  ...rowsOf(
    'growing-thickness',
    {
      law: 'dried thickness, growing resistance',
      source: 'derived',
      where: 'at a quarter, a half and three quarters of that time',
      unit: 'm',
      tolerance: 2e-6,
      why: 'six printed digits',
      fromMemory: false,
    },
    [
      [{ ...GROWING, time: GROWING_TIME / 4 }, 4.715e-3],
      [{ ...GROWING, time: GROWING_TIME / 2 }, 6.901e-3],
      [{ ...GROWING, time: (GROWING_TIME * 3) / 4 }, 8.58182e-3],
    ],
  ),
  ...rowsOf(
    'desorption-moisture',
    {
      law: 'moisture in desorption',
      source: 'derived',
      where: 'first-order law, recomputed after 2, 4 and 6 h',
      unit: 'kg/kg',
      tolerance: 2e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    [
      [{ ...DESORPTION, time: 2 * HOUR }, 0.05841],
      [{ ...DESORPTION, time: 4 * HOUR }, 0.028431],
      [{ ...DESORPTION, time: 6 * HOUR }, 0.013839],
    ],
  ),
  ...rowsOf(
    'desorption-time',
    {
      law: 'desorption time',
      source: 'derived',
      where: 'first-order law, recomputed down to 0.04',
      unit: 's',
      tolerance: 1e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    [[{ ...DESORPTION, target: 0.04 }, 3.0517 * HOUR]],
  ),
  ...rowsOf(
    'carnot',
    {
      law: 'Carnot coefficient',
      source: 'derived',
      where: 'recomputed, condensation at 30 and 40 °C',
      unit: '-',
      tolerance: 3e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    CARNOT.flatMap(([t, at30, at40]) => [
      [{ evaporating: C + t, condensing: C + 30 }, at30] as const,
      [{ evaporating: C + t, condensing: C + 40 }, at40] as const,
    ]),
  ),
  ...rowsOf(
    'frost',
    {
      law: 'frost conductivity',
      source: 'yonko-sepsy-1967',
      where: 'correlation of public codes, recomputed',
      unit: 'W/(m·K)',
      tolerance: 5e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    FROST.map(([density, conductivity]) => [{ density }, conductivity] as const),
  ),
  ...rowsOf(
    'frost-dense',
    {
      law: 'frost conductivity, dense',
      source: 'lee-1997',
      where: 'correlation of public codes, recomputed',
      unit: 'W/(m·K)',
      tolerance: 5e-5,
      why: 'four printed digits',
      fromMemory: false,
    },
    FROST.map(([density, , conductivity]) => [{ density }, conductivity] as const),
  ),
  ...rowsOf(
    'trap-thickness',
    {
      law: 'trap ice thickness',
      source: 'derived',
      where: '10 kg on a square metre as ice and as frost',
      unit: 'm',
      tolerance: 1e-4,
      why: 'five printed digits',
      fromMemory: false,
    },
    [
      [{ ice: 10, area: 1, density: 917 }, 10.905e-3],
      [{ ice: 10, area: 1, density: 400 }, 25e-3],
    ],
  ),
  ...rowsOf(
    'trap-warming',
    {
      law: 'warming through trap ice',
      source: 'derived',
      where: '1 kg/(m²·h) through 5 mm, 10.905 mm of ice and 25 mm of frost, recomputed',
      unit: 'K',
      tolerance: 4e-4,
      why: 'three or four printed digits',
      fromMemory: false,
    },
    [
      [{ load: 788.3, area: 1, thickness: 5e-3, conductivity: 2.4 }, 1.642],
      [{ load: 788.3, area: 1, thickness: 10.905e-3, conductivity: 2.4 }, 3.582],
      [{ load: 788.3, area: 1, thickness: 25e-3, conductivity: 0.5 }, 39.4],
    ],
  ),
  ...rowsOf(
    'ice-growth',
    {
      law: 'ice growth',
      source: 'derived',
      where: 'quasi-steady growth to 10 mm in 159.233 s',
      unit: 'm',
      tolerance: 3e-6,
      why: 'six printed digits',
      fromMemory: false,
    },
    [[{ ...FREEZING_WALL, time: 159.233 }, 0.01]],
  ),
  ...rowsOf(
    'ice-growth-exact',
    {
      law: 'ice growth',
      source: 'heat-conduction-texts',
      where: 'exact moving-boundary solution: 10 mm in 171.174 s',
      unit: 'm',
      tolerance: 4e-2,
      why: 'quasi-steady growth leaves out the cooling of the ice: 3.7 % too thick',
      fromMemory: false,
    },
    [[{ ...FREEZING_WALL, time: 171.174 }, 0.01]],
  ),
  ...rowsOf(
    'duct',
    {
      law: 'flow from ice to trap',
      source: 'derived',
      where: 'ice at −20 °C, dried layer, duct and trap at −50 °C in series, recomputed',
      unit: 'kg/s',
      tolerance: 3e-7,
      why: 'seven printed digits',
      fromMemory: false,
    },
    [
      [
        { ice: C - 20, trap: C - 50, resistance: 2e5, area: 2, conductance: 0.5, temperature: 293.15 },
        0.9646347 / HOUR,
      ],
    ],
  ),
  ...rowsOf(
    'pressure-rise',
    {
      law: 'pressure-rise constant',
      source: 'derived',
      where: '1 m³ over 1 m² of product, recomputed',
      unit: 's',
      tolerance: 1e-6,
      why: 'seven printed digits',
      fromMemory: false,
    },
    [[{ volume: 1, resistance: 2e5, area: 1, temperature: 293.15 }, 1.478247]],
  ),
  ...rowsOf(
    'flux-from-heat',
    {
      law: 'flux from heat',
      source: 'derived',
      where: '1000 W/m² on 2 m² with a rounded heat of 2838 kJ/kg: 2.537 kg/h',
      unit: 'kg/s',
      tolerance: 2e-4,
      why: 'rounded heat of sublimation',
      fromMemory: false,
    },
    [[{ heatFlux: 1000, area: 2, T: C - 40 }, 2.536998 / HOUR]],
  ),
];
