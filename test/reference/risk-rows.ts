import { kOfNAvailability, kOfNReliability, kOfNTimeToFailure } from '../../lib/risk/k-of-n.ts';
import { machineRepair } from '../../lib/risk/machine-repair.ts';
import { pertQuantile } from '../../lib/risk/pert.ts';
import { sobolPoints } from '../../lib/risk/sobol.ts';
import { indexDesign, type SobolIndices, sobolIndices } from '../../lib/risk/sobol-indices.ts';
import type { ThreePoint } from '../../lib/risk/three-point.ts';
import { triangularQuantile } from '../../lib/risk/triangular.ts';
import { type MoneyRow, moneyRows } from './money-row.ts';

const printed = 'half of the last printed digit';

const SHOP_OF_SIX = { units: 6, timeToFailure: 20, timeToRepair: 2 };
const SHOP_OF_EIGHT = { units: 8, timeToFailure: 20, timeToRepair: 2 };
const PATROL_CARS = { units: 8, timeToFailure: 480, timeToRepair: 18, crews: 1 };
const MECHANIC = { units: 2, timeToFailure: 12, timeToRepair: 8, crews: 1 };
const THOUSAND_HOURS = { units: 3, timeToFailure: 1000, timeToRepair: 50 };

const FAILURE_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'k-of-n',
    { law: 'k of n', source: 'mil-hdbk-338b', where: '3 of 4 at 0.9', unit: '1', halfDigit: 5e-5, why: printed },
    [[() => kOfNReliability(3, 4, 0.9), 0.9477]],
  ),
  ...moneyRows(
    'k-of-n-derived',
    {
      law: 'k of n',
      source: 'derived',
      where: '2 of 3 at 3e-5 per hour over 10,000 h; units of 0.95',
      unit: '1',
      halfDigit: 5e-7,
      why: printed,
    },
    [
      [() => kOfNReliability(2, 3, 0.95), 0.99275],
      [() => kOfNReliability(3, 4, 0.95), 0.985981],
      [() => kOfNReliability(1, 2, 0.95), 0.9975],
      [() => kOfNReliability(2, 3, Math.exp(-0.3)), 0.833296],
    ],
  ),
  ...moneyRows(
    'time-to-failure',
    { law: 'k of n', source: 'derived', where: '2 of 3 at 3e-5 per hour', unit: 'h', halfDigit: 0.05, why: printed },
    [[() => kOfNTimeToFailure(2, 3, 1 / 3e-5), 27777.8]],
  ),
  ...moneyRows(
    'availability',
    {
      law: 'k of n',
      source: 'derived',
      where: '1,000 h between failures, 50 h of repair: one unit, 2 of 3 each with a crew, 2 of 3 with one crew',
      unit: '1',
      halfDigit: 5e-7,
      why: printed,
    },
    [
      [() => kOfNAvailability(1, { ...THOUSAND_HOURS, units: 1, crews: 1 }), 0.952381],
      [() => kOfNAvailability(2, { ...THOUSAND_HOURS, crews: 3 }), 0.993413],
      [() => kOfNAvailability(2, { ...THOUSAND_HOURS, crews: 1 }), 0.986489],
    ],
  ),
  ...moneyRows(
    'repair-printed',
    {
      law: 'machine repair',
      source: 'anderson-sweeney-williams',
      where: 'six machines, one and two repairers',
      unit: '1',
      halfDigit: 5e-4,
      why: 'rounded in the steps of the book',
    },
    [
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).failed[0] ?? Number.NaN, 0.4845],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).meanWaiting, 0.3297],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).meanFailed, 0.8451],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).waitingTime, 1.279],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).downTime, 3.279],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 2 }).waitingTime, 0.0834],
    ],
  ),
  ...moneyRows(
    'repair-exact',
    {
      law: 'machine repair',
      source: 'derived',
      where: 'the same, recomputed; the printed "Pw" is a share of time, these are shares of breakdowns',
      unit: '1',
      halfDigit: 5e-7,
      why: printed,
    },
    [
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).failed[0] ?? Number.NaN, 0.4845149],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).waitingTime, 1.2790435],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 2 }).failed[0] ?? Number.NaN, 0.5602327],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 2 }).meanWaiting, 0.0226558],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 2 }).meanFailed, 0.5660507],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 1 }).shareThatWaits, 0.436048],
      [() => machineRepair({ ...SHOP_OF_SIX, crews: 2 }).shareThatWaits, 0.072112],
      [() => machineRepair({ ...SHOP_OF_EIGHT, crews: 1 }).failed[0] ?? Number.NaN, 0.338318],
      [() => machineRepair({ ...SHOP_OF_EIGHT, crews: 1 }).waitingTime, 2.180816],
      [() => machineRepair({ ...SHOP_OF_EIGHT, crews: 2 }).meanWaiting, 0.0645939],
      [() => machineRepair({ ...SHOP_OF_EIGHT, crews: 2 }).waitingTime, 0.179079],
      [() => machineRepair(PATROL_CARS).meanFailed, 0.376195],
      [() => machineRepair(PATROL_CARS).failed[0] ?? Number.NaN, 0.714107],
      [() => machineRepair(MECHANIC).failed[0] ?? Number.NaN, 0.310345],
      [() => machineRepair(MECHANIC).meanFailed, 0.965517],
      [() => machineRepair(MECHANIC).downTime, 11.2],
    ],
  ),
];

const SPREAD: ThreePoint = { low: 10, likely: 20, high: 50 };
const POINTS = 20000;

/** Mean of a power of the distance from a centre, over evenly spaced shares: the mean and the variance by brute force. */
function moment(quantile: (u: number, points: ThreePoint) => number, centre: number, power: number): number {
  let sum = 0;
  for (let k = 0; k < POINTS; k += 1) sum += (quantile((k + 0.5) / POINTS, SPREAD) - centre) ** power;
  return sum / POINTS;
}

const quantiles = (quantile: (u: number, points: ThreePoint) => number, expected: readonly number[]) =>
  [0.1, 0.5, 0.9].map((u, k) => [() => quantile(u, SPREAD), expected[k] ?? Number.NaN] as const);

const SPREAD_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'triangular',
    {
      law: 'triangular',
      source: 'derived',
      where: '10, 20, 50: P10, P50, P90',
      unit: '1',
      halfDigit: 5e-6,
      why: printed,
    },
    quantiles(triangularQuantile, [16.32456, 25.5051, 39.04555]),
  ),
  ...moneyRows(
    'triangular-moments',
    {
      law: 'triangular',
      source: 'derived',
      where: '10, 20, 50: mean, variance',
      unit: '1',
      relative: 1e-4,
      why: 'summed over 20,000 shares',
    },
    [
      [() => moment(triangularQuantile, 0, 1), 26.6667],
      [() => moment(triangularQuantile, 80 / 3, 2), 72.2222],
    ],
  ),
  ...moneyRows(
    'pert',
    {
      law: 'PERT',
      source: 'malcolm-pert-1959',
      where: '10, 20, 50: P10, P50, P90, recomputed',
      unit: '1',
      halfDigit: 5e-6,
      why: printed,
    },
    quantiles(pertQuantile, [14.4894, 22.55241, 33.35561]),
  ),
  ...moneyRows(
    'pert-moments',
    {
      law: 'PERT',
      source: 'malcolm-pert-1959',
      where: '10, 20, 50: mean, exact variance (not the shortcut of a sixth of the range)',
      unit: '1',
      relative: 1e-4,
      why: 'summed over 20,000 shares',
    },
    [
      [() => moment(pertQuantile, 0, 1), 23.3333],
      [() => moment(pertQuantile, 70 / 3, 2), 50.7937],
    ],
  ),
];

/** The first points of the sequence in three dimensions, in sixteenths, the origin left out. */
const SIXTEENTHS = [
  [8, 8, 8],
  [12, 4, 4],
  [4, 12, 12],
  [6, 6, 10],
  [14, 14, 2],
  [10, 2, 14],
  [2, 10, 6],
  [3, 5, 15],
  [11, 13, 7],
  [15, 1, 11],
  [7, 9, 3],
  [5, 3, 5],
  [13, 11, 13],
  [9, 7, 1],
  [1, 15, 9],
] as const;

/** Ishigami's function with a = 7, b = 0.1 on the unit cube. */
function ishigami(point: readonly number[]): number {
  const [x = 0, y = 0, z = 0] = point.map((u) => Math.PI * (2 * u - 1));
  return Math.sin(x) + 7 * Math.sin(y) ** 2 + 0.1 * z ** 4 * Math.sin(x);
}

let measured: SobolIndices | null = null;

function ishigamiIndices(): SobolIndices {
  if (measured) return measured;
  const { a, b, mixed } = indexDesign(8192, 3, 2024);
  measured = sobolIndices(
    a.map(ishigami),
    b.map(ishigami),
    mixed.map((rows) => rows.map(ishigami)),
  );
  return measured;
}

const sampled = 'sampled at 8192 points; other seeds scatter by about this much';

const SAMPLING_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'sobol-points',
    {
      law: 'Sobol points',
      source: 'joe-kuo-2008',
      where: 'points 1 to 15 in three dimensions, in sixteenths',
      unit: '1',
      relative: 1e-15,
      why: 'exact binary fractions',
    },
    SIXTEENTHS.flatMap((point, k) =>
      point.map(
        (value, dimension) => [() => 16 * (sobolPoints(16, 3)[k + 1]?.[dimension] ?? Number.NaN), value] as const,
      ),
    ),
  ),
  ...moneyRows(
    'ishigami',
    {
      law: 'Sobol indices',
      source: 'saltelli-2008',
      where: 'Ishigami function: mean, variance, first-order and total indices',
      unit: '1',
      relative: 0.02,
      why: sampled,
    },
    [
      [() => ishigamiIndices().mean, 3.5],
      [() => ishigamiIndices().variance, 13.844587940719254],
      [() => ishigamiIndices().first?.[0] ?? Number.NaN, 0.313905191147811],
      [() => ishigamiIndices().first?.[1] ?? Number.NaN, 0.442411144790041],
      [() => ishigamiIndices().total?.[0] ?? Number.NaN, 0.557588855209959],
      [() => ishigamiIndices().total?.[1] ?? Number.NaN, 0.442411144790041],
      [() => ishigamiIndices().total?.[2] ?? Number.NaN, 0.243683664062148],
      // The third input does nothing alone: 1 + its first-order share, since errors here are relative.
      [() => 1 + (ishigamiIndices().first?.[2] ?? Number.NaN), 1],
    ],
  ),
];

/** Published values for the chances and spreads of `lib/risk`. */
export const RISK_ROWS: readonly MoneyRow[] = [...FAILURE_ROWS, ...SPREAD_ROWS, ...SAMPLING_ROWS];
