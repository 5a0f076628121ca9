import type { Cents } from '../../finance/cents.ts';
import type { Statements } from '../../model/scenario-result.ts';
import { inputNote } from '../input-note.ts';
import { centsText, plain, tableBlock, total, wholeText, words } from './document-text.ts';
import type { DocumentBlock, DocumentRow, DocumentSection, LenderSources } from './document-types.ts';
import { abreast, sumOfYear, yearName, yearsOf } from './plan-years.ts';

type Series = readonly Cents[];
type Line = readonly [label: string, series: Series, isTotal: boolean];

function incomeLines({ income }: Statements): readonly Line[] {
  return [
    ['Sales', income.revenue, false],
    ['Running cost of what is sold', income.variableCosts, false],
    ['Standing cost and failing pumps', income.fixedCosts, false],
    ['Earnings before interest, tax and depreciation', income.ebitda, true],
    ['Depreciation', income.depreciation, false],
    ['Equipment sold, less book value', income.disposalGain, false],
    ['Interest', income.interest, false],
    ['Loan fees', income.loanFees, false],
    ['Profit before tax', income.profitBeforeTax, true],
    ['Tax', income.tax, false],
    ['Net profit', income.netProfit, true],
  ];
}

function cashLines({ cash }: Statements): readonly Line[] {
  return [
    ['Net profit', cash.netProfit, false],
    ['Depreciation, which no money left for', cash.depreciation, false],
    ['Equipment sold less book value, shown below', cash.disposalGain, false],
    ['Interest added to the debt', cash.interestAdded, false],
    ['Owed by customers', cash.receivables, false],
    ['Stock', cash.inventory, false],
    ['Owed to suppliers', cash.payables, false],
    ['Tax owed', cash.taxPayable, false],
    ['Cash from operations', cash.operations, true],
    ['Equipment bought', cash.purchases, false],
    ['Received for equipment', cash.disposals, false],
    ['Cash from investment', cash.investment, true],
    ['Loans drawn', cash.loansDrawn, false],
    ['Principal paid back', cash.principalRepaid, false],
    ['Paid in by the owner', cash.ownerPaidIn, false],
    ['Taken out by the owner', cash.ownerDraws, false],
    ['Cash from financing', cash.financing, true],
    ['Change of cash', cash.net, true],
  ];
}

function balanceLines({ balance }: Statements): readonly Line[] {
  return [
    ['Cash in the bank', balance.cash, false],
    ['Owed by customers', balance.receivables, false],
    ['Stock', balance.inventory, false],
    ['Equipment at book value', balance.equipment, false],
    ['Assets', balance.totalAssets, true],
    ['Owed to suppliers', balance.payables, false],
    ['Tax owed', balance.taxPayable, false],
    ['Loans', balance.loans, false],
    ['Debts', balance.totalLiabilities, true],
    ['Paid in by the owner', balance.ownerCapital, false],
    ['Profit kept', balance.retainedProfit, false],
    ['Equity', balance.totalEquity, true],
    ['Debts and equity', balance.totalLiabilities.map((debts, k) => debts + (balance.totalEquity[k] ?? 0)), true],
  ];
}

/** Lines in which nothing ever moves are left out, totals aside. */
function isMoving([, series, isTotal]: Line): boolean {
  return isTotal || series.some((value) => value !== 0);
}

function rowOf([label, , isTotal]: Line, cells: readonly string[]): DocumentRow {
  return (isTotal ? total : plain)(label, ...cells);
}

const FIRST_YEAR = 12;

function months(count: number): number[] {
  return Array.from({ length: Math.min(FIRST_YEAR, count) }, (_, month) => month);
}

/** Months of the first year, money of each. */
function monthlyFlows(caption: string, lines: readonly Line[], count: number): DocumentBlock {
  const shown = months(count);
  return tableBlock({
    caption,
    head: ['Month', ...shown.map((month) => `${month + 1}`), 'Year'],
    rows: lines
      .filter(isMoving)
      .map((line) =>
        rowOf(line, [
          ...shown.map((month) => wholeText(line[1][month] ?? 0)),
          wholeText(sumOfYear(line[1], [0, shown.length])),
        ]),
      ),
    figuresFrom: 1,
    isWide: true,
  });
}

/** The balance before the first month and at the end of each of the first year. */
function monthlyBalance(caption: string, lines: readonly Line[], count: number): DocumentBlock {
  const shown = months(count);
  return tableBlock({
    caption,
    head: ['End of month', 'Before', ...shown.map((month) => `${month + 1}`)],
    rows: lines.filter(isMoving).map((line) =>
      rowOf(
        line,
        [0, ...shown.map((month) => month + 1)].map((t) => wholeText(line[1][t] ?? 0)),
      ),
    ),
    figuresFrom: 1,
    isWide: true,
  });
}

function yearlyFlows(caption: string, lines: readonly Line[], count: number): DocumentBlock[] {
  return abreast(yearsOf(count)).map((years) =>
    tableBlock({
      caption,
      head: ['', ...years.map(yearName)],
      rows: lines.filter(isMoving).map((line) =>
        rowOf(
          line,
          years.map((year) => centsText(sumOfYear(line[1], year))),
        ),
      ),
      figuresFrom: 1,
      isWide: true,
    }),
  );
}

function yearlyBalance(caption: string, lines: readonly Line[], count: number): DocumentBlock[] {
  return abreast(yearsOf(count)).map((years) =>
    tableBlock({
      caption,
      head: ['', ...years.map((year) => `End of ${yearName(year).toLowerCase()}`)],
      rows: lines.filter(isMoving).map((line) =>
        rowOf(
          line,
          years.map(([, to]) => centsText(line[1][to] ?? 0)),
        ),
      ),
      figuresFrom: 1,
      isWide: true,
    }),
  );
}

/** The first year month by month. */
export function monthlySection({ plan, result, shown }: LenderSources): DocumentSection {
  const { statements } = result.finance;
  const count = statements.income.revenue.length;
  const { currency } = shown;
  return {
    id: 'monthly',
    title: 'The first year, month by month',
    blocks: [
      words(
        `Month 1 is ${inputNote(plan, 'site.startMonth', shown).value}. Whole units of money, so a sum may differ by one from its parts; in cents the three statements agree exactly. Money out is negative. Purchases and loan draws happen at the start of a month, everything else by its end.`,
      ),
      monthlyFlows(`Income statement [${currency}]`, incomeLines(statements), count),
      monthlyFlows(`Cash flow [${currency}]`, cashLines(statements), count),
      monthlyBalance(`Balance sheet [${currency}]`, balanceLines(statements), count),
    ],
  };
}

/** All years, to the cent. */
export function yearlySection({ result, shown }: LenderSources): DocumentSection {
  const { statements } = result.finance;
  const count = statements.income.revenue.length;
  const { currency } = shown;
  return {
    id: 'yearly',
    title: 'All years',
    blocks: [
      words('To the cent. Assets equal debts and equity in every month of the plan.'),
      ...yearlyFlows(`Income statement by year [${currency}]`, incomeLines(statements), count),
      ...yearlyFlows(`Cash flow by year [${currency}]`, cashLines(statements), count),
      ...yearlyBalance(`Balance sheet [${currency}]`, balanceLines(statements), count),
    ],
  };
}
