import type { LoanMonth } from '../../finance/loan-schedule.ts';
import type { LoanAccount } from '../../model/scenario-result.ts';
import { centsText, moneyText, plain, tableBlock, total, words } from './document-text.ts';
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

/** Every schedule month by month. */
export function scheduleSection({ result, shown }: LenderSources): DocumentSection {
  return {
    id: 'schedules',
    title: 'Appendix: loans month by month',
    isApart: true,
    blocks: result.finance.loans.map((loan) => monthlySchedule(loan, shown.currency)),
  };
}
