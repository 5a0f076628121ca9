import { annuityPayment, interestPart, principalPart } from '../../lib/finance/annuity.ts';
import { debtServiceCover } from '../../lib/finance/debt-service-cover.ts';
import { type DepreciationMethod, monthlyDepreciation, yearlyDepreciation } from '../../lib/finance/depreciation.ts';
import { DEPRECIATION_TABLES } from '../../lib/finance/depreciation-tables.ts';
import { equivalentAnnualFlow } from '../../lib/finance/equivalent-annual-cost.ts';
import { loanSchedule } from '../../lib/finance/loan-schedule.ts';
import { netPresentValue } from '../../lib/finance/net-present-value.ts';
import { projectPlan } from '../../lib/finance/project-plan.ts';
import { type MoneyRow, moneyRows } from './money-row.ts';

const printed = 'half of the last printed digit';
const repeated = (count: number, value: number) => new Array<number>(count).fill(value);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function schedule(principal: number, annual: number, termMonths: number) {
  return loanSchedule({
    principal,
    annualRate: annual,
    termMonths,
    graceMonths: 0,
    interestOnlyMonths: 0,
    fee: 0,
    drawMonth: 0,
  });
}

const HOUSE = schedule(150000, 0.03625, 360);
const PRESS = schedule(250000, 0.105, 120);
const SEVEN_YEARS = schedule(100000, 0.08, 84);
const FIVE_YEARS = schedule(100000, 0.06, 60);

const inMoney = (cents: number | undefined) => (cents ?? Number.NaN) / 100;
const paidIn = (rows: typeof PRESS, months: number) => inMoney(sum(rows.slice(0, months).map((row) => row.payment)));
const interestIn = (rows: typeof PRESS, months: number) =>
  inMoney(sum(rows.slice(0, months).map((row) => row.interest)));

/** Month, interest, principal and balance of 150,000 at 3.625 % over 360 months. */
const HOUSE_ROWS = [
  [1, 453.13, 230.95, 149769.05],
  [2, 452.43, 231.65, 149537.4],
  [3, 451.73, 232.35, 149305.05],
  [10, 446.77, 237.31, 147658.83],
] as const;

const toTheCent = 'each month is rounded to the cent here, and not in the source: a cent or two';

const LOAN_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'house',
    {
      law: 'loan schedule',
      source: 'math352-project',
      where: '150,000 at 3.625 %',
      unit: 'money',
      halfDigit: 0.025,
      why: toTheCent,
    },
    [
      [() => inMoney(HOUSE[0]?.payment), 684.08],
      ...HOUSE_ROWS.flatMap(([month, interest, principal, balance]) => [
        [() => inMoney(HOUSE[month - 1]?.interest), interest] as const,
        [() => inMoney(HOUSE[month - 1]?.principal), principal] as const,
        [() => inMoney(HOUSE[month - 1]?.closing), balance] as const,
      ]),
    ],
  ),
  ...moneyRows(
    'three-years',
    {
      law: 'annuity payment',
      source: 'derived',
      where: '42,000 at 12 %, three yearly payments',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
    },
    [
      [() => -annuityPayment(0.12, 3, 42000), 17486.66],
      [() => -interestPart(0.12, 1, 3, 42000), 5040],
      [() => -principalPart(0.12, 1, 3, 42000), 12446.66],
      [() => -interestPart(0.12, 2, 3, 42000), 3546.4],
      [() => -principalPart(0.12, 2, 3, 42000), 13940.26],
      [() => -interestPart(0.12, 3, 3, 42000), 1873.57],
      [() => -principalPart(0.12, 3, 3, 42000), 15613.09],
      [() => -annuityPayment(0.1, 4, 15000), 4732.06],
      [() => -principalPart(0.1, 1, 4, 15000), 3232.06],
    ],
  ),
  ...moneyRows(
    'four-ways',
    {
      law: 'annuity payment',
      source: 'newnan',
      where: 'chapter 3, 5,000 at 8 % repaid in level payments',
      unit: 'money',
      halfDigit: 0.005,
      why: printed,
      fromMemory: true,
    },
    [
      [() => -annuityPayment(0.08, 5, 5000), 1252.28],
      [() => -5 * annuityPayment(0.08, 5, 5000) - 5000, 1261.41],
    ],
  ),
  ...moneyRows(
    'press',
    {
      law: 'loan schedule',
      source: 'derived',
      where: 'recomputed without rounding each month',
      unit: 'money',
      halfDigit: 0.6,
      why: 'half a cent of rounding in each of up to 120 payments',
    },
    [
      [() => inMoney(PRESS[0]?.payment), 3373.37],
      [() => paidIn(PRESS, 12), 40480.5],
      [() => interestIn(PRESS, 12), 25544.78],
      [() => inMoney(PRESS[11]?.closing), 235064.28],
      [() => interestIn(PRESS, 120), 154804.99],
      [() => inMoney(SEVEN_YEARS[0]?.payment), 1558.62],
      [() => paidIn(SEVEN_YEARS, 12), 18703.46],
      [() => interestIn(SEVEN_YEARS, 12), 7598.69],
      [() => inMoney(FIVE_YEARS[0]?.payment), 1933.28],
      [() => interestIn(FIVE_YEARS, 60), 15996.81],
    ],
  ),
  ...moneyRows(
    'cover',
    {
      law: 'debt service cover',
      source: 'sba-sop-50-10',
      where: 'definition; EBITDA of 60,000 over 40,480.50',
      unit: '1',
      halfDigit: 5e-4,
      why: printed,
    },
    [[() => debtServiceCover(repeated(12, 5000), repeated(12, 40480.5 / 12)).lowest ?? Number.NaN, 1.482]],
  ),
];

const NEWNAN_DEPRECIATION = [2858, 4898, 3498, 2498, 1786, 1784, 1786, 892];
const NEWNAN_BOOK_VALUE = [17142, 12244, 8746, 6248, 4462, 2678, 892];

function bookAfter(years: number): number {
  const terms = { cost: 2000000, salvage: 0, lifeMonths: 84, expensedShare: 0, month: 0 };
  const amounts = monthlyDepreciation({ ...terms, method: { kind: 'table', table: 'recovery7' } });
  return inMoney(2000000 - sum(amounts.slice(0, 12 * years)));
}

/** Yearly after-tax cash of 84,000 spent for 40,000 a year before tax, tax at one half, paid at the end of each year. */
function afterTaxCash(method: DepreciationMethod): number[] {
  const plan = projectPlan({
    horizonMonths: 48,
    revenue: repeated(48, 70000 / 12),
    variableCosts: repeated(48, 0),
    fixedCosts: repeated(48, 30000 / 12),
    stockValue: repeated(48, 0),
    purchases: [
      {
        name: 'Machine',
        month: 0,
        amount: 84000,
        lifeMonths: 48,
        salvage: 0,
        method,
        expensedShare: 0,
        replaced: false,
        sold: null,
      },
    ],
    loans: [],
    tax: { rate: 0.5, lossOffsetShare: 1, paidEveryMonths: 12 },
    workingCapital: { receivableDays: 0, inventoryDays: 0, payableDays: 0 },
    before: { revenue: 0, variableCosts: 0 },
    openingCash: 0,
    ownerPaidIn: repeated(48, 0),
    ownerDraws: repeated(48, 0),
  });
  const { operations, tax } = plan.timeline;
  return [0, 1, 2, 3].map((year) =>
    inMoney(sum(operations.slice(12 * year + 1, 12 * year + 13)) + sum(tax.slice(12 * year + 1, 12 * year + 13))),
  );
}

const STRAIGHT: DepreciationMethod = { kind: 'straightLine' };
const THREE_YEAR: DepreciationMethod = { kind: 'table', table: 'recovery3' };
const monthly = 'a twelfth of the yearly figures is rounded to the cent each month';

const TAX_ROWS: readonly MoneyRow[] = [
  ...moneyRows(
    'depreciation-columns',
    {
      law: 'depreciation tables',
      source: 'irs-pub-946',
      where: 'tables A-1 and A-5, sum of each column',
      unit: '%',
      relative: 1e-9,
      why: 'the columns are printed to add up',
    },
    Object.values(DEPRECIATION_TABLES).map((column) => [() => sum(column), 100] as const),
  ),
  ...moneyRows(
    'depreciation-yearly',
    {
      law: 'depreciation',
      source: 'newnan',
      where: 'problem 11-1, 20,000 in the seven-year class',
      unit: 'money',
      relative: 1e-9,
      why: 'exact',
    },
    NEWNAN_DEPRECIATION.map(
      (amount, year) => [() => yearlyDepreciation(20000, 'recovery7')[year] ?? Number.NaN, amount] as const,
    ),
  ),
  ...moneyRows(
    'depreciation-book',
    {
      law: 'depreciation',
      source: 'newnan',
      where: 'problem 11-1, book value',
      unit: 'money',
      relative: 1e-9,
      why: 'exact',
    },
    NEWNAN_BOOK_VALUE.map((amount, year) => [() => bookAfter(year + 1), amount] as const),
  ),
  ...moneyRows(
    'straight-line',
    {
      law: 'depreciation',
      source: 'openformula-draft',
      where: 'SLN(4000;500;4)',
      unit: 'money',
      halfDigit: 0.01,
      why: 'spread over months in whole cents',
    },
    [
      [
        () =>
          inMoney(
            sum(
              monthlyDepreciation({
                cost: 400000,
                salvage: 50000,
                lifeMonths: 48,
                method: STRAIGHT,
                expensedShare: 0,
                month: 0,
              }).slice(12, 24),
            ),
          ),
        875,
      ],
    ],
  ),
  ...moneyRows(
    'after-tax',
    {
      law: 'after-tax projection',
      source: 'sullivan',
      where: 'chapter 7, straight line over four years',
      unit: 'money',
      halfDigit: 0.1,
      why: monthly,
    },
    [
      ...[0, 1, 2, 3].map((year) => [() => afterTaxCash(STRAIGHT)[year] ?? Number.NaN, 30500] as const),
      [() => netPresentValue(0.12, [-84000, ...afterTaxCash(STRAIGHT)]), 8639.16],
      [() => equivalentAnnualFlow(0.12, [-84000, ...afterTaxCash(STRAIGHT)]), 2844.31],
    ],
  ),
  ...moneyRows(
    'after-tax-table',
    {
      law: 'after-tax projection',
      source: 'sullivan',
      where: 'chapter 7, three-year class',
      unit: 'money',
      halfDigit: 0.1,
      why: monthly,
    },
    [
      ...[33998.6, 38669, 26220.2, 23112.2].map(
        (cash, year) => [() => afterTaxCash(THREE_YEAR)[year] ?? Number.NaN, cash] as const,
      ),
      [() => netPresentValue(0.12, [-84000, ...afterTaxCash(THREE_YEAR)]), 10533.82],
    ],
  ),
];

export const PLAN_ROWS: readonly MoneyRow[] = [...LOAN_ROWS, ...TAX_ROWS];
