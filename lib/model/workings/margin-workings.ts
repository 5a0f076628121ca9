import { WEEKS_PER_MONTH } from '../../cost/month-length.ts';
import type { BatchRecord, Phase, ProductWeek } from '../../plant/report-types.ts';
import type { BreakEvenPoint } from '../scenario-result.ts';
import { energyChargeTerm, standingChargeTerms } from './electricity-workings.ts';
import { repairsTerm, spoiledTerm } from './failure-workings.ts';
import { labourTerm } from './labour-workings.ts';
import { debtServiceWorking } from './lender-workings.ts';
import { pathOf } from './plan-paths.ts';
import { ingredientsTerm, otherTerm, packagingTerm, saleableWeekTerm, salesTerm } from './product-money-workings.ts';
import { addUp, countedTerm, fixedTerm, inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import { batchesTerm, productName } from './throughput-workings.ts';
import { upkeepTerm } from './upkeep-workings.ts';
import type { Explanation, Term, WorkContext, Working } from './working.ts';

export type HourResource = 'chambers' | 'pump' | 'crew';

const HOUR: Term = fixedTerm(
  { label: 'An hour', symbol: 'h', value: 3600, dimension: 'time' },
  'The figure is per hour.',
);

const WEEKS: Term = fixedTerm(
  { label: 'Weeks in a month', symbol: 'm', value: WEEKS_PER_MONTH, dimension: 'count' },
  '365.25 days ÷ 12 months ÷ 7 days.',
);

const YEAR: Term = fixedTerm(
  { label: 'Weeks in a year', symbol: 'y', value: 12 * WEEKS_PER_MONTH, dimension: 'count' },
  'Twelve months of 365.25 ÷ 12 ÷ 7 weeks.',
);

/** Cost that goes with what is made in a week. */
function runningTerm(context: WorkContext, symbol: string): Term {
  const { week, labour } = context.result.account;
  const terms = [
    ingredientsTerm(context, 'a'),
    packagingTerm(context, 'b'),
    otherTerm(context, 'c'),
    energyChargeTerm(context, 'd'),
    upkeepTerm(context, 'e'),
    ...(labour.flexible ? [labourTerm(context, 'f')] : []),
  ];
  const words = labour.flexible ? ' + paid work' : '; guaranteed wages run on whatever is made';
  return workedTerm(
    { label: 'Cost that goes with what is made, a week', symbol, value: week.runningCost.week, dimension: 'money' },
    () => sumWorking(`ingredients + packaging + other + energy + oil and upkeep${words}`, terms),
  );
}

function contributionTerm(context: WorkContext, symbol: string): Term {
  const value = context.result.account.week.contribution.week;
  return workedTerm({ label: 'Sales less running cost, a week', symbol, value, dimension: 'money' }, () =>
    worked(
      'sales of a week − cost that goes with what is made',
      's − r',
      [salesTerm(context, 's'), runningTerm(context, 'r')],
      ([s = 0, r = 0]) => s - r,
    ),
  );
}

interface HourWords {
  readonly label: string;
  readonly phases: readonly Phase[] | null;
}

const HOURS: Readonly<Record<HourResource, HourWords>> = {
  chambers: { label: 'Hours of a chamber taken by a batch', phases: null },
  pump: { label: 'Hours under vacuum of a batch', phases: ['pumpDown', 'primary', 'secondary', 'hold'] },
  crew: { label: 'Hands-on hours of a batch', phases: ['loading', 'unloading', 'cleaning'] },
};

function meanTime(batches: readonly BatchRecord[], phases: readonly Phase[]): number {
  if (batches.length === 0) return 0;
  return addUp(batches.map((batch) => addUp(phases.map((phase) => batch.phases[phase] ?? 0)))) / batches.length;
}

/** Hours of a resource that an average batch of a product takes. */
function batchHoursTerm(context: WorkContext, week: ProductWeek, resource: HourResource, index: number): Term {
  const { label, phases } = HOURS[resource];
  const own = context.result.plant.batchRecords.filter((batch) => batch.productId === week.productId);
  return countedTerm(
    {
      label: `${label}: ${productName(context, week.productId)}`,
      symbol: numbered('t', index),
      value: phases ? meanTime(own, phases) : week.cycleTime,
      dimension: 'time',
    },
    { what: `Mean over the ${own.length} batches that ended in the measured weeks.` },
  );
}

function hoursTerm(context: WorkContext, resource: HourResource): Term {
  const { products } = context.result.plant;
  const terms = products.flatMap((week, k) => [
    batchHoursTerm(context, week, resource, k + 1),
    batchesTerm(context, week, numbered('b', k + 1)),
  ]);
  const hours = (values: readonly number[]) =>
    addUp(products.map((_, k) => (values[2 * k] ?? 0) * (values[2 * k + 1] ?? 0)));
  const value = hours(terms.map((term) => term.value));
  return workedTerm({ label: 'Hours of a week', symbol: 't', value, dimension: 'timePerWeek' }, () =>
    worked('hours of a batch × batches a week, product by product', 'Σ (t × b)', terms, hours),
  );
}

/** What is left per hour of a resource. */
export function perHourWorking(context: WorkContext, resource: HourResource): Explanation {
  if ((context.result.account.week.contributionPerHour[resource] ?? null) === null) {
    return { kind: 'none', why: 'Nothing that is made takes any of these hours.' };
  }
  return worked(
    'sales less running cost of a week ÷ hours of a week',
    'k ÷ (t ÷ h)',
    [contributionTerm(context, 'k'), hoursTerm(context, resource), HOUR],
    ([k = 0, t = 1, h = 1]) => k / (t / h),
  );
}

/** Chambers of each type times their monthly maintenance, a week. */
function maintenanceTerm(context: WorkContext, symbol: string): Term {
  const { plan, scenario, result } = context;
  const path = pathOf(plan, 'scenarios', scenario.id);
  const terms = scenario.chambers.flatMap((entry, k) => [
    inputTerm(plan, `${path}.chambers.${k}.count`, numbered('n', k + 1)),
    inputTerm(plan, `${pathOf(plan, 'chambers', entry.chamber)}.maintenance`, numbered('p', k + 1)),
  ]);
  const value = result.account.week.standing.fixed.maintenance ?? 0;
  return workedTerm({ label: 'Maintenance a week', symbol, value, dimension: 'money' }, () =>
    worked(
      'chambers of each type × maintenance of one a month, added up ÷ weeks in a month',
      'Σ (n × p) ÷ m',
      [WEEKS, ...terms],
      ([m = 1, ...values]) =>
        addUp(scenario.chambers.map((_, k) => (values[2 * k] ?? 0) * (values[2 * k + 1] ?? 0))) / m,
    ),
  );
}

function rentTerm({ plan, result }: WorkContext, symbol: string): Term {
  const value = result.account.week.standing.fixed.rent ?? 0;
  return workedTerm({ label: 'Rent and the like a week', symbol, value, dimension: 'money' }, () =>
    worked(
      'rent and the like a month ÷ weeks in a month',
      'r ÷ m',
      [inputTerm(plan, 'site.rentAndFixed', 'r'), WEEKS],
      ([r = 0, m = 1]) => r / m,
    ),
  );
}

/** Cost of a week that runs on whatever is made. */
function standingTerm(context: WorkContext, symbol: string): Term {
  const { week, labour } = context.result.account;
  const terms = [
    rentTerm(context, 'a'),
    maintenanceTerm(context, 'b'),
    ...standingChargeTerms(context, ['c', 'd']),
    ...(labour.flexible ? [] : [labourTerm(context, 'e')]),
  ];
  return workedTerm({ label: 'Standing cost a week', symbol, value: week.standingCost.week, dimension: 'money' }, () =>
    sumWorking('rent + maintenance + demand and fixed charges + guaranteed wages', terms),
  );
}

/** Spoiled loads and repairs of a mean week. */
function failingTerm(context: WorkContext, symbol: string): Term {
  const { spoiled, repairs } = context.result.failures.cost;
  const value = (spoiled + repairs) / YEAR.value;
  return workedTerm({ label: 'Failing pumps a week', symbol, value, dimension: 'money' }, () =>
    worked(
      '(spoiled loads + repairs) of a mean year ÷ weeks in a year',
      '(s + r) ÷ y',
      [spoiledTerm(context, 's'), repairsTerm(context, 'r'), YEAR],
      ([s = 0, r = 0, y = 1]) => (s + r) / y,
    ),
  );
}

function profitTerms(context: WorkContext): Term[] {
  return [contributionTerm(context, 'k'), standingTerm(context, 'f'), failingTerm(context, 'x')];
}

export function profitWorking(context: WorkContext): Working {
  return worked(
    'sales less running cost − standing cost − spoiled loads and repairs',
    'k − f − x',
    profitTerms(context),
    ([k = 0, f = 0, x = 0]) => k - f - x,
  );
}

export function profitOwnerPaidWorking(context: WorkContext): Working {
  const { plan } = context;
  return worked(
    'sales less running cost − standing cost − spoiled loads and repairs − your hours × what an hour would cost',
    'k − f − x − t ÷ h × w',
    [...profitTerms(context), inputTerm(plan, 'crew.ownerHours', 't'), HOUR, inputTerm(plan, 'crew.ownerRate', 'w')],
    ([k = 0, f = 0, x = 0, t = 0, h = 1, w = 0]) => k - f - x - (t / h) * w,
  );
}

function debtTerm(context: WorkContext, symbol: string): Term {
  const value = context.result.finance.yearlyDebtService;
  return workedTerm({ label: 'Loan payments of the dearest year', symbol, value, dimension: 'money' }, () =>
    debtServiceWorking(context),
  );
}

/** Standing cost and failing pumps of a week. */
function coveredTerm(context: WorkContext, symbol: string): Term {
  const value = context.result.breakEven.fixedPerWeek;
  return workedTerm({ label: 'To be covered a week', symbol, value, dimension: 'money' }, () =>
    sumWorking('standing cost + failing pumps', [standingTerm(context, 'f'), failingTerm(context, 'x')]),
  );
}

const NO_POINT = {
  kind: 'none',
  why: 'What is made costs as much as it brings, or nothing is sold: no amount of it covers the rest.',
} as const;

function breakEvenWorking(context: WorkContext, point: BreakEvenPoint, withLoans: boolean): Explanation {
  if (point.perWeek === null) return NO_POINT;
  const common = [
    coveredTerm(context, 'f'),
    saleableWeekTerm(context, 'q'),
    salesTerm(context, 's'),
    runningTerm(context, 'r'),
  ];
  if (!withLoans) {
    return worked(
      'to be covered ÷ (sales − running cost, of each unit of weight sold)',
      'f ÷ ((s − r) ÷ q)',
      common,
      ([f = 0, q = 1, s = 0, r = 0]) => f / ((s - r) / q),
    );
  }
  return worked(
    '(to be covered + loan payments of the dearest year ÷ weeks in a year) ÷ (sales − running cost, of each unit of weight sold)',
    '(f + d ÷ y) ÷ ((s − r) ÷ q)',
    [...common, debtTerm(context, 'd'), YEAR],
    ([f = 0, q = 1, s = 0, r = 0, d = 0, y = 1]) => (f + d / y) / ((s - r) / q),
  );
}

export function operatingBreakEvenWorking(context: WorkContext): Explanation {
  return breakEvenWorking(context, context.result.breakEven.operating, false);
}

export function loansBreakEvenWorking(context: WorkContext): Explanation {
  return breakEvenWorking(context, context.result.breakEven.withLoans, true);
}

export function marginOfSafetyWorking(context: WorkContext): Explanation {
  const { withLoans } = context.result.breakEven;
  if (withLoans.marginOfSafety === null) return NO_POINT;
  return worked(
    '(sales − sales at break-even with loans) ÷ sales; break-even sales = (to be covered + loan payments a week) × sales ÷ (sales − running cost)',
    '1 − (f + d ÷ y) ÷ (s − r)',
    [coveredTerm(context, 'f'), debtTerm(context, 'd'), YEAR, salesTerm(context, 's'), runningTerm(context, 'r')],
    ([f = 0, d = 0, y = 1, s = 1, r = 0]) => 1 - (f + d / y) / (s - r),
  );
}
