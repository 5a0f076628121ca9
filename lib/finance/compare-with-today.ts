import type { CashTimeline, TerminalValue } from './cash-timeline.ts';
import { fromCents } from './cents.ts';
import type { DebtServiceCover } from './debt-service-cover.ts';
import { type InternalRates, internalRates, mapRates } from './internal-rates.ts';
import { modifiedInternalRate } from './modified-internal-rate.ts';
import { annualRate, monthlyRate } from './monthly-rate.ts';
import { netPresentValue, presentValues } from './net-present-value.ts';
import { type Payback, payback, runningTotals } from './payback.ts';
import { profitabilityIndex } from './profitability-index.ts';
import type { Projection } from './project-plan.ts';
import { addSeries, subtractSeries } from './series.ts';

/** What the owner asks of money, all annual effective [1/year], > −1. */
export interface ReturnTerms {
  /** Return asked of the money put in. */
  readonly discountRate: number;
  /** Paid on money owed, for the modified internal rate. */
  readonly financeRate: number;
  /** Earned on money that came in, for the modified internal rate. */
  readonly reinvestRate: number;
}

/** Measures of one stream of extra cash: index t is t months after the start. Money out is negative. */
export interface ReturnMeasures {
  /** Extra cash by moment, without what is left at the horizon [money]. */
  readonly flows: readonly number[];
  /** Its running total [money]. */
  readonly totals: readonly number[];
  /** Extra worth of what is left at the horizon [money]. */
  readonly terminal: number;
  /** Months; what is left at the horizon does not count, it has not come in. */
  readonly payback: Payback;
  readonly discountedPayback: Payback;
  /** With what is left at the horizon [money]. */
  readonly netPresentValue: number;
  /** Annual effective [1/year], with what is left at the horizon. */
  readonly internalRates: InternalRates;
  /** Annual effective [1/year]; null when nothing is paid or nothing received. */
  readonly modifiedRate: number | null;
}

/** The deepest the extra cash goes before it has paid back, and what took it there; the parts sum to it. */
export interface CashNeeded {
  /** The depth, negative or 0 [money]. */
  readonly amount: number;
  /** Months after the start. */
  readonly month: number;
  readonly equipment: number;
  readonly workingCapital: number;
  readonly operations: number;
  readonly tax: number;
  readonly loansDrawn: number;
  readonly loanPayments: number;
}

/** A scenario judged against the shop as it is. */
export interface Comparison {
  /** Before any loan: whether the purchase is worth making. */
  readonly beforeFinancing: ReturnMeasures;
  /** After loans and their effect on tax: what the owner's own money does. */
  readonly afterFinancing: ReturnMeasures;
  /** Of the purchases beyond today's, before financing [–]; null when nothing more is bought. */
  readonly profitabilityIndex: number | null;
  /** Of the scenario as a whole, not of the difference: a lender looks at the whole shop. */
  readonly cover: DebtServiceCover;
  readonly cashNeeded: CashNeeded;
  /** The extra cash by moment and what moves it [money]. */
  readonly lines: CashTimeline;
  /** Extra worth of what is left at the horizon [money]. */
  readonly left: TerminalValue;
}

/**
 * The scenario with the shop as it is taken off, month by month and after tax: with and without, not before and after.
 * Throws RangeError when the two have different horizons or a rate is not above −1.
 */
export function compareWithToday(today: Projection, scenario: Projection, terms: ReturnTerms): Comparison {
  const extra = extraTimeline(today.timeline, scenario.timeline);
  const left = extraTerminal(today.terminal, scenario.terminal);
  const shared = [extra.operations, extra.workingCapital, extra.equipment];
  const before = addSeries(...shared, extra.taxWithoutLoans);
  const after = addSeries(...shared, extra.tax, extra.loansDrawn, extra.loanPayments);
  const leftBefore = left.equipment + left.workingCapital + left.taxWithoutLoans;
  const leftAfter = left.equipment + left.workingCapital + left.tax + left.loans;
  const beforeFinancing = returnMeasures(before, leftBefore, terms);
  return {
    beforeFinancing,
    afterFinancing: returnMeasures(after, leftAfter, terms),
    profitabilityIndex: profitabilityIndex(beforeFinancing.netPresentValue, invested(extra.equipment, terms)),
    cover: scenario.cover,
    cashNeeded: cashNeeded(extra, after),
    lines: extra,
    left,
  };
}

/**
 * Payback, present value and rates of return of monthly flows.
 * @param flows by moment from time 0 [money]
 * @param terminal what is left after the last of them [money]
 */
export function returnMeasures(flows: readonly number[], terminal: number, terms: ReturnTerms): ReturnMeasures {
  const rate = monthlyRate(terms.discountRate);
  const whole = flows.map((flow, t) => (t === flows.length - 1 ? flow + terminal : flow));
  const modified = modifiedInternalRate(whole, monthlyRate(terms.financeRate), monthlyRate(terms.reinvestRate));
  return {
    flows,
    totals: runningTotals(flows),
    terminal,
    payback: payback(flows),
    discountedPayback: payback(presentValues(rate, flows)),
    netPresentValue: netPresentValue(rate, whole),
    internalRates: mapRates(internalRates(whole), annualRate),
    modifiedRate: modified === null ? null : annualRate(modified),
  };
}

function extraTimeline(today: CashTimeline, scenario: CashTimeline): CashTimeline {
  const less = (line: keyof CashTimeline) => subtractSeries(scenario[line], today[line]).map(fromCents);
  return {
    operations: less('operations'),
    workingCapital: less('workingCapital'),
    equipment: less('equipment'),
    tax: less('tax'),
    taxWithoutLoans: less('taxWithoutLoans'),
    loansDrawn: less('loansDrawn'),
    loanPayments: less('loanPayments'),
  };
}

function extraTerminal(today: TerminalValue, scenario: TerminalValue): TerminalValue {
  const less = (line: keyof TerminalValue) => fromCents(scenario[line] - today[line]);
  return {
    equipment: less('equipment'),
    workingCapital: less('workingCapital'),
    loans: less('loans'),
    tax: less('tax'),
    taxWithoutLoans: less('taxWithoutLoans'),
  };
}

/** Present value of the extra equipment bought, as a positive amount [money]. */
function invested(equipment: readonly number[], terms: ReturnTerms): number {
  return (
    0 -
    netPresentValue(
      monthlyRate(terms.discountRate),
      equipment.map((flow) => Math.min(0, flow)),
    )
  );
}

function cashNeeded(extra: CashTimeline, flows: readonly number[]): CashNeeded {
  const totals = beforePayback(runningTotals(flows));
  const amount = totals.reduce((lowest, total) => Math.min(lowest, total), 0);
  const month = Math.max(0, totals.indexOf(amount));
  const upTo = (series: readonly number[]) =>
    amount === 0 ? 0 : series.slice(0, month + 1).reduce((sum, flow) => sum + flow, 0);
  return {
    amount,
    month,
    equipment: upTo(extra.equipment),
    workingCapital: upTo(extra.workingCapital),
    operations: upTo(extra.operations),
    tax: upTo(extra.tax),
    loansDrawn: upTo(extra.loansDrawn),
    loanPayments: upTo(extra.loanPayments),
  };
}

/** Running totals up to the first return to zero after having been below it. */
function beforePayback(totals: readonly number[]): readonly number[] {
  const below = totals.findIndex((total) => total < 0);
  if (below < 0) return totals;
  const back = totals.findIndex((total, t) => t > below && total >= 0);
  return back < 0 ? totals : totals.slice(0, back);
}
