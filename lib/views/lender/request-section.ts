import { baseValues } from '../../inputs/base-values.ts';
import type { FundingLine } from '../../model/funding.ts';
import type { LoanAccount } from '../../model/scenario-result.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { formatFixed } from '../format-number.ts';
import { quantityWithUnit } from '../format-quantity.ts';
import { centsText, monthText, plain, tableBlock, total, words } from './document-text.ts';
import type { DocumentBlock, DocumentSection, DocumentTable, LenderSources } from './document-types.ts';
import { forLender } from './for-lender.ts';

function fundingTable(caption: string, currency: string, lines: readonly FundingLine[], sum: number): DocumentTable {
  return {
    caption,
    head: ['', currency],
    rows: [...lines.map((line) => plain(forLender(line.label), centsText(line.cents))), total('Total', centsText(sum))],
    figuresFrom: 1,
  };
}

/** Loans that are asked for: running debt is not. */
export function newLoans({ result }: LenderSources): readonly LoanAccount[] {
  return result.finance.loans.filter((loan) => !loan.isRunning);
}

function loanRow(plan: Plan, account: LoanAccount, sources: LenderSources): readonly string[] {
  const loan = plan.financing.loans.find((candidate) => candidate.id === account.id);
  if (!loan) return [account.name];
  const { rate, term, graceMonths, interestOnlyMonths } = baseValues('loan', loan);
  const quiet = [
    graceMonths > 0 ? `${formatFixed(graceMonths, 0)} unpaid` : '',
    interestOnlyMonths > 0 ? `${formatFixed(interestOnlyMonths, 0)} interest only` : '',
  ].filter((text) => text !== '');
  return [
    account.name,
    formatFixed(account.principal, 2),
    account.isRunning ? 'runs already' : monthText(account.drawMonth),
    quantityWithUnit(rate, 'ratePerYear', sources.shown),
    `${formatFixed(term, 0)}`,
    quiet.length === 0 ? '–' : quiet.join(', '),
    formatFixed(account.fee, 2),
  ];
}

function loanTable(sources: LenderSources): DocumentBlock {
  const { plan, result, shown } = sources;
  return tableBlock({
    caption: `Loans, those that run already among them [${shown.currency}]`,
    head: ['Loan', 'Sum', 'Drawn', 'Interest', 'Months', 'First months', 'Fee'],
    rows: result.finance.loans.map((loan) => plain(...loanRow(plan, loan, sources))),
    figuresFrom: 1,
    wordsIn: [2, 5],
    widths: [27, 12, 14, 12, 9, 16, 10],
  });
}

function lead(sources: LenderSources): string {
  const { result, plan, shown } = sources;
  const loans = newLoans(sources);
  const sum = loans.reduce((all, loan) => all + loan.principal, 0);
  const cost = quantityWithUnit(result.capitalTotal, 'money', shown);
  if (loans.length === 0) return `${plan.site.shopName} asks for no new loan. What is bought costs ${cost}.`;
  const asked = quantityWithUnit(sum, 'money', shown);
  return `${plan.site.shopName} asks for ${asked} towards ${result.name}, which costs ${cost} beyond what the shop has today. The rest and the fees come from the owner.`;
}

/** How much is asked for, what it pays for and who pays the rest. */
export function requestSection(sources: LenderSources): DocumentSection {
  const { uses, sources: from, total: sum } = sources.result.finance.funding;
  const { currency } = sources.shown;
  const isNothing = uses.length === 0;
  return {
    id: 'request',
    title: 'Request and use of funds',
    blocks: [
      words(lead(sources)),
      ...(isNothing
        ? []
        : [
            tableBlock(fundingTable('Uses of funds', currency, uses, sum)),
            tableBlock(fundingTable('Sources of funds', currency, from, sum)),
          ]),
      ...(sources.result.finance.loans.length === 0 ? [] : [loanTable(sources)]),
      words(
        'These papers look ahead. Past accounts and tax returns, bank statements, makers’ quotes, the lease, insurance and orders in hand go with them and are not repeated here.',
      ),
    ],
  };
}
