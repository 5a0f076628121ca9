import { equivalentAnnualFlow } from '../../lib/finance/equivalent-annual-cost.ts';
import { type InternalRates, internalRates } from '../../lib/finance/internal-rates.ts';
import { modifiedInternalRate } from '../../lib/finance/modified-internal-rate.ts';
import { netPresentValue, presentValues } from '../../lib/finance/net-present-value.ts';
import { payback } from '../../lib/finance/payback.ts';
import { type MoneyRow, moneyRows } from './money-row.ts';

function rateOf(flows: readonly number[], index = 0): number {
  const outcome: InternalRates = internalRates(flows);
  const rates = outcome.kind === 'none' ? [] : outcome.kind === 'one' ? [outcome.rate] : outcome.rates;
  const rate = rates[index];
  if (rate === undefined) throw new Error(`rate ${index + 1} expected, got ${JSON.stringify(outcome)}`);
  return rate;
}

function modified(flows: readonly number[], finance: number, reinvest: number): number {
  const rate = modifiedInternalRate(flows, finance, reinvest);
  if (rate === null) throw new Error('a modified rate expected');
  return rate;
}

function paidBack(flows: readonly number[]): number {
  const outcome = payback(flows);
  if (outcome.kind !== 'after') throw new Error(`a payback expected, got ${outcome.kind}`);
  return outcome.period;
}

function discounted(rate: number, flows: readonly number[]): number {
  return paidBack(presentValues(rate, flows));
}

const repeated = (count: number, value: number) => new Array<number>(count).fill(value);
const printed = 'half of the last printed digit';

const npf = (law: string, where: string, unit: string) => ({
  law,
  source: 'numpy-financial' as const,
  where,
  unit,
  why: printed,
});

const LIBRARY_ROWS: readonly MoneyRow[] = [
  ...moneyRows('npf-irr-exact', { ...npf('internal rate', 'documentation of irr', '1'), halfDigit: 5e-15 }, [
    [() => rateOf([-250000, 100000, 150000, 200000, 250000, 300000]), 0.5672303344358536],
  ]),
  ...moneyRows('npf-irr', { ...npf('internal rate', 'documentation of irr', '1'), halfDigit: 5e-5 }, [
    [() => rateOf([-100, 39, 59, 55, 20]), 0.28095],
    [() => rateOf([-100, 0, 0, 74]), -0.0955],
    [() => rateOf([-100, 100, 0, -7], 1), -0.0833],
    [() => rateOf([-100, 100, 0, 7]), 0.06206],
    [() => rateOf([-5, 10.5, 1, -8, 1], 1), 0.0886],
    [() => rateOf([-150000, 15000, 25000, 35000, 45000, 60000]), 0.0524],
    [() => rateOf([-1678.87, 771.96, 1814.05, 3520.3, 3552.95, 3584.99, 4789.91, -1], 1), 1.00426],
  ]),
  ...moneyRows(
    'second-root',
    {
      law: 'internal rate',
      source: 'derived',
      where: 'the roots a one-root solver does not give',
      unit: '1',
      halfDigit: 5e-5,
      why: printed,
    },
    [
      [() => rateOf([-5, 10.5, 1, -8, 1], 2), 0.7095596],
      [() => rateOf([-100, 100, 0, -7], 0), -0.6789],
    ],
  ),
  ...moneyRows('npf-npv', { ...npf('net present value', 'documentation of npv', 'money'), halfDigit: 0.005 }, [
    [() => netPresentValue(0.08, [-40000, 5000, 8000, 12000, 30000]), 3065.22267],
    [() => netPresentValue(0, [-4000, 500, 800]), -2700],
    [() => netPresentValue(0.05, [-4000, 500, 800]), -2798.19],
    [() => netPresentValue(0.1, [-4000, 500, 800]), -2884.3],
    [() => netPresentValue(0, [-5000, 600, 900]), -3500],
    [() => netPresentValue(0.05, [-5000, 600, 900]), -3612.24],
    [() => netPresentValue(0.1, [-5000, 600, 900]), -3710.74],
    [() => netPresentValue(0.05, [-15000, 1500, 2500, 3500, 4500, 6000]), 122.89],
  ]),
  ...moneyRows('npf-mirr', { ...npf('modified internal rate', 'documentation of mirr', '1'), halfDigit: 5e-9 }, [
    [() => modified([-100, 50, -60, 70], 0.1, 0.12), -0.03909366594],
    [() => modified([-4500, -800, 800, 800, 600], 0.05, 0.08), -0.1784449],
    [() => modified([-4500, -800, 800, 800, 600], 0.08, 0.1), -0.17328716],
    [() => modified([-4500, -800, 800, 800, 600], 0.1, 0.12), -0.1684366],
    [() => modified([-120000, 39000, 30000, 21000, 37000], 0.05, 0.08), 0.04627293],
    [() => modified([-120000, 39000, 30000, 21000, 37000], 0.08, 0.1), 0.05437856],
    [() => modified([-120000, 39000, 30000, 21000, 37000], 0.1, 0.12), 0.06252201],
    [() => modified([100, 200, -50, 300, -200], 0.05, 0.08), 0.35712458],
    [() => modified([100, 200, -50, 300, -200], 0.08, 0.1), 0.40628857],
    [() => modified([100, 200, -50, 300, -200], 0.1, 0.12), 0.44435295],
  ]),
  ...moneyRows('npf-mirr-test', { ...npf('modified internal rate', 'tests of mirr', '1'), halfDigit: 5e-7 }, [
    [() => modified([-4500, -800, 800, 800, 600, 600, 800, 800, 700, 3000], 0.08, 0.055), 0.066597],
    [() => modified([-120000, 39000, 30000, 21000, 37000, 46000], 0.1, 0.12), 0.126094],
    [() => modified([100, 200, -50, 300, -200], 0.05, 0.06), 0.342823],
  ]),
  ...moneyRows(
    'draft-mirr',
    {
      law: 'modified internal rate',
      source: 'openformula-draft',
      where: 'MIRR',
      unit: '1',
      halfDigit: 5e-13,
      why: printed,
    },
    [[() => modified([100, 200, -50, 300, -200], 0.05, 0.06), 0.342823387842]],
  ),
];

/** Welding equipment: 25,000 for 8,000 a year and 5,000 at the end of five. */
const WELDING = [-25000, 8000, 8000, 8000, 8000, 13000];
/** 640,000, 138,000 a year net, a gradient of 4,000 from year 4 on, 20,000 at the end of eight. */
const GRADIENT = [-640000, 138000, 138000, 138000, 142000, 146000, 150000, 154000, 178000];
const PARK_53 = [-85000, 15000, 25000, 35000, 45000, 45000, 35000];
const PARK_53_FOURTH = [-85000, 35000, 45000, 50000, 50000, 45000, 35000];
const PARK_51 = [-650000, ...repeated(8, 162500)];
const CE167 = [-180, -90, 0, 100, 100, 100, -90, 100, 100];
const NEWNAN_A = [-10000, ...repeated(5, 3000)];
const NEWNAN_B = [-13500, 3000, 3500, 4000, 4500, 5000];
const NEWNAN_DIFFERENCE = NEWNAN_B.map((flow, k) => flow - (NEWNAN_A[k] ?? 0));

const sullivan = { source: 'sullivan' as const, where: 'chapter 5, welding equipment', fromMemory: true };
const sullivanRead = { source: 'sullivan' as const, where: 'problem 5-2' };

const TEXTBOOK_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'welding-money',
    {
      law: 'net present value',
      ...sullivan,
      unit: 'money',
      relative: 5e-5,
      why: 'answers from factor tables of four digits',
    },
    [
      [() => netPresentValue(0.2, WELDING), 934.29],
      [() => equivalentAnnualFlow(0.2, WELDING), 312.4],
    ],
  ),
  ...moneyRows('welding-irr', { law: 'internal rate', ...sullivan, unit: '1', halfDigit: 5e-5, why: printed }, [
    [() => rateOf(WELDING), 0.2158],
  ]),
  ...moneyRows(
    'welding-payback',
    { law: 'payback', ...sullivan, unit: 'year', relative: 1e-12, why: 'counted in whole years, as the book does' },
    [
      [() => Math.ceil(paidBack(WELDING)), 4],
      [() => Math.ceil(discounted(0.2, WELDING)), 5],
    ],
  ),
  ...moneyRows(
    'gradient-published',
    {
      law: 'net present value',
      ...sullivanRead,
      unit: 'money',
      relative: 1e-4,
      why: 'published with factors of four digits',
    },
    [[() => netPresentValue(0.12, GRADIENT), 82082.78]],
  ),
  ...moneyRows(
    'gradient-exact',
    {
      law: 'net present value',
      ...sullivanRead,
      where: 'problem 5-2, recomputed',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
    },
    [[() => netPresentValue(0.12, GRADIENT), 82088.27]],
  ),
  ...moneyRows(
    'park-payback',
    {
      law: 'payback',
      source: 'park',
      where: 'examples 5.1 and 5.3',
      unit: 'year',
      halfDigit: 0.005,
      why: printed,
      fromMemory: true,
    },
    [
      [() => paidBack(PARK_53), 3.22],
      [() => discounted(0.15, PARK_53), 4.19],
      [() => paidBack(PARK_53_FOURTH), 2.1],
      [() => discounted(0.15, PARK_53_FOURTH), 2.62],
      [() => paidBack(PARK_51), 4],
      [() => discounted(0.15, PARK_51), 6.57],
    ],
  ),
  ...moneyRows(
    'park-npw',
    {
      law: 'net present value',
      source: 'park',
      where: 'examples 5.1 and 5.3, recomputed',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
    },
    [
      [() => netPresentValue(0.15, PARK_53), 33193.45],
      [() => netPresentValue(0.15, PARK_53_FOURTH), 78429.14],
      [() => netPresentValue(0.15, PARK_51), 79189.74],
      [() => netPresentValue(0.15, PARK_53.slice(0, 4)) * 1.15 ** 3, -45686.87],
    ],
  ),
  ...moneyRows(
    'park-irr',
    {
      law: 'internal rate',
      source: 'park',
      where: 'examples 5.1 and 5.3, recomputed',
      unit: '1',
      halfDigit: 5e-5,
      why: printed,
    },
    [
      [() => rateOf(PARK_53), 0.264],
      [() => rateOf(PARK_51), 0.18624],
    ],
  ),
  ...moneyRows(
    'recrossing',
    {
      law: 'payback',
      source: 'ce167-solutions',
      where: 'first crossing of a balance that crosses again',
      unit: 'year',
      halfDigit: 0.05,
      why: printed,
    },
    [
      [() => paidBack(CE167), 4.7],
      [() => discounted(0.05, CE167), 7.2],
    ],
  ),
  ...moneyRows(
    'recrossing-npw',
    {
      law: 'net present value',
      source: 'ce167-solutions',
      where: 'at 5 %',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
    },
    [[() => netPresentValue(0.05, CE167), 52.89]],
  ),
  ...moneyRows(
    'incremental-npv',
    {
      law: 'net present value',
      source: 'newnan',
      where: 'example 7-13',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
    },
    [
      [() => netPresentValue(0.07, NEWNAN_A), 2300.59],
      [() => netPresentValue(0.07, NEWNAN_B), 2623.92],
    ],
  ),
  ...moneyRows(
    'incremental-irr',
    {
      law: 'internal rate',
      source: 'newnan',
      where: 'example 7-13: ranking by rate alone picks the wrong one',
      unit: '1',
      halfDigit: 5e-6,
      why: printed,
    },
    [
      [() => rateOf(NEWNAN_A), 0.15238],
      [() => rateOf(NEWNAN_B), 0.13393],
      [() => rateOf(NEWNAN_DIFFERENCE), 0.094397],
    ],
  ),
  ...moneyRows(
    'incremental-irr-published',
    {
      law: 'internal rate',
      source: 'newnan',
      where: 'example 7-13 as printed',
      unit: '1',
      relative: 2e-3,
      why: 'the book interpolates between two tables',
    },
    [[() => rateOf(NEWNAN_DIFFERENCE), 0.0945]],
  ),
];

export const RETURN_ROWS: readonly MoneyRow[] = [...LIBRARY_ROWS, ...TEXTBOOK_ROWS];
