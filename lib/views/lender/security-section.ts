import type { Cents } from '../../finance/cents.ts';
import { formatPercent } from '../format-number.ts';
import { plain, ratioText, tableBlock, wholeText, words } from './document-text.ts';
import type { DocumentRow, DocumentSection, LenderSources } from './document-types.ts';
import { loansDue } from './loans-due.ts';
import { abreast, sumOfYear, type YearSpan, yearName, yearsOf } from './plan-years.ts';

function share(part: Cents, whole: Cents): string {
  return whole > 0 ? formatPercent(part / whole) : '–';
}

/** Principal due in the twelve months after a moment. */
function dueSoon({ result }: LenderSources, from: number): Cents {
  return loansDue(result.finance.loans, [from, from + 12], ({ principal }) => Math.max(0, principal));
}

function liquidity(sources: LenderSources, at: number): string {
  const { balance } = sources.result.finance.statements;
  const of = (key: 'cash' | 'receivables' | 'inventory' | 'payables' | 'taxPayable') => balance[key][at] ?? 0;
  const due = of('payables') + of('taxPayable') + Math.min(dueSoon(sources, at), balance.loans[at] ?? 0);
  return due > 0 ? ratioText((of('cash') + of('receivables') + of('inventory')) / due) : '–';
}

function ratioRows(sources: LenderSources, years: readonly YearSpan[]): DocumentRow[] {
  const { balance, income } = sources.result.finance.statements;
  const atEnd = (series: readonly Cents[]) => years.map(([, to]) => series[to] ?? 0);
  const [loans, equipment, assets, equity] = [
    balance.loans,
    balance.equipment,
    balance.totalAssets,
    balance.totalEquity,
  ].map(atEnd) as [Cents[], Cents[], Cents[], Cents[]];
  const ofSales = (series: readonly Cents[]) =>
    years.map((year) => share(sumOfYear(series, year), sumOfYear(income.revenue, year)));
  return [
    plain('Owed on loans', ...loans.map(wholeText)),
    plain('Equipment at book value', ...equipment.map(wholeText)),
    plain('Loans over equipment', ...loans.map((owed, k) => share(owed, equipment[k] ?? 0))),
    plain('Equity over all assets', ...equity.map((own, k) => share(own, assets[k] ?? 0))),
    plain('Cash, stock and claims over debts due in a year', ...years.map(([, to]) => liquidity(sources, to))),
    plain('Earnings over sales', ...ofSales(income.ebitda)),
    plain('Net profit over sales', ...ofSales(income.netProfit)),
  ];
}

/** What stands behind the debt, and the ratios a lender reads from the statements. */
export function securitySection(sources: LenderSources): DocumentSection {
  const spans = abreast(yearsOf(sources.result.finance.statements.income.revenue.length));
  return {
    id: 'security',
    title: 'Security and key ratios',
    blocks: [
      words(
        'Equipment stands at what it cost less depreciation. A forced sale may bring less; what machines are thought to fetch in the end stands with the assumptions.',
      ),
      ...spans.map((years) =>
        tableBlock({
          caption: `At the end of the year, and over the year [money in ${sources.shown.currency}]`,
          head: ['', ...years.map(yearName)],
          rows: ratioRows(sources, years),
          figuresFrom: 1,
        }),
      ),
    ],
  };
}
