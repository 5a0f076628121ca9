import { expect } from 'vitest';
import type { ScenarioResult, Statements } from '../../../lib/model/scenario-result.ts';
import type { WorkbookFile } from '../../../lib/views/workbook/workbook-types.ts';
import { centsOf } from './read-workbook.ts';

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

/** Where the figures that a workbook keeps beside its formulas differ from the result they must agree with. */
export function workbookFaults(book: WorkbookFile, result: ScenarioResult): string[] {
  return [...faults(book, result.finance.statements), ...figureFaults(book), ...loanFaults(book, result)];
}
