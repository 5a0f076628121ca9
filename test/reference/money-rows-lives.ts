import { equivalentAnnualCost, equivalentAnnualFlow } from '../../lib/finance/equivalent-annual-cost.ts';
import { type MoneyRow, moneyRows } from './money-row.ts';

const repeated = (count: number, value: number) => new Array<number>(count).fill(value);
const printed = 'half of the last printed digit';

/** Equivalent yearly cost of keeping a thing n years: its price, worth after each year and upkeep in each. */
function keptFor(
  years: number,
  rate: number,
  price: number,
  worth: readonly number[],
  upkeep: readonly number[],
): number {
  const flows = [-price, ...upkeep.slice(0, years).map((cost) => -cost)];
  flows[years] = (flows[years] ?? 0) + (worth[years - 1] ?? 0);
  return -equivalentAnnualFlow(rate, flows);
}

const lives = (
  rate: number,
  price: number,
  worth: readonly number[],
  upkeep: readonly number[],
  expected: readonly number[],
  first = 1,
) => expected.map((value, k) => [() => keptFor(first + k, rate, price, worth, upkeep), value] as const);

const yearly = (count: number, first: number, step: number) =>
  Array.from({ length: count }, (_, k) => first + step * k);
/** Upkeep 2,000 rising by 500, and the risk of a breakdown on top. */
const BREAKDOWN = [5000, 5000, 5000, 6500, 8000, 9500, 11000];
const WORN = yearly(7, 2000, 500).map((cost, k) => cost + (BREAKDOWN[k] ?? 0));
const FALLING = Array.from({ length: 6 }, (_, k) => 50000 * 0.8 ** (k + 1));

export const LIFE_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'life-a',
    {
      law: 'equivalent annual cost',
      source: 'newnan',
      where: 'examples 13-1, 13-2, 13-4',
      unit: 'money/year',
      halfDigit: 0.005,
      why: printed,
      fromMemory: true,
    },
    lives(
      0.15,
      25000,
      [18000, 13000, 9000, 6000, 4000, 3000, 2500],
      WORN,
      [17750, 16563.95, 15811.2, 15518.57, 15426.83, 15446.61, 15582.46],
    ),
  ),
  ...moneyRows(
    'life-b',
    {
      law: 'equivalent annual cost',
      source: 'newnan',
      where: 'problem 13-10',
      unit: 'money/year',
      halfDigit: 0.005,
      why: printed,
    },
    lives(0.09, 50000, FALLING, yearly(6, 3500, 2000), [18000, 17569.38, 17328.57, 17240.11, 17273.37, 17403.37]),
  ),
  ...moneyRows(
    'life-c',
    {
      law: 'equivalent annual cost',
      source: 'newnan',
      where: 'problem 13-1',
      unit: 'money/year',
      halfDigit: 0.5,
      why: printed,
    },
    lives(0.1, 1050000, repeated(6, 225000), yearly(6, 235000, 75000), [621351, 610892, 613693], 4),
  ),
  ...moneyRows(
    'life-d',
    {
      law: 'equivalent annual cost',
      source: 'newnan',
      where: 'replacement problem, published answers',
      unit: 'money/year',
      halfDigit: 0.005,
      why: printed,
    },
    lives(
      0.08,
      25000,
      [16000, 13000, 11000, 10000, 9500],
      yearly(5, 5000, 3000),
      [16000, 14211.54, 14158.7, 14540.69, 15181.49],
    ),
  ),
  ...moneyRows(
    'replace-or-keep',
    {
      law: 'equivalent annual cost',
      source: 'white-case-pratt',
      where: 'example 11.10, a saving of 428.56 a year',
      unit: 'money/year',
      relative: 2.5e-4,
      why: 'the book works with factors of five digits',
    },
    [[() => equivalentAnnualCost(0.15, { price: 27000, salvage: 10000, lifeYears: 5, yearlyCost: -7000 }), 428.56]],
  ),
  ...moneyRows(
    'keep-or-replace',
    {
      law: 'equivalent annual cost',
      source: 'white-case-pratt',
      where: 'example 11.9, a loss of 889.06 a year',
      unit: 'money/year',
      relative: 0.01,
      why: 'a small difference of large amounts at a rate printed as 16.67 %',
    },
    [
      [
        () => equivalentAnnualCost(0.1667, { price: 450000, salvage: 200000, lifeYears: 5, yearlyCost: -110000 }),
        -889.06,
      ],
    ],
  ),
];
