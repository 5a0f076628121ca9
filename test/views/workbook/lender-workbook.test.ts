import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ScenarioResult, Statements } from '../../../lib/model/scenario-result.ts';
import { checkPlan } from '../../../lib/plan/check-plan.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import type { WorkbookFile } from '../../../lib/views/workbook/workbook-types.ts';
import { anyPlan } from '../../model/any-money-plan.ts';
import { fakeSimulation } from '../../model/fake-plant.ts';
import { centsOf, rowOf } from './read-workbook.ts';
import { workbookOf } from './workbook-of.ts';

/*
 * The figures kept beside the formulas are the formulas' own, so that they can be held against the engine without a
 * spreadsheet. Weeks are made up, plans are any.
 */

/** Labels of the plan's sheet by the statement lines of the engine. */
const INCOME = {
  revenue: 'Sales',
  variableCosts: 'Running cost of what leaves',
  fixedCosts: 'Standing cost and failing pumps',
  ebitda: 'Earnings before interest, tax and depreciation',
  depreciation: 'Depreciation',
  disposalGain: 'Equipment sold, less book value',
  interest: 'Interest',
  loanFees: 'Loan fees',
  profitBeforeTax: 'Profit before tax',
  tax: 'Tax',
  netProfit: 'Net profit',
} as const;

const CASH = {
  operations: 'Cash from operations, net profit included',
  purchases: 'Equipment bought',
  disposals: 'Received for equipment',
  loansDrawn: 'Loans drawn',
  principalRepaid: 'Principal paid back',
  ownerPaidIn: 'Paid in by the owner',
  net: 'Change of cash',
} as const;

const BALANCE = {
  cash: 'Cash in the bank',
  receivables: 'Owed by customers',
  inventory: 'Stock',
  equipment: 'Equipment at book value',
  payables: 'Owed to suppliers',
  taxPayable: 'Tax owed',
  loans: 'Loans',
  totalEquity: 'Equity',
} as const;

/** A cent a month where a half is rounded the other way; over the plan they may add up. */
const ONCE = 2;
const ADDED_UP = 60;

/** A cent of a level payment grows with the interest, which any plan may set at 60 % for twenty years. */
const GROWN = 1e-5;

function isNear(far: number, expected: readonly number[], cents: number): boolean {
  return far <= cents + GROWN * expected.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function furthest(found: readonly number[], expected: readonly number[]): number {
  expect(found.length).toBe(expected.length);
  return expected.reduce((most, value, k) => Math.max(most, Math.abs(value - (found[k] ?? Number.NaN))), 0);
}

function faults(book: WorkbookFile, { income, cash, balance }: Statements): string[] {
  const parts: readonly (readonly [string, Readonly<Record<string, string>>, object, number])[] = [
    ['Income statement', INCOME, income, ONCE],
    ['Cash flow', CASH, cash, ONCE],
    ['Balance sheet, at the end of the month', BALANCE, balance, ADDED_UP],
  ];
  return parts.flatMap(([heading, labels, lines, tolerance]) =>
    Object.entries(labels).flatMap(([line, label]) => {
      const expected = (lines as Readonly<Record<string, readonly number[]>>)[line] ?? [];
      const far = furthest(centsOf(book, 'Plan', label, heading), expected);
      return isNear(far, expected, tolerance) ? [] : [`${line} is off by ${far} cents`];
    }),
  );
}

/** Figures of the summary: live, and as the engine has them. */
function keyFigures(book: WorkbookFile): (readonly [string, number | string, number])[] {
  const cells = book.sheets.find(({ name }) => name === 'Summary')?.cells ?? [];
  const at = (row: number, column: number) => cells.find((cell) => cell.row === row && cell.column === column)?.content;
  return cells.flatMap(({ row, column, content }) => {
    const [live, delivered] = [at(row, 1), at(row, 3)];
    if (column !== 0 || content.kind !== 'text' || live?.kind !== 'formula' || delivered?.kind !== 'number') return [];
    return [[content.text, live.value, delivered.value] as const];
  });
}

/** Above this a cover is of payments of a few cents, and one cent more is much. */
const WILD = 1000;

function figureFaults(book: WorkbookFile): string[] {
  return keyFigures(book)
    .filter(([label, live]) => !/cover|owner/.test(label) || Math.abs(Number(live)) < WILD)
    .filter(([, live, delivered]) => Math.abs(Number(live) - delivered) > 1e-3 + 2e-4 * Math.abs(delivered))
    .map(([label, live, delivered]) => `${label}: ${live} instead of ${delivered}`);
}

function loanFaults(book: WorkbookFile, { finance }: ScenarioResult): string[] {
  const owed = finance.statements.balance.loans.slice(1);
  const far = furthest(centsOf(book, 'Loans', 'Owed at the end', 'All loans: Plan'), owed);
  return isNear(far, owed, ADDED_UP) ? [] : [`loans owed are off by ${far} cents`];
}

/** The last two purchases in order, so that one may come after the other, and within the first year of the plan. */
function inOrder(plan: Plan): Plan {
  const months = plan.scenarios.map((_, k) => 4 * k);
  return { ...plan, scenarios: plan.scenarios.map((one, k) => ({ ...one, purchaseMonth: months[k] ?? 0 })) };
}

describe('the lender’s workbook of any plan', () => {
  const simulate = fakeSimulation();
  const seen = { worked: 0, stages: 0, tables: 0, kept: 0 };

  it('comes to the figures of the engine, line by line and month by month', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => {
        const checked = checkPlan(inOrder(anyPlan(seed)));
        if (!checked.ok) return;
        const { scenarios, financing, products } = checked.value;
        const { id } = scenarios.at(-1) ?? { id: '' };
        const made = workbookOf(checked.value, id, simulate);
        if (!made) return;
        seen.worked += 1;
        if (scenarios.at(-1)?.after) seen.stages += 1;
        if (financing.depreciationMethod !== 'straightLine') seen.tables += 1;
        if (products.some((product) => product.unsold === 'keep')) seen.kept += 1;
        const { book, result } = made;
        expect([
          ...faults(book, result.finance.statements),
          ...figureFaults(book),
          ...loanFaults(book, result),
        ]).toEqual([]);
        expect(rowOf(book, 'Checks', 'All together').get(1)).toBe('all in order');
      }),
      { seed: 8, numRuns: 12, endOnFailure: true },
    );
  });

  it('and stages, tables and stores were among them', () => {
    expect(seen.worked).toBeGreaterThan(4);
    expect(Math.min(seen.stages, seen.tables, seen.kept)).toBeGreaterThan(0);
  });
});
