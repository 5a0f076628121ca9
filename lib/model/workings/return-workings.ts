import { annuityPayment } from '../../finance/annuity.ts';
import type { CashTimeline } from '../../finance/cash-timeline.ts';
import { internalRates, mapRates } from '../../finance/internal-rates.ts';
import { modifiedInternalRate } from '../../finance/modified-internal-rate.ts';
import { annualRate, monthlyRate } from '../../finance/monthly-rate.ts';
import { netPresentValue, presentValues } from '../../finance/net-present-value.ts';
import { inBase } from '../../inputs/quantity.ts';
import type { Payback, ScenarioReturn } from '../scenario-result.ts';
import { earningsTerm, monthName, ownMonths, todayMonths, toTheCent } from './month-workings.ts';
import { addUp, bookedTerm, fixedTerm, inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import type { Explanation, NoFigure, Term, WorkContext, Working } from './working.ts';

type Line = keyof CashTimeline;

/** Lines of the extra cash before any loan. */
const BEFORE_LOANS: readonly Line[] = ['operations', 'workingCapital', 'equipment', 'taxWithoutLoans'];

interface LineWords {
  readonly label: string;
  readonly symbol: string;
  readonly what: string;
  readonly inputs: readonly string[];
}

const LINES: Readonly<Record<Line, LineWords>> = {
  operations: { label: 'Earned beyond today', symbol: 'e', what: '', inputs: [] },
  workingCapital: {
    label: 'Tied up in stock and customers, beyond today',
    symbol: 'w',
    what: 'Change of what customers owe and what lies in store, less what is owed to suppliers, of this scenario less that of today.',
    inputs: ['financing.receivableDays', 'financing.stockDays', 'financing.payableDays'],
  },
  equipment: {
    label: 'Equipment bought and sold, beyond today',
    symbol: 'q',
    what: 'Purchases of the scenario, and what is bought again when its useful life ends, less what old things fetch; of this scenario less that of today, whose machines are replaced too.',
    inputs: ['site.delivery', 'site.contingency'],
  },
  tax: {
    label: 'Tax beyond today',
    symbol: 'x',
    what: 'Tax on profit after write-offs and interest, losses carried forward, settled as often as the plan says; of this scenario less that of today.',
    inputs: ['financing.taxRate', 'financing.lossOffset', 'financing.depreciationLife', 'financing.expensedShare'],
  },
  taxWithoutLoans: {
    label: 'Tax beyond today, as if there were no loan',
    symbol: 'x',
    what: 'Tax on profit after write-offs, losses carried forward, settled as often as the plan says, no interest taken off; of this scenario less that of today.',
    inputs: ['financing.taxRate', 'financing.lossOffset', 'financing.depreciationLife', 'financing.expensedShare'],
  },
  loansDrawn: { label: 'Loans drawn', symbol: 'l', what: 'Loans as they are drawn for the purchases.', inputs: [] },
  loanPayments: {
    label: 'Loan payments',
    symbol: 'r',
    what: 'Interest, principal and fees of the loans drawn for the purchases.',
    inputs: [],
  },
};

/** Inputs that all loans of the plan bring. */
function loanInputs({ plan }: WorkContext): string[] {
  return plan.financing.loans.flatMap((_, k) => [`financing.loans.${k}.rate`, `financing.loans.${k}.term`]);
}

function lineInputs(context: WorkContext, line: Line): readonly string[] {
  return line === 'loansDrawn' || line === 'loanPayments' ? loanInputs(context) : LINES[line].inputs;
}

/** What is earned more than today in the month that ends at a moment. */
function extraEarnings(context: WorkContext, moment: number): Working {
  const month = moment - 1;
  return worked(
    'earned in this scenario − earned today, to the cent',
    'a − b',
    [earningsTerm(ownMonths(context), month, 'a'), earningsTerm(todayMonths(context), month, 'b')],
    ([a = 0, b = 0]) => toTheCent(a - b),
  );
}

/** One line of the extra cash at a moment, t months after the start. */
function lineTerm(context: WorkContext, found: ScenarioReturn, line: Line, moment: number): Term {
  const { label, symbol, what } = LINES[line];
  const when = moment === 0 ? 'at the start' : `by the end of ${monthName(moment - 1)}`;
  const named = {
    label: `${label}, ${when}`,
    symbol,
    value: found.lines[line][moment] ?? 0,
    dimension: 'money',
  } as const;
  if (line !== 'operations') return bookedTerm(named, { what, inputs: lineInputs(context, line) });
  if (moment === 0) return fixedTerm(named, 'Nothing has been earned yet at the start.');
  return workedTerm(named, () => extraEarnings(context, moment));
}

/** The extra cash at a moment. */
function flowTerm(context: WorkContext, found: ScenarioReturn, moment: number): Term {
  const label = moment === 0 ? 'Cash against today at the start' : `Cash against today in ${monthName(moment - 1)}`;
  const value = found.incremental[moment] ?? 0;
  return workedTerm({ label, symbol: numbered('f', moment), value, dimension: 'money' }, () =>
    sumWorking(
      'earned + tied up + equipment + tax, each beyond today, money out being negative',
      BEFORE_LOANS.map((line) => lineTerm(context, found, line, moment)),
    ),
  );
}

function flowTerms(context: WorkContext, found: ScenarioReturn, last: number): Term[] {
  return Array.from({ length: last + 1 }, (_, moment) => flowTerm(context, found, moment));
}

/** Extra cash of all moments up to one, added up. */
function totalTerm(context: WorkContext, found: ScenarioReturn, last: number, symbol: string): Term {
  const label = last === 0 ? 'Cumulative cash at the start' : `Cumulative cash after ${monthName(last - 1)}`;
  return workedTerm({ label, symbol, value: found.cumulative[last] ?? 0, dimension: 'money' }, () =>
    sumWorking('cash against today, added up from the start', flowTerms(context, found, last)),
  );
}

function rateTerm({ plan }: WorkContext): Term {
  return inputTerm(plan, 'financing.discountRate', 'i');
}

function discountedTerm(context: WorkContext, found: ScenarioReturn, last: number, symbol: string): Term {
  const rate = rateTerm(context);
  const values = presentValues(monthlyRate(rate.value), found.incremental.slice(0, last + 1));
  const label = last === 0 ? 'Discounted cash at the start' : `Discounted cash after ${monthName(last - 1)}`;
  return workedTerm({ label, symbol, value: addUp(values), dimension: 'money' }, () =>
    worked(
      'cash against today, each month’s divided by (1 + rate)^(months ÷ 12), added up from the start',
      'Σ fₜ ÷ (1 + i)^(t/12)',
      [rate, ...flowTerms(context, found, last)],
      ([i = 0, ...flows]) => netPresentValue(monthlyRate(i), flows),
    ),
  );
}

const TODAY: NoFigure = {
  kind: 'none',
  why: 'Today is what the others are judged against; it is judged against nothing.',
};

function noPayback(payback: Payback): NoFigure {
  const why =
    payback.kind === 'noOutlay'
      ? 'Cumulative cash against today never goes below zero: nothing has to be paid back.'
      : 'Cumulative cash against today is below zero until the horizon: it does not pay back within it.';
  return { kind: 'none', why };
}

type TotalOf = (context: WorkContext, found: ScenarioReturn, last: number, symbol: string) => Term;

/** The month before, and the share of the next that was needed. */
function crossingWorking(context: WorkContext, found: ScenarioReturn, payback: Payback, totalOf: TotalOf): Explanation {
  if (payback.kind !== 'crossed') return noPayback(payback);
  const after = Math.ceil(payback.months - 1e-9);
  const before = after - 1;
  const whole = bookedTerm(
    { label: 'Whole months still below zero', symbol: 'm', value: before, dimension: 'months' },
    { what: 'The last month after which the cumulative cash is still below zero, when it first comes back to it.' },
  );
  return worked(
    'whole months below zero + what is still missing then ÷ what the next month brings',
    'm + a ÷ (a − b)',
    [whole, totalOf(context, found, before, 'a'), totalOf(context, found, after, 'b')],
    ([m = 0, a = 0, b = 0]) => m + a / (a - b),
  );
}

/** Explains a figure of the return against today; today itself has none. */
function ofReturn(
  explain: (context: WorkContext, found: ScenarioReturn) => Explanation,
): (context: WorkContext) => Explanation {
  return (context) => {
    const found = context.result.finance.versusToday;
    return found ? explain(context, found) : TODAY;
  };
}

export const paybackWorking = ofReturn((context, found) => crossingWorking(context, found, found.payback, totalTerm));

export const discountedPaybackWorking = ofReturn((context, found) =>
  crossingWorking(context, found, found.discountedPayback, discountedTerm),
);

/** What is left at the horizon beyond today's, by part. */
function leftTerm(found: ScenarioReturn): Term {
  const part = (label: string, symbol: string, value: number, what: string, inputs: readonly string[]) =>
    bookedTerm({ label, symbol, value, dimension: 'money' }, { what, inputs });
  const { equipment, workingCapital, taxWithoutLoans } = found.left;
  const terms = [
    part(
      'Equipment left',
      'q',
      equipment,
      'What the equipment would fetch at the horizon, falling evenly from its price to its resale over its useful life; of this scenario less that of today.',
      [],
    ),
    part(
      'Stock and customers’ debts left',
      'w',
      workingCapital,
      'What customers owe and what lies in store at the horizon, less what is owed to suppliers; of this scenario less that of today.',
      ['financing.receivableDays', 'financing.stockDays', 'financing.payableDays'],
    ),
    part(
      'Tax still to be paid',
      'x',
      taxWithoutLoans,
      'Tax owed at the horizon, and tax on equipment that would be sold above its book value; of this scenario less that of today.',
      ['financing.taxRate'],
    ),
  ];
  return workedTerm({ label: 'Left at the horizon', symbol: 'L', value: found.leftAtHorizon, dimension: 'money' }, () =>
    sumWorking('equipment + stock and debts + tax, each beyond today, tax to be paid being negative', terms),
  );
}

/** Flows with what is left put to the last of them. */
function withLeft(flows: readonly number[], left: number): number[] {
  return flows.map((flow, t) => (t === flows.length - 1 ? flow + left : flow));
}

function wholeFlows(context: WorkContext, found: ScenarioReturn): Term[] {
  return [leftTerm(found), ...flowTerms(context, found, found.incremental.length - 1)];
}

function presentWorking(context: WorkContext, found: ScenarioReturn): Working {
  return worked(
    'cash against today of every month, at the horizon with what is left, divided by (1 + rate)^(months ÷ 12), added up',
    'Σ fₜ ÷ (1 + i)^(t/12), the last f with L',
    [rateTerm(context), ...wholeFlows(context, found)],
    ([i = 0, left = 0, ...flows]) => netPresentValue(monthlyRate(i), withLeft(flows, left)),
  );
}

export const presentValueWorking = ofReturn(presentWorking);

function presentTerm(context: WorkContext, found: ScenarioReturn): Term {
  const value = found.netPresentValue;
  return workedTerm({ label: 'Net present value', symbol: 'N', value, dimension: 'money' }, () =>
    presentWorking(context, found),
  );
}

export const yearlyWorthWorking = ofReturn((context, found) =>
  worked(
    'net present value × rate ÷ (1 − (1 + rate)^−years), years = months looked ahead ÷ 12',
    'N × i ÷ (1 − (1 + i)^(−n/12))',
    [presentTerm(context, found), rateTerm(context), inputTerm(context.plan, 'financing.horizon', 'n')],
    ([N = 0, i = 0, n = 1]) => 0 - annuityPayment(i, Math.round(n) / 12, N),
  ),
);

function ratesOf(values: readonly number[]) {
  const [left = 0, ...flows] = values;
  return mapRates(internalRates(withLeft(flows, left)), annualRate);
}

export const rateOfReturnWorking = ofReturn((context, found) => {
  const { rateOfReturn } = found;
  if (rateOfReturn.kind === 'none') return { kind: 'none', why: 'No rate brings the present value to zero.' };
  if (rateOfReturn.kind === 'several') {
    return { kind: 'none', why: 'Several rates bring the present value to zero, so that none of them is the return.' };
  }
  return worked(
    'the yearly rate at which the cash of all months, with what is left, is worth nothing today',
    'r with Σ fₜ ÷ (1 + r)^(t/12) = 0, the last f with L',
    wholeFlows(context, found),
    (values) => {
      const rates = ratesOf(values);
      return rates.kind === 'one' ? rates.rate : 0;
    },
  );
});

export const rateCountWorking = ofReturn((context, found) =>
  worked(
    'number of yearly rates at which the cash of all months, with what is left, is worth nothing today',
    'how many r with Σ fₜ ÷ (1 + r)^(t/12) = 0',
    wholeFlows(context, found),
    (values) => {
      const rates = ratesOf(values);
      if (rates.kind === 'none') return 0;
      return rates.kind === 'one' ? 1 : rates.rates.length;
    },
  ),
);

/** What borrowed money costs: the dearest loan for a purchase, or the return wanted where none is planned. */
function borrowingTerm({ plan }: WorkContext): Term {
  const rates = plan.financing.loans.flatMap((loan, k) =>
    loan.basis === 'running' ? [] : [{ path: `financing.loans.${k}.rate`, rate: inBase(loan.rate, 'ratePerYear') }],
  );
  const dearest = rates.reduce<(typeof rates)[number] | null>(
    (most, one) => (most && most.rate >= one.rate ? most : one),
    null,
  );
  return inputTerm(plan, dearest?.path ?? 'financing.discountRate', 'b');
}

export const modifiedRateWorking = ofReturn((context, found) => {
  if (found.modifiedRate === null) return { kind: 'none', why: 'Nothing is paid, or nothing is received.' };
  return worked(
    '(end value of all receipts at the rate of money laid by ÷ present value of all payments at the rate of a loan)^(1 ÷ years) − 1',
    '(R ÷ P)^(12/n) − 1',
    [borrowingTerm(context), inputTerm(context.plan, 'financing.reinvestRate', 'l'), ...wholeFlows(context, found)],
    ([borrowed = 0, laidBy = 0, left = 0, ...flows]) => {
      const rate = modifiedInternalRate(withLeft(flows, left), monthlyRate(borrowed), monthlyRate(laidBy));
      return rate === null ? 0 : annualRate(rate);
    },
  );
});

export const profitabilityWorking = ofReturn((context, found) => {
  if (found.profitabilityIndex === null) return { kind: 'none', why: 'Nothing more is bought than today.' };
  const rate = rateTerm(context);
  const bought = found.lines.equipment.map((flow) => Math.min(0, flow));
  const invested = workedTerm(
    {
      label: 'Present value of what is bought',
      symbol: 'I',
      value: 0 - netPresentValue(monthlyRate(rate.value), bought),
      dimension: 'money',
    },
    () =>
      worked(
        '− equipment bought of every month, divided by (1 + rate)^(months ÷ 12), added up',
        '−Σ qₜ ÷ (1 + i)^(t/12), only what is paid',
        [rate, ...found.lines.equipment.map((_, moment) => lineTerm(context, found, 'equipment', moment))],
        ([i = 0, ...flows]) =>
          0 -
          netPresentValue(
            monthlyRate(i),
            flows.map((flow) => Math.min(0, flow)),
          ),
      ),
  );
  return worked(
    '1 + net present value ÷ present value of what is bought',
    '1 + N ÷ I',
    [presentTerm(context, found), invested],
    ([N = 0, I = 1]) => 1 + N / I,
  );
});

const NEEDED: readonly Line[] = ['equipment', 'workingCapital', 'operations', 'tax', 'loansDrawn', 'loanPayments'];

/** Cash of one line from the start up to a moment. */
function needTerm(context: WorkContext, found: ScenarioReturn, line: Exclude<Line, 'taxWithoutLoans'>): Term {
  const { amount, month } = found.cashNeeded;
  const last = amount === 0 ? -1 : month;
  const { label, symbol } = LINES[line];
  return workedTerm({ label, symbol, value: found.cashNeeded[line], dimension: 'money' }, () =>
    sumWorking(
      'from the start to the deepest point, added up',
      Array.from({ length: last + 1 }, (_, moment) => lineTerm(context, found, line, moment)),
    ),
  );
}

export const cashNeededWorking = ofReturn((context, found) =>
  worked(
    '− (equipment + tied up + earned + tax + loans drawn + loan payments), up to the deepest point before it has come back',
    '−(q + w + e + x + l + r)',
    NEEDED.map((line) => needTerm(context, found, line as Exclude<Line, 'taxWithoutLoans'>)),
    (values) => 0 - addUp(values),
  ),
);
