import { allocate } from '../../lib/cost/allocate.ts';
import { bestMix } from '../../lib/cost/best-mix.ts';
import { equipmentEffectiveness } from '../../lib/cost/equipment-effectiveness.ts';
import { labourCost } from '../../lib/cost/labour.ts';
import { breakEven } from '../../lib/finance/break-even.ts';
import { solveLinearProgram } from '../../lib/numeric/linear-program.ts';
import { type MoneyRow, moneyRows } from './money-row.ts';

const printed = 'half of the last printed digit';
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Setups, machine hours, labour hours, inspections of three products, and the pool each is paid from. */
const POOLS = [
  [150000, [125, 75, 50]],
  [750000, [2500, 1500, 2000]],
  [360000, [25000, 15000, 5000]],
  [90000, [50, 25, 25]],
] as const;

function allocatedTo(product: number): number {
  return sum(POOLS.map(([pool, drivers]) => allocate(pool, drivers)[product] ?? Number.NaN));
}

/** Products P and Q over four resources of 2,400 minutes a week; figures from memory, consistent with the 3,000 minutes of B. */
function pq() {
  const minutes = (a: number, b: number, c: number, d: number) => ({ A: 60 * a, B: 60 * b, C: 60 * c, D: 60 * d });
  const mix = bestMix(
    [
      { productId: 'P', contribution: 45, uses: minutes(15, 15, 15, 15), demand: 100 },
      { productId: 'Q', contribution: 60, uses: minutes(10, 30, 5, 5), demand: 50 },
    ],
    minutes(2400, 2400, 2400, 2400),
  );
  if (mix.kind !== 'best') throw new Error('a best mix expected');
  return mix;
}

/** Welding cell: 1,980 min available, 50 lost, 2,498 welds of half a minute, none spoiled. */
const WELDING = equipmentEffectiveness({ plannedTime: 1980, runningTime: 1930, idealTime: 2498 * 0.5, goodShare: 1 });

/** 910 min planned, 127 lost, 203 made of the 261 that three minutes each allow. */
const CELL = equipmentEffectiveness({ plannedTime: 910, runningTime: 783, idealTime: 3 * 203, goodShare: 1 });

/** 480 min planned, 420 run, 400 made at a minute each, 380 of them good. */
const PLAIN = equipmentEffectiveness({ plannedTime: 480, runningTime: 420, idealTime: 400, goodShare: 380 / 400 });

function wyndor() {
  const outcome = solveLinearProgram({
    gain: [3, 5],
    uses: [
      [1, 0],
      [0, 2],
      [3, 2],
    ],
    limits: [4, 12, 18],
  });
  if (outcome.kind !== 'optimal') throw new Error('an optimum expected');
  return outcome;
}

/** A wage with the given on-cost, for one hour worked. */
function loadedHour(wage: number, onCost: number): number {
  return labourCost({
    tasks: { load: 3600 },
    onShift: 3600,
    wage,
    onCost,
    guaranteed: false,
    owner: { time: 0, rate: 0 },
  }).paid;
}

const exact = { relative: 1e-9, why: 'exact arithmetic' };

export const COST_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'break-even',
    {
      law: 'break-even',
      source: 'openstax-managerial',
      where: 'chapter 3: 20,000 fixed, 400 a unit, 250 variable; then 10,000, 50 and 30',
      unit: 'unit',
      halfDigit: 0.005,
      why: printed,
    },
    [
      [() => breakEven(20000, 400, 250)?.volume ?? Number.NaN, 133.33],
      [() => breakEven(20000, 400, 250)?.revenue ?? Number.NaN, 53333.33],
      [() => breakEven(20000, 400, 250)?.contributionRatio ?? Number.NaN, 0.375],
      [() => breakEven(10000, 50, 30)?.volume ?? Number.NaN, 500],
    ],
  ),
  ...moneyRows(
    'break-even-recalled',
    {
      law: 'break-even',
      source: 'openstax-managerial',
      where: 'chapter 3: 18,000 fixed, 100 a unit, 20 variable',
      unit: 'unit',
      ...exact,
      fromMemory: true,
    },
    [
      [() => breakEven(18000, 100, 20)?.volume ?? Number.NaN, 225],
      [() => breakEven(18000, 100, 20)?.revenue ?? Number.NaN, 22500],
    ],
  ),
  ...moneyRows(
    'activity-cost',
    {
      law: 'cost by activity',
      source: 'cost-accounting-example',
      where: 'four pools, three products',
      unit: 'money',
      ...exact,
    },
    [632500, 375000, 342500].map((cost, product) => [() => allocatedTo(product), cost] as const),
  ),
  ...moneyRows(
    'pq',
    { law: 'best mix', source: 'goldratt-haystack', where: 'the P-Q problem', unit: '1', ...exact, fromMemory: true },
    [
      [() => pq().contribution, 6300],
      [() => pq().units[0] ?? Number.NaN, 100],
      [() => pq().units[1] ?? Number.NaN, 30],
      [() => (pq().worthOfHour.B ?? Number.NaN) / 60, 2],
    ],
  ),
  ...moneyRows('wyndor', { law: 'best mix', source: 'hillier-lieberman', where: 'Wyndor Glass', unit: '1', ...exact }, [
    [() => wyndor().value, 36],
    [() => wyndor().amounts[0] ?? Number.NaN, 2],
    [() => wyndor().amounts[1] ?? Number.NaN, 6],
    [() => wyndor().shadowPrices[1] ?? Number.NaN, 1.5],
    [() => wyndor().shadowPrices[2] ?? Number.NaN, 1],
  ]),
  ...moneyRows(
    'effectiveness',
    {
      law: 'equipment effectiveness',
      source: 'willmott-mccarthy-2001',
      where: 'pages 81-82, welding cell; page 127',
      unit: '1',
      halfDigit: 5e-4,
      why: printed,
    },
    [
      [() => WELDING.availability, 0.975],
      [() => WELDING.performance, 0.647],
      [() => WELDING.overall, 0.631],
      [() => CELL.availability, 0.86],
    ],
  ),
  ...moneyRows(
    'effectiveness-plain',
    {
      law: 'equipment effectiveness',
      source: 'willmott-mccarthy-2001',
      where:
        'the definition, recomputed for 420 of 480 min, 400 made, 380 good; page 127 prints 77.7 % cut, not rounded',
      unit: '1',
      relative: 1e-6,
      why: 'recomputed to six digits',
    },
    [
      [() => CELL.performance, 0.777778],
      [() => PLAIN.performance, 0.952381],
      [() => PLAIN.overall, 0.791667],
    ],
  ),
  ...moneyRows(
    'loaded-wage',
    {
      law: 'labour',
      source: 'bls-ecec',
      where: 'June 2025, private industry: 32.07 wages, 13.58 benefits',
      unit: 'money/h',
      halfDigit: 0.005,
      why: printed,
    },
    [
      [() => loadedHour(32.07, 13.58 / 32.07), 45.65],
      [() => loadedHour(18.33, 0.0765), 19.73],
    ],
  ),
];
