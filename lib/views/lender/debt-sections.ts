import type { LoanMonth } from '../../finance/loan-schedule.ts';
import type { LoanAccount } from '../../model/scenario-result.ts';
import { roundTicks } from '../chart-scale.ts';
import { formatFixed } from '../format-number.ts';
import { centsText, moneyText, monthText, plain, ratioText, tableBlock, total, words } from './document-text.ts';
import type { DocumentBlock, DocumentSection, LenderSources } from './document-types.ts';

interface LoanYear {
  readonly year: number;
  readonly rows: readonly LoanMonth[];
}

/** A schedule by year of the plan. */
function byYear(schedule: readonly LoanMonth[]): readonly LoanYear[] {
  const years = [...new Set(schedule.map((row) => Math.floor(row.month / 12)))];
  return years.map((year) => ({ year, rows: schedule.filter((row) => Math.floor(row.month / 12) === year) }));
}

function sum(rows: readonly LoanMonth[], key: 'interest' | 'principal' | 'payment'): number {
  return rows.reduce((all, row) => all + row[key], 0);
}

const HEAD = ['Owed at the start', 'Interest', 'Principal', 'Payment', 'Owed at the end'];

function yearlySchedule(loan: LoanAccount, currency: string): DocumentBlock {
  const years = byYear(loan.schedule).map(({ year, rows }) =>
    plain(
      `Year ${year + 1}`,
      centsText(rows[0]?.opening ?? 0),
      centsText(sum(rows, 'interest')),
      centsText(sum(rows, 'principal')),
      centsText(sum(rows, 'payment')),
      centsText(rows.at(-1)?.closing ?? 0),
    ),
  );
  const all = (key: 'interest' | 'principal' | 'payment') => centsText(sum(loan.schedule, key));
  return tableBlock({
    caption: `${loan.name}, by year [${currency}]`,
    head: ['', ...HEAD],
    rows: [...years, total('In all', '', all('interest'), all('principal'), all('payment'), '')],
    figuresFrom: 1,
  });
}

function monthlySchedule(loan: LoanAccount, currency: string): DocumentBlock {
  return tableBlock({
    caption: `${loan.name}, month by month [${currency}]`,
    head: ['Month', ...HEAD],
    rows: loan.schedule.map((row) =>
      plain(
        `${row.month + 1}`,
        centsText(row.opening),
        centsText(row.interest),
        centsText(row.principal),
        centsText(row.payment),
        centsText(row.closing),
      ),
    ),
    figuresFrom: 1,
  });
}

/** What is owed and paid, loan by loan. */
export function debtSection({ result, shown }: LenderSources): DocumentSection {
  const { loans, yearlyDebtService } = result.finance;
  const lead =
    loans.length === 0
      ? 'There is no loan.'
      : `In the dearest year ${moneyText(yearlyDebtService, shown)} are due in interest and principal, all loans together. Every schedule ends at exactly nothing; the monthly ones are in the appendix.`;
  return {
    id: 'debt',
    title: 'Debt schedules',
    blocks: [words(lead), ...loans.map((loan) => yearlySchedule(loan, shown.currency))],
  };
}

/** Bars of debt cover by year, for whoever draws them. */
export interface CoverBars {
  readonly rows: readonly {
    readonly id: string;
    readonly label: string;
    readonly cover: number | null;
    readonly coverText: string;
    readonly meetsLine: boolean;
  }[];
  readonly ticks: readonly number[];
  readonly line: number;
}

/** Debt cover by year as bars. */
export function coverBars({ result }: Pick<LenderSources, 'result'>): CoverBars {
  const { coverByYear, line } = result.finance;
  const rows = coverByYear.map((cover, year) => ({
    id: `year ${year + 1}`,
    label: `Year ${year + 1}`,
    cover,
    coverText: ratioText(cover),
    meetsLine: cover === null || cover >= line,
  }));
  const covers = coverByYear.flatMap((cover) => (cover === null ? [] : [cover]));
  return { rows, ticks: roundTicks(Math.min(0, ...covers), Math.max(line, ...covers), 5), line };
}

function coverLead({ result }: LenderSources): string {
  const { lowestCover, lowestCoverEndsIn, line, meetsLine, lowestCoverOwnerPaid } = result.finance;
  if (lowestCover === null || lowestCoverEndsIn === null) return 'Without a loan there is nothing to cover.';
  const verdict = meetsLine ? 'which meets' : 'which does not meet';
  return `In its worst twelve months in a row, those up to ${monthText(lowestCoverEndsIn)}, the shop earns ${ratioText(lowestCover)} times its loan payments, ${verdict} the lender's line of ${formatFixed(line, 2)}. With the owner's own hours paid at what they would cost to hire it would be ${ratioText(lowestCoverOwnerPaid)}. Earnings are before interest, tax, depreciation and what the owner takes out.`;
}

/** How often earnings cover what is due. */
export function coverSection(sources: LenderSources): DocumentSection {
  const { coverByYear, coverByYearOwnerPaid, line, lowestCover, lowestCoverOwnerPaid } = sources.result.finance;
  const rows = coverByYear.map((cover, year) =>
    plain(`Year ${year + 1}`, ratioText(cover), ratioText(coverByYearOwnerPaid[year] ?? null), formatFixed(line, 2)),
  );
  const lowest = total(
    'Lowest trailing twelve months',
    ratioText(lowestCover),
    ratioText(lowestCoverOwnerPaid),
    formatFixed(line, 2),
  );
  return {
    id: 'cover',
    title: 'Debt service cover',
    blocks: [
      words(coverLead(sources)),
      { kind: 'figure', figure: 'cover' },
      tableBlock({
        caption: 'Debt service cover ratio (DSCR): earnings over interest and principal due',
        head: ['', 'DSCR', "With the owner's time paid", "Lender's line"],
        rows: [...rows, lowest],
        figuresFrom: 1,
      }),
    ],
  };
}

/** Every schedule month by month. */
export function scheduleSection({ result, shown }: LenderSources): DocumentSection {
  return {
    id: 'schedules',
    title: 'Appendix: loans month by month',
    blocks: result.finance.loans.map((loan) => monthlySchedule(loan, shown.currency)),
  };
}
