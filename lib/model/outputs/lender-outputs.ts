import {
  coverRoomWorking,
  debtServiceWorking,
  lowestCashWorking,
  lowestCoverWorking,
  ownerPaidCoverWorking,
  yearCoverWorking,
} from '../workings/lender-workings.ts';
import type { OutputField } from './output-field.ts';

/** Debt cover of one year of the plan. @param year 1 for the first */
function coverOfYear(year: number): OutputField {
  return {
    id: `dscr.year${year}`,
    label: `DSCR, year ${year}`,
    group: 'lender',
    dimension: 'count',
    meaning: `Cash earned over loan payments due in year ${year}; empty without loan payments.`,
    formula: `(sales − running cost − fixed cost) ÷ (interest + principal), months ${12 * year - 11} to ${12 * year}`,
    needs: ['dscr'],
    read: ({ finance }) => finance.coverByYear[year - 1] ?? null,
    working: yearCoverWorking(year),
  };
}

/** What a lender looks at: of the shop as a whole, not against today. */
export const LENDER_OUTPUTS: readonly OutputField[] = [
  {
    id: 'dscr',
    label: 'Lowest DSCR',
    group: 'lender',
    dimension: 'count',
    meaning: 'Cash earned over loan payments due, in the worst twelve months in a row; empty without a loan.',
    formula: '(sales − running cost − fixed cost) ÷ (interest + principal), lowest trailing twelve months',
    needs: ['contribution', 'capital'],
    read: ({ finance }) => finance.lowestCover,
    working: lowestCoverWorking,
  },
  {
    id: 'dscr.room',
    label: "Above the lender's line",
    group: 'lender',
    dimension: 'count',
    meaning: "How far the lowest DSCR lies above the lender's line; negative when the plan does not meet it.",
    formula: "lowest DSCR − lender's line",
    needs: ['dscr'],
    read: ({ finance }) => (finance.lowestCover === null ? null : finance.lowestCover - finance.line),
    working: coverRoomWorking,
  },
  {
    id: 'dscr.ownerPaid',
    label: 'Lowest DSCR, your time paid',
    group: 'lender',
    dimension: 'count',
    meaning: 'The lowest DSCR as if your own hours were paid at what they would cost to hire.',
    formula: '(cash earned − owner hours × worth of an owner hour) ÷ loan payments, lowest trailing twelve months',
    needs: ['dscr'],
    read: ({ finance }) => finance.lowestCoverOwnerPaid,
    working: ownerPaidCoverWorking,
  },
  ...[1, 2, 3].map(coverOfYear),
  {
    id: 'debtService',
    label: 'Loan payments, dearest year',
    group: 'lender',
    dimension: 'money',
    meaning: 'Interest and principal due in the year in which most is due, all loans together.',
    formula: 'highest sum of payments of any full year',
    needs: ['capital'],
    read: ({ finance }) => finance.yearlyDebtService,
    working: debtServiceWorking,
  },
  {
    id: 'lowestCash',
    label: 'Least cash in the bank',
    group: 'lender',
    dimension: 'money',
    meaning: 'The least that is in the bank at the end of any month; negative when money runs out.',
    formula: 'lowest of cash in hand + all cash in and out so far',
    needs: ['capital', 'contribution'],
    read: ({ finance }) => finance.lowestCash,
    working: lowestCashWorking,
  },
];
