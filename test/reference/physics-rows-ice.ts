import { type ReferenceRow, rowsOf } from './reference-row.ts';

const C = 273.15;

/** °C, pressure over ice by the two publications [Pa], heat of sublimation [J/kg]; recomputed with independent software. */
const ICE_TABLE = [
  [-60, 1.08135, 1.08177, 2836060],
  [-55, 2.0941, 2.09483, 2836950],
  [-50, 3.93771, 3.93892, 2837650],
  [-45, 7.20324, 7.20521, 2838160],
  [-40, 12.8412, 12.8443, 2838490],
  [-35, 22.3442, 22.3489, 2838630],
  [-30, 38.0051, 38.0122, 2838580],
  [-25, 63.2736, 63.2836, 2838340],
  [-20, 103.239, 103.252, 2837910],
  [-15, 165.274, 165.29, 2837280],
  [-10, 259.874, 259.892, 2836450],
  [-5, 401.741, 401.756, 2835430],
  [0, 611.1535, 611.1536, 2834210],
] as const;

const SATURATION = [
  [10, -42.189],
  [13.332, -39.668],
  [20, -36.018],
  [30, -32.252],
  [40, -29.507],
  [50, -27.335],
  [66.661, -24.477],
  [100, -20.332],
  [133.322, -17.307],
  [200, -12.917],
] as const;

export const ICE_ROWS: readonly ReferenceRow[] = [
  ...rowsOf(
    'ice-verification',
    {
      law: 'ice pressure',
      source: 'iapws-r14-08',
      where: 'table 3, program verification',
      unit: 'Pa',
      tolerance: 6e-7,
      why: 'half of the last printed digit',
      fromMemory: false,
    },
    [[{ T: 230 }, 8.94735]],
  ),
  ...rowsOf(
    'ice-second-fit',
    {
      law: 'ice pressure',
      source: 'murphy-koop-2005',
      where: 'eq. 7; values of public test suites',
      unit: 'Pa',
      tolerance: 9e-4,
      why: 'an independent fit; the two differ by 0.09 % at 180 K, 0.04 % at 213 K',
      fromMemory: false,
    },
    [
      [{ T: 180 }, 0.005397500125274297],
      [{ T: 210 }, 0.7020234713180218],
      [{ T: 240 }, 27.272365],
      [{ T: 273.15 }, 611.15359],
      [{ T: 273.16 }, 611.65707],
      ...ICE_TABLE.map(([t, , p]) => [{ T: C + t }, p] as const),
    ],
  ),
  ...rowsOf(
    'ice-second-fit-cold',
    {
      law: 'ice pressure',
      source: 'murphy-koop-2005',
      where: 'eq. 7; values of public test suites',
      unit: 'Pa',
      tolerance: 2e-3,
      why: 'an independent fit; no dryer works at 150 K',
      fromMemory: false,
    },
    [[{ T: 150 }, 6.1061006509816675e-6]],
  ),
  ...rowsOf(
    'ice-table',
    {
      law: 'ice pressure',
      source: 'iapws-r14-08',
      where: 'eq. 6, recomputed with independent software',
      unit: 'Pa',
      tolerance: 5e-6,
      why: 'six printed digits',
      fromMemory: false,
    },
    ICE_TABLE.map(([t, p]) => [{ T: C + t }, p] as const),
  ),
  ...rowsOf(
    'ice-saturation',
    {
      law: 'ice temperature',
      source: 'iapws-r14-08',
      where: 'eq. 6, inverted with independent software',
      unit: 'K',
      tolerance: 2.5e-6,
      why: 'half a millikelvin printed',
      fromMemory: false,
    },
    SATURATION.map(([p, t]) => [{ p }, C + t] as const),
  ),
  ...rowsOf(
    'sublimation-molar',
    {
      law: 'molar heat of sublimation',
      source: 'murphy-koop-2005',
      where: 'eq. 5; value of a public test suite',
      unit: 'J/mol',
      tolerance: 1e-14,
      why: 'the same formula: round-off only',
      fromMemory: false,
    },
    [[{ T: C }, 51059.029186873086]],
  ),
  ...rowsOf(
    'sublimation-table',
    {
      law: 'heat of sublimation',
      source: 'murphy-koop-2005',
      where: 'eq. 5, recomputed with independent software',
      unit: 'J/kg',
      tolerance: 2e-6,
      why: 'printed to 10 J/kg',
      fromMemory: false,
    },
    ICE_TABLE.map(([t, , , heat]) => [{ T: C + t }, heat] as const),
  ),
  ...rowsOf(
    'vapour-volume',
    {
      law: 'vapour volume',
      source: 'fellows-food-processing',
      where: 'lecture notes: 1 kg of water is 2800 m³ at 0.4 mbar, 1 g of ice 2 m³ at 67 Pa',
      unit: 'm³/kg',
      tolerance: 3e-3,
      why: 'printed with one or two digits; temperatures −30 °C and 290 K taken',
      fromMemory: false,
    },
    [
      [{ p: 40, T: 243.15 }, 2800],
      [{ p: 67, T: 290 }, 2000],
    ],
  ),
  ...rowsOf(
    'vapour-volume-exact',
    {
      law: 'vapour volume',
      source: 'derived',
      where: 'ideal gas, recomputed',
      unit: 'm³/kg',
      tolerance: 3e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    [
      [{ p: 67, T: 253.15 }, 1744],
      [{ p: 50, T: 253.15 }, 2337],
    ],
  ),
];
