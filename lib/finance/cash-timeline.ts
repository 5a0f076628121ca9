import type { Cents } from './cents.ts';
import type { TaxedIncome } from './income-statement.ts';
import type { PlanBooks } from './plan-books.ts';
import { addSeries, changesOf, negateSeries, subtractSeries } from './series.ts';
import type { TaxLedger, TaxTerms } from './tax-ledger.ts';

/**
 * Every movement of cash by moment, in whole cents, money out negative: index t is the moment t months after the start,
 * 0 to the horizon. What happens at the start of month m stands at m, what happens by its end at m + 1. What the owner
 * puts in or takes out is left out: this is what the business gives and asks.
 */
export interface CashTimeline {
  /** Earnings before interest, tax and depreciation. */
  readonly operations: readonly Cents[];
  /** Money tied up in receivables and stock less payables. */
  readonly workingCapital: readonly Cents[];
  /** Equipment bought and sold. */
  readonly equipment: readonly Cents[];
  readonly tax: readonly Cents[];
  /** Tax that would be paid if there were no loan. */
  readonly taxWithoutLoans: readonly Cents[];
  readonly loansDrawn: readonly Cents[];
  /** Interest, principal and fees. */
  readonly loanPayments: readonly Cents[];
}

/** What winding the business up at the horizon would bring, in whole cents, money out negative. */
export interface TerminalValue {
  readonly equipment: Cents;
  readonly workingCapital: Cents;
  readonly loans: Cents;
  /** Tax still owed, and tax on equipment sold above its book value. */
  readonly tax: Cents;
  readonly taxWithoutLoans: Cents;
}

/** Cash of a plan by moment. */
export function cashTimeline(books: PlanBooks, taxed: TaxedIncome): CashTimeline {
  const { assets, loans } = books;
  return {
    operations: atEnd(taxed.income.ebitda),
    workingCapital: atEnd(negateSeries(changesOf(tiedUp(books)))),
    equipment: atStart(subtractSeries(assets.sold, assets.bought)),
    tax: atEnd(negateSeries(taxed.tax.paid)),
    taxWithoutLoans: atEnd(negateSeries(taxed.taxWithoutLoans.paid)),
    loansDrawn: atStart(loans.drawn),
    loanPayments: negateSeries(addSeries(atStart(loans.fees), atEnd(loans.payments))),
  };
}

/**
 * Worth of what is left at the horizon: equipment at its market value, working capital at its balance, loans paid off.
 * Losses carried forward take off the tax on a gain; a loss on the sale brings no money back (the careful choice).
 */
export function terminalValue(books: PlanBooks, taxed: TaxedIncome, terms: TaxTerms): TerminalValue {
  const bookValue = books.assets.bookValue.at(-1) ?? 0;
  const gain = Math.max(0, books.assets.marketValue - bookValue);
  return {
    equipment: books.assets.marketValue,
    workingCapital: tiedUp(books).at(-1) ?? 0,
    loans: 0 - (books.loans.owed.at(-1) ?? 0),
    tax: finalTax(taxed.tax, gain, terms),
    taxWithoutLoans: finalTax(taxed.taxWithoutLoans, gain, terms),
  };
}

function finalTax(ledger: TaxLedger, gain: Cents, terms: TaxTerms): Cents {
  const taxable = gain - Math.min(ledger.lossCarried, Math.floor(gain * terms.lossOffsetShare));
  return 0 - (ledger.payable.at(-1) ?? 0) - Math.round(taxable * terms.rate);
}

/** Receivables and stock less payables, the opening balance first [cents]. */
function tiedUp(books: PlanBooks): Cents[] {
  const { receivables, inventory, payables } = books.capital;
  return subtractSeries(addSeries(receivables, inventory), payables);
}

function atStart(series: readonly Cents[]): Cents[] {
  return [...series, 0];
}

function atEnd(series: readonly Cents[]): Cents[] {
  return [0, ...series];
}
