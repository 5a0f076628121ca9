import { type ReferenceRow, rowsOf } from './reference-row.ts';

const ROOM = 293.15;
const MBAR = 100;
const LITRE = 1e-3;
const HOUR = 3600;

/** A long hose, 50 mm × 1 m, with air at 20 °C. */
const HOSE = { diameter: 0.05, length: 1, vapourFraction: 0, temperature: ROOM };

/** Mean pressure [mbar] and conductance [L/s] by the textbook's two-part form and by its single-fraction form. */
const HOSE_TABLE = [
  [10, 8449.75, 8494.34],
  [1, 856.01, 860.38],
  [0.5, 434.13, 436.28],
  [0.1, 96.652, 97.01],
  [0.05, 54.488, 54.623],
  [0.01, 20.914, 20.877],
  [0.001, 14.411, 14.37],
  [1e-4, 14.905, 14.897],
] as const;

const MOLECULAR = { length: 0.3, meanPressure: 0, vapourFraction: 0, temperature: ROOM };

const TANK = { volume: 1, speed: 0.1, ultimate: 0, leak: 0, start: 1000 * MBAR };

const LEAKY = {
  volume: 500 * LITRE,
  speed: 20 * LITRE,
  ultimate: 0.01 * MBAR,
  leak: 0.7 * MBAR * LITRE,
  start: 1013 * MBAR,
};

/** A 25 mm × 2 m hose: 135·D⁴/L = 26.37 L/(s·mbar). */
const THROUGH_HOSE = { volume: 0.5, speed: 0.02, ultimate: 0, leak: 0, viscous: 26.3671875e-5 };

const BALLAST = {
  speed: 1,
  ballast: 0.1,
  saturation: 311.8 * MBAR,
  ambientVapour: 11.7 * MBAR,
  exhaust: 1333 * MBAR,
  atmosphere: 101_325,
};

/** Carbon dioxide, oxygen, nitrogen: viscosity [10⁻⁸ Pa·s] and molar mass [g/mol]. */
const CARBON_DIOXIDE = [1462, 44.01] as const;
const OXYGEN = [2031, 32] as const;
const NITROGEN = [1754, 28.016] as const;

const PAIRS = [
  [CARBON_DIOXIDE, OXYGEN, 0.73],
  [CARBON_DIOXIDE, NITROGEN, 0.727],
  [OXYGEN, CARBON_DIOXIDE, 1.394],
  [OXYGEN, NITROGEN, 1.006],
  [NITROGEN, CARBON_DIOXIDE, 1.37],
  [NITROGEN, OXYGEN, 0.993],
] as const;

export const VACUUM_ROWS: readonly ReferenceRow[] = [
  ...rowsOf(
    'air-viscosity',
    {
      law: 'air viscosity',
      source: 'lemmon-jacobsen-2004',
      where: 'verification value at 300 K and no density',
      unit: 'Pa·s',
      tolerance: 3e-6,
      why: 'six printed digits',
      fromMemory: true,
    },
    [[{ T: 300 }, 18.523e-6]],
  ),
  ...rowsOf(
    'vapour-viscosity',
    {
      law: 'vapour viscosity',
      source: 'iapws-r12-08',
      where: 'rounded textbook value at 20 °C',
      unit: 'Pa·s',
      tolerance: 2e-2,
      why: 'older value, two digits',
      fromMemory: true,
    },
    [[{ T: ROOM }, 9.7e-6]],
  ),
  ...rowsOf(
    'wilke',
    {
      law: 'Wilke factor',
      source: 'bird-transport',
      where: 'example 1.4-2, table of factors',
      unit: '-',
      tolerance: 7e-4,
      why: 'three printed digits',
      fromMemory: true,
    },
    PAIRS.map(([a, b, factor]) => [{ viscosityA: a[0], viscosityB: b[0], massA: a[1], massB: b[1] }, factor] as const),
  ),
  ...rowsOf(
    'mean-speed',
    {
      law: 'mean molecular speed',
      source: 'kinetic-theory',
      where: '√(8RT/πM), recomputed',
      unit: 'm/s',
      tolerance: 1e-5,
      why: 'molar mass of air rounded to 28.965',
      fromMemory: false,
    },
    [
      [{ vapourFraction: 0, T: ROOM }, 462.907],
      [{ vapourFraction: 1, T: ROOM }, 586.964],
    ],
  ),
  ...rowsOf(
    'free-path',
    {
      law: 'free path × pressure',
      source: 'kinetic-theory',
      where: 'η·√(πRT/2M) with textbook viscosities, recomputed',
      unit: 'Pa·m',
      tolerance: 2e-2,
      why: 'textbook viscosity of vapour 1.6 % above ours',
      fromMemory: true,
    },
    [
      [{ vapourFraction: 0, T: ROOM }, 6.617e-3],
      [{ vapourFraction: 1, T: ROOM }, 4.47e-3],
    ],
  ),
  ...rowsOf(
    'choked-speed',
    {
      law: 'choked speed',
      source: 'kinetic-theory',
      where: 'sonic flow per area and pressure, recomputed',
      unit: 'm/s',
      tolerance: 3e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    [
      [{ vapourFraction: 0, T: ROOM }, 198.6],
      [{ vapourFraction: 1, T: ROOM }, 247.4],
    ],
  ),
  ...rowsOf(
    'choked-hose',
    {
      law: 'choked hose flow',
      source: 'kinetic-theory',
      where: '50 mm bore, vapour at 100 Pa and 20 °C: 1.293 kg/h',
      unit: 'kg/s',
      tolerance: 5e-4,
      why: 'four printed digits; the hose is so short that only the sonic limit counts',
      fromMemory: false,
    },
    [
      [
        { diameter: 0.05, length: 1e-3, upstream: 100, downstream: 1, vapourFraction: 1, temperature: ROOM },
        1.293 / HOUR,
      ],
    ],
  ),
  ...rowsOf(
    'hose-two-part',
    {
      law: 'hose conductance',
      source: 'knudsen-1909',
      where: 'textbook form for air: 135·D⁴p/L + 12.1·D³/L·(1 + 192Dp)/(1 + 237Dp)',
      unit: 'm³/s',
      tolerance: 3e-3,
      why: 'textbook constants have three digits',
      fromMemory: true,
    },
    HOSE_TABLE.map(([p, twoPart]) => [{ ...HOSE, meanPressure: p * MBAR }, twoPart * LITRE] as const),
  ),
  ...rowsOf(
    'hose-fraction',
    {
      law: 'hose conductance',
      source: 'knudsen-1909',
      where: 'textbook form for air: 12.1·D³/L·(1 + 201Dp + 2647D²p²)/(1 + 236Dp)',
      unit: 'm³/s',
      tolerance: 7e-3,
      why: 'the two textbook forms differ by 0.6 % themselves',
      fromMemory: true,
    },
    HOSE_TABLE.map(([p, , fraction]) => [{ ...HOSE, meanPressure: p * MBAR }, fraction * LITRE] as const),
  ),
  ...rowsOf(
    'hose-molecular',
    {
      law: 'hose conductance',
      source: 'vacuum-lab-notes',
      where:
        'molecular flow of air, 12.1·D³/L: 50 mm × 1 m; then the problem with 30 cm tubes, one and 25 in parallel and in series',
      unit: 'm³/s',
      tolerance: 2e-3,
      why: 'textbook constant 12.1, ours 12.119',
      fromMemory: false,
    },
    [
      [{ ...HOSE, meanPressure: 0 }, 15.125 * LITRE],
      [{ ...MOLECULAR, diameter: 0.05 }, 50.417 * LITRE],
      [{ ...MOLECULAR, diameter: 0.01 }, 0.40333 * LITRE],
      [{ ...MOLECULAR, diameter: 0.01, parallel: 25 }, 10.0833 * LITRE],
      [{ ...MOLECULAR, diameter: 0.01, length: 7.5 }, 0.016133 * LITRE],
    ],
  ),
  ...rowsOf(
    'hose-vapour',
    {
      law: 'hose conductance',
      source: 'kinetic-theory',
      where: 'water vapour: molecular 15.367·D³/L, viscous 253·D⁴p/L, recomputed',
      unit: 'm³/s',
      tolerance: 2e-2,
      why: 'textbook viscosity of vapour 1.6 % above ours',
      fromMemory: true,
    },
    [
      [{ ...HOSE, vapourFraction: 1, meanPressure: 0 }, 19.209 * LITRE],
      [{ ...HOSE, vapourFraction: 1, meanPressure: 100 * MBAR }, 253 * 625 * LITRE],
    ],
  ),
  ...rowsOf(
    'hose-quiz',
    {
      law: 'hose conductance',
      source: 'vacuum-lab-notes',
      where: 'university quiz, 2 mm × 10 cm at 1e-3 Torr, molecular: 9.68e-3 L/s',
      unit: 'm³/s',
      tolerance: 1.2e-2,
      why: 'the quiz leaves the transition factor out',
      fromMemory: false,
    },
    [[{ diameter: 0.002, length: 0.1, meanPressure: 0.133322, vapourFraction: 0, temperature: ROOM }, 9.68e-3 * LITRE]],
  ),
  ...rowsOf(
    'series',
    {
      law: 'conductances in series',
      source: 'vacuum-lab-notes',
      where: 'effective speed of 20 L/s through 40 L/s; of 10 L/s through the 30 cm tubes',
      unit: 'm³/s',
      tolerance: 2e-4,
      why: 'four printed digits at least',
      fromMemory: false,
    },
    [
      [{ first: 20 * LITRE, second: 40 * LITRE }, 13.3333 * LITRE],
      [{ first: 10 * LITRE, second: 50.417 * LITRE }, 8.3448 * LITRE],
      [{ first: 10 * LITRE, second: 0.40333 * LITRE }, 0.3877 * LITRE],
      [{ first: 10 * LITRE, second: 10.0833 * LITRE }, 5.0207 * LITRE],
      [{ first: 10 * LITRE, second: 0.016133 * LITRE }, 0.016107 * LITRE],
    ],
  ),
  ...rowsOf(
    'pump-down-printed',
    {
      law: 'pump-down time',
      source: 'vacuum-lab-notes',
      where:
        '1 m³ at 0.1 m³/s from 1000 mbar to 500, 100, 10: 6.9, 23, 46 s; 1000 m³ at 160 m³/min to 200 mbar: 10 min',
      unit: 's',
      tolerance: 6e-3,
      why: 'two printed digits',
      fromMemory: false,
    },
    [
      [{ ...TANK, target: 500 * MBAR }, 6.9],
      [{ ...TANK, target: 100 * MBAR }, 23],
      [{ ...TANK, target: 10 * MBAR }, 46],
      [{ ...TANK, volume: 1000, speed: 160 / 60, target: 200 * MBAR }, 600],
    ],
  ),
  ...rowsOf(
    'pump-down-exact',
    {
      law: 'pump-down time',
      source: 'derived',
      where: 'with leak and ultimate pressure, recomputed by integration',
      unit: 's',
      tolerance: 3e-6,
      why: 'six printed digits',
      fromMemory: false,
    },
    [
      [{ ...TANK, target: 500 * MBAR }, 6.931472],
      [{ ...LEAKY, target: 10 * MBAR }, 115.564],
      [{ ...LEAKY, target: MBAR }, 174.167],
      [{ ...LEAKY, target: 0.1 * MBAR }, 245.526],
      [{ ...LEAKY, target: 0.06 * MBAR }, 278.008],
    ],
  ),
  ...rowsOf(
    'pump-down-pressure',
    {
      law: 'pump-down pressure',
      source: 'derived',
      where: 'with leak and ultimate pressure, recomputed by integration',
      unit: 'Pa',
      tolerance: 3e-6,
      why: 'six printed digits',
      fromMemory: false,
    },
    [
      [{ ...LEAKY, time: 60 }, 9193.8],
      [{ ...LEAKY, time: 120 }, 838.136],
      [{ ...LEAKY, time: 240 }, 11.3606],
      [{ ...LEAKY, time: 300 }, 5.12238],
    ],
  ),
  ...rowsOf(
    'hose-pump-down',
    {
      law: 'pump-down time through a hose',
      source: 'derived',
      where: 'viscous hose in closed form, recomputed by integration',
      unit: 's',
      tolerance: 1e-6,
      why: 'seven printed digits',
      fromMemory: false,
    },
    [
      [{ ...THROUGH_HOSE, start: 1013 * MBAR, target: 10 * MBAR }, 117.3657],
      [{ ...THROUGH_HOSE, start: 10 * MBAR, target: MBAR }, 77.9721],
      [{ ...THROUGH_HOSE, start: MBAR, target: 0.3 * MBAR }, 98.4362],
      [{ ...THROUGH_HOSE, start: 1013 * MBAR, target: 0.3 * MBAR }, 293.77397],
    ],
  ),
  ...rowsOf(
    'valve',
    {
      law: 'pressure after a valve opens',
      source: 'derived',
      where: '300 L at 0.04 mbar and 500 L at 1013 mbar',
      unit: 'Pa',
      tolerance: 1e-5,
      why: 'five printed digits',
      fromMemory: false,
    },
    [[{ volume1: 0.3, pressure1: 4, volume2: 0.5, pressure2: 1013 * MBAR }, 63_314]],
  ),
  ...rowsOf(
    'leak',
    {
      law: 'leak from pressure rise',
      source: 'pressure-rise-monograph',
      where: 'acceptance 0.02 mbar·L/s; in 1000 L that is 0.12 Pa/min',
      unit: 'Pa·m³/s',
      tolerance: 1e-9,
      why: 'exact conversion',
      fromMemory: false,
    },
    [
      [{ volume: 1, rise: 0.12, time: 60 }, 0.02 * MBAR * LITRE],
      [{ volume: 1, rise: 7.2, time: HOUR }, 0.02 * MBAR * LITRE],
    ],
  ),
  ...rowsOf(
    'ballast',
    {
      law: 'vapour tolerance, derived',
      source: 'derived',
      where: 'mole balance at the exhaust valve; ballast a tenth of the speed, pump at 70 °C, air half moist at 20 °C',
      unit: 'Pa',
      tolerance: 2e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    [[BALLAST, 29.41 * MBAR]],
  ),
  ...rowsOf(
    'ballast-printed',
    {
      law: 'vapour tolerance, printed',
      source: 'gas-ballast-texts',
      where: 'form with 1333 mbar, same case',
      unit: 'Pa',
      tolerance: 2e-4,
      why: 'four printed digits',
      fromMemory: true,
    },
    [[BALLAST, 39.17 * MBAR]],
  ),
  ...rowsOf(
    'vapour-capacity',
    {
      law: 'vapour capacity',
      source: 'derived',
      where: '100 m³/h at 29.41 mbar and 20 °C: 2.174 kg/h; sonic flow at 100 Pa: 658.3 kg/(m²·h)',
      unit: 'kg/s',
      tolerance: 3e-4,
      why: 'four printed digits',
      fromMemory: false,
    },
    [
      [{ speed: 100 / HOUR, vapourPressure: 29.41 * MBAR, temperature: ROOM }, 2.174 / HOUR],
      [{ speed: 247.4, vapourPressure: 100, temperature: ROOM }, 658.3 / HOUR],
    ],
  ),
];
