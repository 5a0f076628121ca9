import { WEEKS_PER_MONTH } from '../../cost/month-length.ts';
import { fromCents } from '../../finance/cents.ts';
import { earningsTerm, monthName, ownMonths, toTheCent } from './month-workings.ts';
import {
  addUp,
  bookedTerm,
  fixedTerm,
  inputTerm,
  mostWorking,
  numbered,
  sumWorking,
  worked,
  workedTerm,
} from './terms.ts';
import type { Explanation, NoFigure, Term, WorkContext, Working } from './working.ts';

const NO_LOAN: NoFigure = { kind: 'none', why: 'No loan payments are due in that time, so there is nothing to cover.' };

const TWELVE = Array.from({ length: 12 }, (_, k) => k);

function earnedTerm(context: WorkContext, first: number): Term {
  const months = TWELVE.map((k) => earningsTerm(ownMonths(context), first + k, numbered('e', k + 1)));
  return workedTerm(
    {
      label: `Earned, ${monthName(first)} to ${first + 12}`,
      symbol: 'E',
      value: addUp(months.map((term) => term.value)),
      dimension: 'money',
    },
    () => sumWorking('earned in each of the twelve months, added up', months),
  );
}

/** Payments due in one month, all loans. */
function paymentTerm({ plan, result }: WorkContext, month: number, symbol: string): Term {
  const due = result.finance.loans.map((loan) => loan.schedule.find((row) => row.month === month)?.payment ?? 0);
  return bookedTerm(
    { label: `Loan payments in ${monthName(month)}`, symbol, value: fromCents(addUp(due)), dimension: 'money' },
    {
      what: `Interest and principal due, added up over ${result.finance.loans.length} loans: level payments after the months of grace, to the cent.`,
      sources: ['numpy-financial'],
      inputs: plan.financing.loans.flatMap((_, k) =>
        ['share', 'amount', 'rate', 'term', 'graceMonths', 'interestOnlyMonths'].map(
          (key) => `financing.loans.${k}.${key}`,
        ),
      ),
    },
  );
}

function dueTerm(context: WorkContext, first: number, symbol: string): Term {
  const months = TWELVE.map((k) => paymentTerm(context, first + k, numbered('d', k + 1)));
  return workedTerm(
    {
      label: `Loan payments, ${monthName(first)} to ${first + 12}`,
      symbol,
      value: addUp(months.map((term) => term.value)),
      dimension: 'money',
    },
    () => sumWorking('loan payments of each of the twelve months, added up', months),
  );
}

/** Cover of twelve months from one on. */
function coverWorking(context: WorkContext, first: number): Working {
  return worked(
    'earned ÷ loan payments due, twelve months in a row',
    'E ÷ D',
    [earnedTerm(context, first), dueTerm(context, first, 'D')],
    ([E = 0, D = 1]) => E / D,
  );
}

export function lowestCoverWorking(context: WorkContext): Explanation {
  const { lowestCoverEndsIn } = context.result.finance;
  return lowestCoverEndsIn === null ? NO_LOAN : coverWorking(context, lowestCoverEndsIn - 11);
}

/** @param year 1 for the first */
export function yearCoverWorking(year: number): (context: WorkContext) => Explanation {
  return (context) => {
    const cover = context.result.finance.coverByYear[year - 1];
    if (cover === undefined) return { kind: 'none', why: 'The plan does not look that far ahead.' };
    return cover === null ? NO_LOAN : coverWorking(context, 12 * (year - 1));
  };
}

export function coverRoomWorking(context: WorkContext): Explanation {
  const { lowestCover, lowestCoverEndsIn } = context.result.finance;
  if (lowestCover === null || lowestCoverEndsIn === null) return NO_LOAN;
  const cover = workedTerm({ label: 'Lowest DSCR', symbol: 'c', value: lowestCover, dimension: 'count' }, () =>
    coverWorking(context, lowestCoverEndsIn - 11),
  );
  return worked(
    'lowest DSCR − lender’s line',
    'c − l',
    [cover, inputTerm(context.plan, 'financing.dscrLine', 'l')],
    ([c = 0, l = 0]) => c - l,
  );
}

/** What the owner's own hours of a month would cost to hire. */
function ownerPayTerm({ plan }: WorkContext): Term {
  const hour = fixedTerm(
    { label: 'An hour', symbol: 'h', value: 3600, dimension: 'time' },
    'Wages are paid by the hour.',
  );
  const weeks = fixedTerm(
    { label: 'Weeks in a month', symbol: 'm', value: WEEKS_PER_MONTH, dimension: 'count' },
    '365.25 days ÷ 12 months ÷ 7 days.',
  );
  const terms = [inputTerm(plan, 'crew.ownerHours', 't'), hour, inputTerm(plan, 'crew.ownerRate', 'w'), weeks];
  const pay = ([t = 0, h = 1, w = 0, m = 0]: readonly number[]) => toTheCent((t / h) * w * m);
  return workedTerm(
    { label: 'Your time in a month', symbol: 'o', value: pay(terms.map((term) => term.value)), dimension: 'money' },
    () =>
      worked(
        'your hours a week × what an hour would cost × weeks in a month, to the cent',
        't ÷ h × w × m',
        terms,
        pay,
      ),
  );
}

/** The first of the twelve months in which cover is lowest when the owner is paid. */
function worstStart({ result }: WorkContext, pay: number): number {
  const { ebitda } = result.finance.statements.income;
  const due = ebitda.map((_, month) =>
    addUp(result.finance.loans.map((loan) => loan.schedule.find((row) => row.month === month)?.payment ?? 0)),
  );
  const coverFrom = (first: number) => {
    const paid = addUp(due.slice(first, first + 12));
    return paid > 0 ? (addUp(ebitda.slice(first, first + 12)) - 1200 * pay) / paid : Number.POSITIVE_INFINITY;
  };
  const starts = ebitda.slice(0, Math.max(0, ebitda.length - 11)).map((_, first) => first);
  return starts.reduce((worst, first) => (coverFrom(first) < coverFrom(worst) ? first : worst), 0);
}

export function ownerPaidCoverWorking(context: WorkContext): Explanation {
  if (context.result.finance.lowestCoverOwnerPaid === null) return NO_LOAN;
  const pay = ownerPayTerm(context);
  const first = worstStart(context, pay.value);
  return worked(
    '(earned − twelve months of your time paid) ÷ loan payments due, the twelve months in a row in which it is lowest',
    '(E − 12 × o) ÷ D',
    [earnedTerm(context, first), pay, dueTerm(context, first, 'D')],
    ([E = 0, o = 0, D = 1]) => (E - 12 * o) / D,
  );
}

export function debtServiceWorking(context: WorkContext): Working {
  const years = Math.floor(context.result.finance.statements.income.ebitda.length / 12);
  const terms = Array.from({ length: years }, (_, year) => dueTerm(context, 12 * year, numbered('D', year + 1)));
  return mostWorking('largest of the years’ loan payments', terms);
}

/** Cash that a month brings, as the cash-flow statement has it. */
function cashTerm({ result }: WorkContext, month: number): Term {
  const { cash } = result.finance.statements;
  const part = (label: string, symbol: string, cents: number | undefined, what: string) =>
    bookedTerm({ label, symbol, value: fromCents(cents ?? 0), dimension: 'money' }, { what });
  const terms = [
    part(
      'Out of operations',
      'o',
      cash.operations[month],
      'Net profit, with what was written off put back and what was tied up or is owed taken in or out.',
    ),
    part('Bought and sold', 'i', cash.investment[month], 'Equipment bought, less what sold things fetched.'),
    part(
      'Loans and own money',
      'f',
      cash.financing[month],
      'Loans drawn, less principal paid back, with what the owner puts in.',
    ),
  ];
  return workedTerm(
    {
      label: `Cash of ${monthName(month)}`,
      symbol: numbered('c', month + 1),
      value: fromCents(cash.net[month] ?? 0),
      dimension: 'money',
    },
    () =>
      worked('operations + equipment + financing, to the cent', 'o + i + f', terms, (values) =>
        toTheCent(addUp(values)),
      ),
  );
}

export function lowestCashWorking(context: WorkContext): Working {
  const held = context.result.finance.statements.balance.cash;
  const lowest = held.reduce((place, cents, k) => (cents < (held[place] ?? 0) ? k : place), 0);
  const months = Array.from({ length: lowest }, (_, month) => cashTerm(context, month));
  return worked(
    lowest === 0
      ? 'cash in hand at the start: it never gets less'
      : `cash in hand at the start + the cash of every month up to ${monthName(lowest - 1)}, after which it is lowest`,
    lowest === 0 ? 'h' : 'h + c₁ + …',
    [inputTerm(context.plan, 'financing.openingCash', 'h'), ...months],
    (values) => toTheCent(addUp(values)),
  );
}
