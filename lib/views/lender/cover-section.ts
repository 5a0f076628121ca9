import { roundTicks } from '../chart-scale.ts';
import { formatFixed } from '../format-number.ts';
import { centsText, moneyText, monthText, plain, ratioText, tableBlock, total, words } from './document-text.ts';
import type { DocumentRow, DocumentSection, LenderSources } from './document-types.ts';
import { loansDue } from './loans-due.ts';
import { sumOfYear, type YearSpan } from './plan-years.ts';

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
  const { lowestCover, lowestCoverEndsIn, line, meetsLine } = result.finance;
  if (lowestCover === null || lowestCoverEndsIn === null) return 'Without a loan there is nothing to cover.';
  const verdict = meetsLine ? 'which meets' : 'which does not meet';
  return `In its worst twelve months in a row, those up to ${monthText(lowestCoverEndsIn)}, the shop earns ${ratioText(lowestCover)} times its loan payments, ${verdict} the lender's line of ${formatFixed(line, 2)}. Earnings are before interest, tax, depreciation and what the owner takes out.`;
}

/** What the owner lives on is the first thing a lender asks where no pay is counted. */
function ownerWords({ result, shown }: LenderSources): string {
  const { lowestCover, lowestCoverOwnerPaid, line } = result.finance;
  const week = moneyText(result.cost.ownerTimePerWeek, shown);
  const pay = `The plan pays the owner nothing: profit stays in the shop. The owner's hours would cost ${week} a week to hire.`;
  if (lowestCover === null || lowestCoverOwnerPaid === null) return pay;
  const verdict = lowestCoverOwnerPaid >= line ? 'still meets' : 'does not meet';
  return `${pay} With them paid the worst twelve months come to ${ratioText(lowestCoverOwnerPaid)}, which ${verdict} the line; what the owner draws is to be settled with the lender.`;
}

/** Earnings, what is due, and what they make, for one full year. */
function yearRow({ result }: LenderSources, year: number): DocumentRow {
  const { coverByYear, coverByYearOwnerPaid, statements, loans } = result.finance;
  const span: YearSpan = [12 * year, 12 * year + 12];
  const due = loansDue(loans, span, ({ payment }) => payment);
  const earned = sumOfYear(statements.income.ebitda, span);
  const afterTax = earned + sumOfYear(statements.income.tax, span);
  return plain(
    `Year ${year + 1}`,
    centsText(earned),
    centsText(due),
    ratioText(coverByYear[year] ?? null),
    ratioText(due > 0 ? afterTax / due : null),
    ratioText(coverByYearOwnerPaid[year] ?? null),
  );
}

/** How often earnings cover what is due. */
export function coverSection(sources: LenderSources): DocumentSection {
  const { coverByYear, line, lowestCover, lowestCoverOwnerPaid } = sources.result.finance;
  const rows = coverByYear.map((_, year) => yearRow(sources, year));
  const lowest = total('Worst twelve months', '', '', ratioText(lowestCover), '', ratioText(lowestCoverOwnerPaid));
  return {
    id: 'cover',
    title: 'Debt service cover',
    blocks: [
      words(coverLead(sources)),
      words(ownerWords(sources)),
      tableBlock({
        caption: `Debt service cover ratio (DSCR): earnings over interest and principal due [${sources.shown.currency}]; the lender's line is ${formatFixed(line, 2)}`,
        head: ['', 'Earnings', 'Due', 'DSCR', 'DSCR after tax', "DSCR, owner's hours paid"],
        rows: [...rows, lowest],
        figuresFrom: 1,
      }),
      { kind: 'figure', figure: 'cover' },
    ],
  };
}
